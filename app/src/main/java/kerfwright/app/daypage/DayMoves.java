package kerfwright.app.daypage;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.DayBooks;
import kerfwright.practice.daylist.DayLoaded;
import kerfwright.practice.daylist.DaySetting;
import kerfwright.practice.daylist.DrawerDay;
import kerfwright.practice.daylist.LoadsOfDay;
import kerfwright.practice.daylist.PlannedDay;
import kerfwright.practice.daylist.TrayService;
import kerfwright.practice.drawer.Obstacle;
import kerfwright.practice.reprocessing.Loads;
import kerfwright.practice.setting.Settings;
import kerfwright.schedule.Day;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.InvalidDayException;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.TrayPlace;

/** Where day, drawer and reprocessing move each other: trays laid, loads started, and undone. */
record DayMoves(DayBooks books, TrayService trays, Loads loads, Settings settings, Clock clock) {
  private static final int TRIES = 5;

  /**
   * What became of a change.
   *
   * @param written whether day and drawer were changed
   * @param obstacles what the drawer holds against it; empty too where the day is another one by
   *     now
   */
  record Done(boolean written, List<Obstacle> obstacles) {
    static final Done MEANWHILE = new Done(false, List.of());

    Done {
      obstacles = List.copyOf(obstacles);
    }
  }

  /** Lays the tray of an appointment, in the day and in the drawer. */
  Done lay(DayBook book, PlannedDay planned, Booking booking) {
    TrayService.Laid laid = trays.lay(book.date(), planned, booking);
    if (!laid.obstacles().isEmpty()) {
      return new Done(false, laid.obstacles());
    }
    if (books.write(book.with(book.bookings(), laid.planned()), "laid")) {
      return new Done(true, List.of());
    }
    UUID batch = laid.batch();
    if (batch != null) {
      trays.takeBack(batch);
    }
    return Done.MEANWHILE;
  }

  /** Brings an earlier version of a day back as the newest, with the drawer where it laid trays. */
  Done bringBack(DayBook now, DayBook before) {
    PlannedDay planned = now.planned();
    PlannedDay was = before.planned();
    for (String appointment : laidOnlyIn(now, before)) {
      if (planned != null) {
        List<Obstacle> against = trays.takeBack(now.date(), planned, appointment);
        if (!against.isEmpty()) {
          return new Done(false, against);
        }
      }
    }
    PlannedDay next = was;
    for (String appointment : laidOnlyIn(before, now)) {
      Booking booking = before.booking(appointment).orElse(null);
      if (booking != null
          && planned != null
          && trays.wasTakenBack(now.date(), planned, appointment)) {
        TrayService.Laid again = trays.lay(now.date(), planned, booking);
        if (!again.obstacles().isEmpty()) {
          return new Done(false, again.obstacles());
        }
        next = now.bookings().equals(before.bookings()) ? again.planned() : next;
      }
    }
    return new Done(books.write(now.with(before.bookings(), next), "undone"), List.of());
  }

  /** Appointments whose tray is laid in one version and not in the other. */
  private static Set<String> laidOnlyIn(DayBook one, DayBook other) {
    Set<TrayPlace> both = new HashSet<>(facts(other).trays());
    Set<String> only = new LinkedHashSet<>();
    facts(one).trays().stream()
        .filter(tray -> !both.contains(tray))
        .forEach(tray -> only.add(tray.appointment()));
    return only;
  }

  static FixedFacts facts(DayBook book) {
    PlannedDay planned = book.planned();
    return planned == null ? FixedFacts.NONE : planned.problem().facts();
  }

  private List<SteriliserLoad> real(LocalDate date, Map<String, List<String>> pieces) {
    return LoadsOfDay.of(loads, date, clock.getZone(), DaySetting.of(settings.read()), pieces);
  }

  /** The day with the loads that were really started and hold something it asks for. */
  Day started(LocalDate date, DrawerDay day) {
    List<SteriliserLoad> real =
        real(date, day.pieces()).stream().filter(load -> !load.instruments().isEmpty()).toList();
    int now = Math.max(0, real.stream().mapToInt(SteriliserLoad::startMin).max().orElse(0));
    List<SteriliserLoad> known = new ArrayList<>();
    Day started = day.problem();
    for (SteriliserLoad load : real) {
      known.add(load);
      try {
        started = day.problem().withFacts(new FixedFacts(now, known, List.of()));
      } catch (InvalidDayException notAsPlanned) {
        known.remove(load);
      }
    }
    return started;
  }

  /** Makes the loads started or failed since fixed facts of the plan of that day. */
  void follow(LocalDate date) {
    for (int attempt = 0; attempt < TRIES; attempt++) {
      DayBook book = books.read(date);
      PlannedDay planned = book.planned();
      if (planned == null) {
        return;
      }
      PlannedDay next = DayLoaded.of(planned, real(date, planned.pieces())).planned();
      if (next.problem().facts().equals(planned.problem().facts())
          || books.write(book.with(book.bookings(), next), "loads")) {
        return;
      }
    }
  }
}
