package kerfwright.practice.daylist;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/**
 * The id on a tray's label: its first half is the day, counted from 1970-01-01, its second half
 * comes from appointment and case. A label of an appointment that is for another case by now leads
 * nowhere.
 */
public final class TrayId {
  private static final long MOST_DAYS = 1_000_000;

  private TrayId() {}

  public static UUID of(LocalDate date, Booking booking) {
    String what = booking.id() + "\n" + booking.caseReference();
    UUID named = UUID.nameUUIDFromBytes(what.getBytes(StandardCharsets.UTF_8));
    return new UUID(date.toEpochDay(), named.getLeastSignificantBits());
  }

  /** The day of a tray; empty where the id is of no tray. */
  public static Optional<LocalDate> date(UUID id) {
    long day = id.getMostSignificantBits();
    return day < 0 || day > MOST_DAYS ? Optional.empty() : Optional.of(LocalDate.ofEpochDay(day));
  }

  /** The appointment of a tray, where it stands on its day yet. */
  public static Optional<Booking> find(UUID id, DayBooks books) {
    return date(id)
        .flatMap(
            date ->
                books.read(date).bookings().stream()
                    .filter(one -> of(date, one).equals(id))
                    .findFirst());
  }
}
