package kerfwright.app.backup;

import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which backups stay: the last of each of the newest days and of the newest ISO weeks. */
final class Rotation {
  private Rotation() {}

  /** Those that are no longer kept. */
  static List<BackupFile> superfluous(List<BackupFile> all, int daily, int weekly) {
    List<BackupFile> newestFirst = new ArrayList<>(all);
    newestFirst.sort(Comparator.comparing(BackupFile::at).reversed());
    Set<LocalDate> days = new HashSet<>();
    Set<String> weeks = new HashSet<>();
    List<BackupFile> gone = new ArrayList<>();
    for (BackupFile one : newestFirst) {
      LocalDate day = one.at().toLocalDate();
      boolean ofDay = days.size() < daily && days.add(day);
      boolean ofWeek = weeks.size() < weekly && weeks.add(week(day));
      if (!ofDay && !ofWeek) {
        gone.add(one);
      }
    }
    return gone;
  }

  private static String week(LocalDate day) {
    return day.get(IsoFields.WEEK_BASED_YEAR) + "-" + day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
  }
}
