package kerfwright.app.daypage;

import java.util.List;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.PlannedDay;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.Shortage;
import kerfwright.schedule.TrayPlace;
import org.jspecify.annotations.Nullable;

/**
 * The tray of an appointment; nothing lies on it and nothing is missing while the day has no plan.
 *
 * @param booking the appointment
 * @param pieces what lies on it
 * @param missing types that are missing
 * @param laid whether it was laid already
 */
public record Tray(
    Booking booking, List<InstrumentRef> pieces, List<String> missing, boolean laid) {
  static Tray of(Booking booking, @Nullable PlannedDay day) {
    if (day == null) {
      return new Tray(booking, List.of(), List.of(), false);
    }
    List<TrayPlace> places =
        day.plan().trays().stream().filter(t -> t.appointment().equals(booking.id())).toList();
    return new Tray(
        booking,
        places.stream().map(TrayPlace::instrument).toList(),
        day.plan().shortages().stream()
            .filter(s -> s.appointment().equals(booking.id()))
            .map(Shortage::type)
            .toList(),
        places.stream().anyMatch(day.problem().facts().trays()::contains));
  }

  /** What the appointment is for: tooth, work and case. */
  public String what() {
    return (booking.tooth() + " " + booking.work() + " " + booking.caseReference()).strip();
  }
}
