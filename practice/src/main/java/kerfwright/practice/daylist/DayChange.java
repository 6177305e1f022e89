package kerfwright.practice.daylist;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Changes of a day list: moves, lateness. */
public final class DayChange {
  private DayChange() {}

  /** One appointment at another start or in another chair. */
  public static List<Booking> moved(
      List<Booking> bookings, Booking one, LocalTime start, String chair) {
    int length = minutes(one.start(), one.end());
    List<Booking> all = new ArrayList<>(bookings);
    Collections.replaceAll(all, one, one.at(start, start.plusMinutes(length), chair));
    return all;
  }

  /**
   * One appointment late: begun, it ends later; not begun, it starts later too. Those after it in
   * its chair wait until the chair is free.
   */
  public static List<Booking> late(
      List<Booking> bookings, Booking one, int minutes, LocalTime now) {
    boolean begun = one.start().isBefore(now);
    LocalTime start = begun ? one.start() : one.start().plusMinutes(minutes);
    Booking late = one.at(start, one.end().plusMinutes(minutes), one.chair());
    List<Booking> all = new ArrayList<>(bookings);
    Collections.replaceAll(all, one, late);
    List<Booking> after =
        all.stream()
            .filter(b -> b.chair().equals(one.chair()) && b.start().isAfter(one.start()))
            .filter(b -> !b.id().equals(one.id()))
            .sorted(Comparator.comparing(Booking::start))
            .toList();
    LocalTime free = late.end();
    for (Booking b : after) {
      if (!b.start().isBefore(free)) {
        break;
      }
      Booking pushed = b.at(free, free.plusMinutes(minutes(b.start(), b.end())), b.chair());
      Collections.replaceAll(all, b, pushed);
      free = pushed.end();
    }
    return all;
  }

  private static int minutes(LocalTime from, LocalTime to) {
    return (to.toSecondOfDay() - from.toSecondOfDay()) / 60;
  }
}
