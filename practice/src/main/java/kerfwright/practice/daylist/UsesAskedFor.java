package kerfwright.practice.daylist;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import kerfwright.schedule.Need;

/** How often the day lists of the coming weeks ask for each type of instrument. */
public final class UsesAskedFor {
  private UsesAskedFor() {}

  /**
   * Uses by type, see {@link TypeName}.
   *
   * @param from the first day that counts
   * @param weeks how many weeks from then on
   */
  public static Map<String, Integer> byType(DayBooks books, LocalDate from, int weeks) {
    Map<String, Integer> uses = new HashMap<>();
    for (LocalDate day = from; day.isBefore(from.plusWeeks(weeks)); day = day.plusDays(1)) {
      for (Booking booking : books.read(day).bookings()) {
        for (Need need : booking.needs()) {
          uses.merge(need.type(), 1, Integer::sum);
        }
      }
    }
    return uses;
  }
}
