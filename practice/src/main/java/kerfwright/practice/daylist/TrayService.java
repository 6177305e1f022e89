package kerfwright.practice.daylist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Obstacle;
import kerfwright.practice.drawer.Outcome;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.drawer.Refusal;
import kerfwright.practice.drawer.StockItem;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.TrayPlace;
import org.jspecify.annotations.Nullable;

/**
 * Lays the trays of a day: what lies on one is on a tray in the drawer too, by the drawer's own
 * moves. The lines of its history name the day and the appointment.
 */
public final class TrayService {
  private final DrawerService service;

  public TrayService(DrawerService service) {
    this.service = service;
  }

  /**
   * What became of a tray.
   *
   * @param planned the day with its tray laid, or as it was
   * @param batch the change of the drawer, null where there was nothing to move or all is refused
   * @param obstacles why nothing was laid; empty where it was
   */
  public record Laid(PlannedDay planned, @Nullable UUID batch, List<Obstacle> obstacles) {
    public Laid {
      obstacles = List.copyOf(obstacles);
    }
  }

  private static String note(LocalDate date, String appointment) {
    return date + " " + appointment;
  }

  /**
   * Lays the tray of one appointment, with its handpieces, hand instruments and tips as far as they
   * are clean; all of it or nothing.
   */
  public Laid lay(LocalDate date, PlannedDay day, Booking booking) {
    String appointment = booking.id();
    List<Pick> picks = new ArrayList<>();
    List<Obstacle> obstacles = new ArrayList<>();
    for (TrayPlace place : places(day, appointment)) {
      StockItem item = item(day, place.instrument());
      if (item == null) {
        obstacles.add(new Obstacle(null, day.label(place.instrument()), Refusal.Plain.GONE));
      } else if (item.state() != InstrumentState.ON_TRAY || item.lot()) {
        picks.add(new Pick(item.id(), item.version()));
      } else {
        other(day, place)
            .ifPresent(
                id ->
                    obstacles.add(
                        new Obstacle(item.id(), item.label(), new Refusal.OnOtherTray(id))));
      }
    }
    if (!obstacles.isEmpty()) {
      return new Laid(day, null, obstacles);
    }
    beside(day, booking, laidBeside(date, booking))
        .forEach(item -> picks.add(new Pick(item.id(), item.version())));
    if (picks.isEmpty()) {
      return new Laid(DayFollowed.laid(day, appointment), null, List.of());
    }
    Outcome outcome = service.lay(picks, note(date, appointment));
    UUID batch = outcome.batch();
    return batch == null
        ? new Laid(day, null, outcome.obstacles())
        : new Laid(
            DayFollowed.laid(renamed(day, appointment, batch), appointment), batch, List.of());
  }

  /**
   * A clean piece for each need the plan does not place, as one that only the mouth shows: the
   * preferred kind first, and none the plan means for another tray.
   */
  private List<StockItem> beside(PlannedDay day, Booking booking, List<StockItem> laid) {
    Set<String> placed = new HashSet<>();
    day.plan()
        .trays()
        .forEach(one -> placed.add(PlannedDay.itemLabel(day.label(one.instrument()))));
    List<StockItem> clean =
        service.drawer().in(InstrumentState.CLEAN).stream()
            .filter(item -> !placed.contains(item.label()))
            .sorted(Comparator.comparing(StockItem::label))
            .toList();
    List<StockItem> more = new ArrayList<>();
    for (PieceNeed need : booking.pieces()) {
      if (!need.scheduledOn(day, booking.id()) && laid.stream().noneMatch(need::servedBy)) {
        need.anyOf().stream()
            .flatMap(kind -> clean.stream().filter(item -> item.is(kind)))
            .filter(item -> !more.contains(item))
            .findFirst()
            .ifPresent(more::add);
      }
    }
    return more;
  }

  /** The handpieces, hand instruments and tips that lie on the tray of this appointment now. */
  public List<StockItem> laidBeside(LocalDate date, Booking booking) {
    if (booking.pieces().isEmpty()) {
      return List.of();
    }
    String note = note(date, booking.id());
    return service.drawer().in(InstrumentState.ON_TRAY).stream()
        .filter(item -> booking.pieces().stream().anyMatch(need -> need.servedBy(item)))
        .filter(
            item -> {
              List<DrawerEntry> history = service.drawer().history(item.id());
              return history.get(history.size() - 1).note().equals(note);
            })
        .toList();
  }

  /** Takes the tray of an appointment back; what stands against it, or nothing. */
  public List<Obstacle> takeBack(LocalDate date, PlannedDay day, String appointment) {
    UUID batch = batch(date, day, appointment).orElse(null);
    return batch == null || service.drawer().undone(batch)
        ? List.of()
        : service.undo(batch, note(date, appointment)).obstacles();
  }

  /** Takes back a laying just done. */
  public void takeBack(UUID batch) {
    service.undo(batch, "");
  }

  /** Whether this tray was laid in the drawer, and that was taken back. */
  public boolean wasTakenBack(LocalDate date, PlannedDay day, String appointment) {
    return batch(date, day, appointment).filter(service.drawer()::undone).isPresent();
  }

  /** The newest change of the drawer by which this tray was laid. */
  private Optional<UUID> batch(LocalDate date, PlannedDay day, String appointment) {
    String note = note(date, appointment);
    DrawerEntry newest = null;
    for (TrayPlace place : places(day, appointment)) {
      StockItem item = item(day, place.instrument());
      if (item == null) {
        continue;
      }
      for (DrawerEntry entry : service.drawer().history(item.id())) {
        boolean laid = entry.undoes() == null && entry.note().equals(note);
        if (laid && (newest == null || entry.at().isAfter(newest.at()))) {
          newest = entry;
        }
      }
    }
    return Optional.ofNullable(newest).map(DrawerEntry::batch);
  }

  private static List<TrayPlace> places(PlannedDay day, String appointment) {
    return day.plan().trays().stream().filter(t -> t.appointment().equals(appointment)).toList();
  }

  private @Nullable StockItem item(PlannedDay day, InstrumentRef ref) {
    return service.drawer().labelled(PlannedDay.itemLabel(day.label(ref))).orElse(null);
  }

  /** Another appointment of the day on whose tray this instrument was laid last. */
  private static Optional<String> other(PlannedDay day, TrayPlace place) {
    return day.problem().facts().trays().stream()
        .filter(t -> t.instrument().equals(place.instrument()))
        .map(TrayPlace::appointment)
        .filter(id -> !id.equals(place.appointment()))
        .reduce((first, second) -> second);
  }

  /** The day with the pieces that were taken out of lots under their own labels. */
  private PlannedDay renamed(PlannedDay day, String appointment, UUID batch) {
    Map<String, String> parts = new HashMap<>();
    String lot = "";
    for (DrawerEntry entry : service.drawer().batch(batch)) {
      if (entry.what() == DrawerEntry.What.SPLIT && entry.before() == null) {
        parts.put(lot, entry.after().label());
      }
      lot = entry.after().label();
    }
    PlannedDay renamed = day;
    for (TrayPlace place : places(day, appointment)) {
      String part = parts.get(PlannedDay.itemLabel(day.label(place.instrument())));
      renamed = part == null ? renamed : renamed.called(place.instrument(), part);
    }
    return renamed;
  }
}
