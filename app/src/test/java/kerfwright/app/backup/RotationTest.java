package kerfwright.app.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerfwright.practice.setting.SettingValues;
import org.junit.jupiter.api.Test;

class RotationTest {
  private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

  private static BackupFile at(String time) {
    LocalDateTime when = LocalDateTime.parse(time);
    return new BackupFile(Path.of(BackupFile.name(when)), when);
  }

  @Test
  void theLastOfEachDayAndWeekStays() {
    List<BackupFile> all =
        List.of(
            at("2026-11-25T13:00"),
            at("2026-11-25T08:00"),
            at("2026-11-24T13:00"),
            at("2026-11-23T13:00"),
            // the week before, Sunday and Saturday
            at("2026-11-22T13:00"),
            at("2026-11-21T13:00"),
            // two weeks before
            at("2026-11-15T13:00"),
            at("2026-11-08T13:00"));
    List<BackupFile> gone = Rotation.superfluous(all, 2, 3);
    assertEquals(
        List.of(
            at("2026-11-25T08:00"),
            at("2026-11-23T13:00"),
            at("2026-11-21T13:00"),
            at("2026-11-08T13:00")),
        gone);
  }

  @Test
  void weeksAreThoseOfIsoEvenOverNewYear() {
    // 31 December 2026 and 1 January 2027 lie in one ISO week
    List<BackupFile> all = List.of(at("2027-01-01T13:00"), at("2026-12-31T13:00"));
    assertEquals(List.of(at("2026-12-31T13:00")), Rotation.superfluous(all, 1, 5));
  }

  @Test
  void aYearOfDailyBackupsSettlesAtAFixedNumber() {
    List<BackupFile> kept = new ArrayList<>();
    LocalDateTime day = LocalDateTime.parse("2026-01-01T13:00");
    for (int i = 0; i < 365; i++) {
      kept.add(new BackupFile(Path.of(BackupFile.name(day)), day));
      kept.removeAll(Rotation.superfluous(kept, 7, 5));
      day = day.plusDays(1);
    }
    // seven days touch at most two weeks that are kept besides
    assertTrue(kept.size() >= 10 && kept.size() <= 12, kept.toString());
    assertEquals(LocalDateTime.parse("2026-12-31T13:00"), kept.get(kept.size() - 1).at());
  }

  @Test
  void aNameTellsItsTimeAndOtherFilesAreLeftAlone() {
    BackupFile one = at("2026-02-03T04:05");
    assertEquals(Optional.of(one), BackupFile.of(one.file()));
    for (String other :
        List.of("kerfwright-20260203-0405.zip.part", "kerfwright-20261303-0405.zip", "a.zip")) {
      assertEquals(Optional.empty(), BackupFile.of(Path.of(other)), other);
    }
  }

  @Test
  void whatWasMissedWhileTheMachineWasOffIsDueAtTheNextStart() {
    BackupPlan plan = new BackupPlan(null, LocalTime.of(13, 0), 7, 5);
    ZonedDateTime noon = ZonedDateTime.of(2026, 11, 25, 12, 0, 0, 0, ZONE);
    ZonedDateTime yesterday = ZonedDateTime.of(2026, 11, 24, 13, 0, 0, 0, ZONE);
    assertTrue(plan.due(noon, Optional.empty()));
    assertFalse(plan.due(noon, Optional.of(yesterday)));
    assertTrue(plan.due(noon, Optional.of(yesterday.minusMinutes(1))));
    assertTrue(plan.due(noon.plusHours(1), Optional.of(yesterday)));
  }

  @Test
  void settingsOutOfReachFallBackToUsualOnes() {
    BackupPlan plan =
        BackupPlan.of(
            new SettingValues(
                1,
                Map.of(
                    "backup.folder", "not/absolute",
                    "backup.time", "25:00",
                    "backup.daily", "0",
                    "backup.weekly", "99999")),
            Path.of("/usual"));
    assertEquals(
        new BackupPlan(Path.of("/usual"), BackupPlan.USUAL_TIME, 1, BackupPlan.MOST), plan);
    assertEquals(Optional.of(LocalTime.of(7, 30)), BackupPlan.time("7:30"));
  }
}
