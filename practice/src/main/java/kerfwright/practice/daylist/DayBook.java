package kerfwright.practice.daylist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The day list of one date and its plan.
 *
 * @param date the date
 * @param version grows by one with every change, 0 for a day nobody has written
 * @param bookings the appointments, by start
 * @param planned the plan, where the day was planned
 */
public record DayBook(
    LocalDate date, int version, List<Booking> bookings, @Nullable PlannedDay planned) {
  public DayBook {
    List<Booking> sorted = new ArrayList<>(bookings);
    sorted.sort(Comparator.comparing(Booking::start).thenComparing(Booking::id));
    bookings = List.copyOf(sorted);
  }

  public static DayBook empty(LocalDate date) {
    return new DayBook(date, 0, List.of(), null);
  }

  public Optional<Booking> booking(String id) {
    return bookings.stream().filter(b -> b.id().equals(id)).findFirst();
  }

  /** The same day with other appointments and another plan. */
  public DayBook with(List<Booking> others, @Nullable PlannedDay plan) {
    return new DayBook(date, version, others, plan);
  }

  /** An id no appointment of the day has. */
  public String freeId() {
    int n = 1;
    while (booking("A" + n).isPresent()) {
      n++;
    }
    return "A" + n;
  }
}
