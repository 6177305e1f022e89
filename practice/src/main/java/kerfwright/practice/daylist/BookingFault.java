package kerfwright.practice.daylist;

import java.util.ArrayList;
import java.util.List;
import kerfwright.quantity.Identified;

/**
 * Why a day list cannot be as it is.
 *
 * @param kind what is wrong
 * @param booking the appointment at fault
 * @param other the other appointment, or the chair, or empty
 */
public record BookingFault(Kind kind, Booking booking, String other) {

  /** What can be wrong with a list. */
  public enum Kind implements Identified {
    OVERLAPS,
    OUTSIDE_HOURS,
    NO_LENGTH,
    NO_CHAIR;
  }

  /** Every fault of a list. */
  public static List<BookingFault> of(List<Booking> bookings, DaySetting setting) {
    List<BookingFault> faults = new ArrayList<>();
    for (int i = 0; i < bookings.size(); i++) {
      Booking b = bookings.get(i);
      int start = setting.minute(b.start());
      int end = setting.minute(b.end());
      if (end <= start) {
        faults.add(new BookingFault(Kind.NO_LENGTH, b, ""));
      }
      if (start < 0 || end > setting.lengthMin()) {
        faults.add(new BookingFault(Kind.OUTSIDE_HOURS, b, ""));
      }
      if (!setting.chairs().contains(b.chair())) {
        faults.add(new BookingFault(Kind.NO_CHAIR, b, b.chair()));
      }
      for (Booking c : bookings.subList(0, i)) {
        if (b.chair().equals(c.chair())
            && b.start().isBefore(c.end())
            && c.start().isBefore(b.end())) {
          faults.add(new BookingFault(Kind.OVERLAPS, b, c.id()));
        }
      }
    }
    return faults;
  }
}
