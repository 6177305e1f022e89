package kerfwright.app.backup;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import kerfwright.practice.setting.SettingValues;
import org.jspecify.annotations.Nullable;

/**
 * When and where backups are made, and how many are kept; from the settings backup.folder,
 * backup.time, backup.daily and backup.weekly.
 *
 * @param folder where to, null where nobody said and there is no usual place
 * @param at time of day; missed while the machine was off, it is made up for at the next start
 * @param daily days of which the last backup is kept, at least 1
 * @param weekly weeks of which the last backup is kept
 */
public record BackupPlan(@Nullable Path folder, LocalTime at, int daily, int weekly) {
  static final LocalTime USUAL_TIME = LocalTime.of(13, 0);
  static final int USUAL_DAILY = 7;
  static final int USUAL_WEEKLY = 5;
  static final int MOST = 400;

  static BackupPlan of(SettingValues set, @Nullable Path usualFolder) {
    return new BackupPlan(
        set.find("backup.folder").flatMap(BackupPlan::folder).orElse(usualFolder),
        set.find("backup.time").flatMap(BackupPlan::time).orElse(USUAL_TIME),
        Math.max(1, Math.min(MOST, set.whole("backup.daily", USUAL_DAILY))),
        Math.max(0, Math.min(MOST, set.whole("backup.weekly", USUAL_WEEKLY))));
  }

  /** A folder by its whole path; empty where the text is none. */
  static Optional<Path> folder(String text) {
    try {
      Path path = Path.of(text);
      return path.isAbsolute() ? Optional.of(path.normalize()) : Optional.empty();
    } catch (InvalidPathException no) {
      return Optional.empty();
    }
  }

  static Optional<LocalTime> time(String text) {
    try {
      return Optional.of(LocalTime.parse(text.length() == 4 ? "0" + text : text));
    } catch (DateTimeParseException no) {
      return Optional.empty();
    }
  }

  /** True where the last backup lies before the last time one was due. */
  boolean due(ZonedDateTime now, Optional<ZonedDateTime> last) {
    ZonedDateTime today = now.with(at);
    ZonedDateTime slot = today.isAfter(now) ? today.minusDays(1) : today;
    return last.isEmpty() || last.get().isBefore(slot);
  }
}
