package kerfwright.practice.horizon;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DaySetting;
import kerfwright.practice.horizon.RecordedDays.Use;
import kerfwright.practice.setting.SettingValues;
import kerfwright.schedule.Need;
import org.junit.jupiter.api.Test;

class RecordedDaysTest {
  private static final DaySetting USUAL = DaySetting.of(SettingValues.none());

  private static Use use(int day, int hour, int minute, String visit, String type) {
    return new Use(LocalDateTime.of(2026, 11, day, hour, minute), visit, type);
  }

  @Test
  void whatWasUsedOnOneToothInOneDayIsOneAppointment() {
    List<List<Booking>> days =
        RecordedDays.of(
            List.of(
                use(24, 9, 52, "K-1 16", "flame"),
                use(24, 9, 7, "K-1 16", "round"),
                use(24, 9, 20, "K-1 16", "round"),
                use(25, 9, 7, "K-1 16", "round")),
            USUAL);
    assertEquals(2, days.size(), "one a day");
    Booking first = days.get(0).get(0);
    assertEquals(List.of("flame", "round"), first.needs().stream().map(Need::type).toList());
    assertEquals(LocalTime.of(9, 5), first.start());
    assertEquals(LocalTime.of(10, 5), first.end(), "goes on a while after its last use");
    assertEquals(LocalTime.of(9, 35), days.get(1).get(0).end(), "lasts at least half an hour");
  }

  @Test
  void nobodyIsTreatedInMoreChairsThanThereAre() {
    List<Booking> day =
        RecordedDays.of(
                List.of(
                    use(24, 9, 0, "K-1", "round"),
                    use(24, 9, 5, "K-2", "round"),
                    use(24, 9, 10, "K-3", "round")),
                USUAL)
            .get(0);
    assertEquals(List.of("1", "2", "1"), day.stream().map(Booking::chair).toList());
    assertEquals(LocalTime.of(9, 30), day.get(2).start(), "the third waits for a chair");
  }

  @Test
  void whatLiesOutsideOpeningHoursIsLeftOut() {
    assertEquals(
        List.of(),
        RecordedDays.of(
            List.of(use(24, 7, 30, "K-1", "round"), use(24, 17, 10, "K-2", "round")), USUAL));
  }
}
