package kerfwright.app.form;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/** A day as a form sends it. */
public final class Day {
  private static final LocalDate EARLIEST = LocalDate.of(1900, 1, 1);
  private static final LocalDate LATEST = LocalDate.of(2200, 1, 1);

  private Day() {}

  /** Empty where it is none, or too far away to be meant and to be stored. */
  public static Optional<LocalDate> of(String typed) {
    try {
      return Optional.of(LocalDate.parse(typed))
          .filter(day -> day.isAfter(EARLIEST) && day.isBefore(LATEST));
    } catch (DateTimeException none) {
      return Optional.empty();
    }
  }
}
