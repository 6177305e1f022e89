package kerfwright.practice.daylist;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerfwright.schedule.Need;
import org.junit.jupiter.api.Test;

class UsesAskedForTest {
  private static final LocalDate MONDAY = LocalDate.of(2026, 11, 23);

  /** Day lists in memory. */
  private static final class Kept implements DayBooks {
    private final Map<LocalDate, List<Booking>> days = new HashMap<>();

    void book(LocalDate day, String... types) {
      List<Booking> bookings = days.computeIfAbsent(day, any -> new ArrayList<>());
      List<Need> needs = new ArrayList<>();
      for (String type : types) {
        needs.add(new Need(type, 0, List.of()));
      }
      bookings.add(
          new Booking(
              "A" + bookings.size(),
              "1",
              LocalTime.of(8, 0),
              LocalTime.of(9, 0),
              "K-1",
              "16",
              "",
              null,
              needs));
    }

    @Override
    public DayBook read(LocalDate date) {
      return new DayBook(date, 1, days.getOrDefault(date, List.of()), null);
    }

    @Override
    public DayBook read(LocalDate date, int version) {
      return read(date);
    }

    @Override
    public boolean write(DayBook book, String what) {
      throw new UnsupportedOperationException();
    }

    @Override
    public List<LocalDate> before(LocalDate date, int most) {
      throw new UnsupportedOperationException();
    }

    @Override
    public List<TrayTemplate> trays() {
      return List.of();
    }

    @Override
    public void keep(TrayTemplate tray) {
      throw new UnsupportedOperationException();
    }
  }

  @Test
  void everyNeedOfTheComingWeeksCountsAndNoOther() {
    Kept books = new Kept();
    books.book(MONDAY.minusDays(1), "round", "long");
    books.book(MONDAY, "round", "long");
    books.book(MONDAY, "round");
    books.book(MONDAY.plusDays(13), "round");
    books.book(MONDAY.plusDays(14), "round", "flame");
    assertEquals(
        Map.of("round", 3, "long", 1), UsesAskedFor.byType(books, MONDAY, 2), "two whole weeks");
    assertEquals(Map.of("round", 4, "long", 1, "flame", 1), UsesAskedFor.byType(books, MONDAY, 3));
  }
}
