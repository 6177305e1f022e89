package kerfwright.app.daypage;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import kerfwright.app.label.Label;
import kerfwright.app.words.Say;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DayBooks;
import kerfwright.practice.daylist.PlannedDay;
import kerfwright.practice.daylist.TrayId;
import kerfwright.practice.label.OwnCode;

/** Labels of the trays of a day: for which appointment, and what lies on it. */
public record TrayLabels(DayBooks books) {

  /** The label of a tray. */
  public Optional<Label> label(UUID id, Say say) {
    return TrayId.date(id)
        .flatMap(date -> TrayId.find(id, books).map(booking -> label(id, date, booking, say)));
  }

  private Label label(UUID id, LocalDate date, Booking booking, Say say) {
    List<String> lines = new ArrayList<>();
    lines.add(say.day(date) + ", " + say.at("day.chair", booking.chair()));
    lines.add((booking.caseReference() + " " + booking.tooth()).strip());
    PlannedDay planned = books.read(date).planned();
    if (planned != null) {
      lines.add(
          Tray.of(booking, planned).pieces().stream()
              .map(planned::label)
              .collect(Collectors.joining(" ")));
    }
    return new Label(
        new OwnCode(OwnCode.Kind.TRAY, id).text(),
        booking.id() + " " + say.time(booking.start()),
        lines);
  }

  /** The page of a tray. */
  public Optional<String> page(UUID id) {
    return TrayId.date(id)
        .flatMap(date -> TrayId.find(id, books).map(booking -> page(date, booking.id())));
  }

  static String page(LocalDate date, String booking) {
    return "/day/" + date + "/tray?id=" + URLEncoder.encode(booking, StandardCharsets.UTF_8);
  }

  /** Where the labels of all these trays are printed. */
  static String sheet(LocalDate date, List<Booking> bookings) {
    return "/labels?"
        + String.join("&", bookings.stream().map(one -> "tray=" + TrayId.of(date, one)).toList());
  }
}
