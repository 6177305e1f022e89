package kerfwright.app.daypage;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerfwright.app.input.BadInput;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.BookingFault;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.DayBooks;
import kerfwright.practice.daylist.DayFollowed;
import kerfwright.practice.daylist.DaySetting;
import kerfwright.practice.daylist.DrawerDay;
import kerfwright.practice.daylist.PlannedDay;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.setting.Settings;
import kerfwright.schedule.Day;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.InvalidDayException;
import kerfwright.schedule.Need;
import kerfwright.schedule.remedy.Remedy;
import org.jspecify.annotations.Nullable;

/**
 * What can be done with a day: plan, stop, move, be late, take a remedy, mark what happened.
 *
 * @param jobs the searches begun, each until its day is another one
 */
record DayService(
    DayBooks books,
    Drawer drawer,
    Settings settings,
    CaseNeeds needs,
    DayMoves round,
    Clock clock,
    Map<LocalDate, DayJob> jobs) {
  private static final int QUARTER_MIN = 15;

  DaySetting setting() {
    return DaySetting.of(settings.read());
  }

  LocalDate today() {
    return LocalDate.now(clock);
  }

  /** The next full quarter of an hour from now. */
  LocalTime freeMinute() {
    LocalTime now = LocalTime.now(clock).truncatedTo(ChronoUnit.MINUTES);
    return now.plusMinutes(QUARTER_MIN - now.getMinute() % QUARTER_MIN);
  }

  /** The minute of this day it is now; 0 on other days, before opening and after closing. */
  int nowMin(LocalDate date) {
    DaySetting setting = setting();
    int now = setting.minute(LocalTime.now(clock));
    return date.equals(today()) && now > 0 && now < setting.lengthMin() ? now : 0;
  }

  Optional<DayJob.State> job(LocalDate date) {
    return Optional.ofNullable(jobs.get(date)).map(DayJob::state);
  }

  /** Begins to plan; what has happened already is kept, else the drawer is looked at afresh. */
  void plan(LocalDate date) throws BadInput {
    DayBook book = withNeeds(books.read(date));
    PlannedDay before = book.planned();
    boolean begun = before != null && !before.problem().facts().equals(FixedFacts.NONE);
    if (before != null && begun) {
      begin(book, before.problem(), before.pieces());
    } else {
      DrawerDay day = DrawerDay.of(book.bookings(), drawer, setting().inService(round.loads()));
      begin(book, round.started(date, day), day.pieces());
    }
  }

  /** The book with the needs of those cases that were entered without being planned. */
  private DayBook withNeeds(DayBook book) throws BadInput {
    List<Booking> all = new ArrayList<>();
    for (Booking b : book.bookings()) {
      String text = b.caseText();
      if (text != null && b.needs().isEmpty()) {
        CaseNeeds.Asked asked = needs.of(text);
        all.add(b.needing(asked.needs(), asked.pieces()));
      } else {
        all.add(b);
      }
    }
    if (all.equals(book.bookings())) {
      return book;
    }
    boolean written = books.write(book.with(all, book.planned()), "needs");
    return written ? books.read(book.date()) : book;
  }

  private void begin(DayBook book, Day problem, Map<String, List<String>> pieces) {
    DayJob job =
        new DayJob(
            book.date(),
            problem,
            pieces,
            planned -> {
              DayBook now = books.read(book.date());
              return now.bookings().equals(book.bookings())
                  && books.write(now.with(now.bookings(), planned), "planned");
            });
    DayJob before = jobs.put(book.date(), job);
    if (before != null) {
      before.stop();
    }
    Thread search = new Thread(job, "day-plan");
    search.setDaemon(true);
    search.start();
  }

  void stop(LocalDate date) {
    DayJob job = jobs.get(date);
    if (job != null) {
      job.stop();
    }
  }

  /**
   * What a changed list would bring.
   *
   * @param bookings the list as it would be
   * @param faults why it cannot be, empty where it can
   * @param followed the plan as it would be; null where there is none, or the list cannot be
   * @param factsBroken true where it contradicts what has happened already
   */
  record Effect(
      List<Booking> bookings,
      List<BookingFault> faults,
      @Nullable DayFollowed followed,
      boolean factsBroken) {
    boolean possible() {
      return faults.isEmpty() && !factsBroken;
    }
  }

  Effect effect(DayBook book, List<Booking> changed, int nowMin) {
    DaySetting setting = setting();
    List<BookingFault> faults = BookingFault.of(changed, setting);
    PlannedDay planned = book.planned();
    if (!faults.isEmpty() || planned == null) {
      return new Effect(changed, faults, null, false);
    }
    try {
      DrawerDay fresh = DrawerDay.of(changed, drawer, setting);
      return new Effect(changed, faults, DayFollowed.of(planned, fresh, nowMin), false);
    } catch (InvalidDayException impossible) {
      return new Effect(changed, faults, null, true);
    }
  }

  /** Makes a change; false where the day is another one by now. */
  boolean apply(DayBook book, Effect effect, String what) {
    forget(book.date());
    DayFollowed followed = effect.followed();
    PlannedDay planned = followed == null ? null : followed.planned();
    return effect.possible() && books.write(book.with(effect.bookings(), planned), what);
  }

  /** Lays the tray of one appointment. */
  DayMoves.Done lay(DayBook book, PlannedDay planned, Booking booking) {
    forget(book.date());
    return round.lay(book, planned, booking);
  }

  /** Follows the loads really started today. */
  void loadsChanged() {
    LocalDate today = today();
    DayBook book = books.read(today);
    if (book.planned() != null) {
      forget(today);
      round.follow(today);
    }
  }

  private void forget(LocalDate date) {
    stop(date);
    jobs.remove(date);
  }

  /** The last version with another list or other facts comes back; empty where there is none. */
  Optional<DayMoves.Done> undo(LocalDate date) {
    DayBook now = books.read(date);
    for (int version = now.version() - 1; version >= 1; version--) {
      DayBook before = books.read(date, version);
      if (!before.bookings().equals(now.bookings())
          || !DayMoves.facts(before).equals(DayMoves.facts(now))) {
        forget(date);
        return Optional.of(round.bringBack(now, before));
      }
    }
    return Optional.empty();
  }

  /** Takes a remedy and plans the changed day; false where it cannot be taken. */
  boolean take(LocalDate date, Remedy remedy) {
    DayBook book = books.read(date);
    PlannedDay planned = book.planned();
    if (planned == null || remedy instanceof Remedy.BuyMore) {
      return false;
    }
    Optional<Day> changed = remedy.applied(planned.problem());
    if (changed.isEmpty()) {
      return false;
    }
    DaySetting setting = setting();
    List<Booking> bookings = new ArrayList<>();
    for (Booking b : book.bookings()) {
      changed
          .get()
          .appointment(b.id())
          .ifPresent(
              a -> {
                List<Need> needs = a.needs().stream().map(a::detail).toList();
                bookings.add(
                    b.needing(needs)
                        .at(
                            setting.opens().plusMinutes(a.startMin()),
                            setting.opens().plusMinutes(a.endMin()),
                            a.chair() == null ? b.chair() : a.chair()));
              });
    }
    DayBook taken = book.with(bookings, null);
    if (!books.write(taken, "remedy")) {
      return false;
    }
    begin(books.read(date), changed.get(), planned.pieces());
    return true;
  }
}
