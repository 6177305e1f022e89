package kerfwright.app.daypage;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import kerfwright.app.day.RemedyWords;
import kerfwright.app.words.Say;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.BookingFault;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.DaySetting;
import kerfwright.practice.daylist.KeptRemedy;
import kerfwright.practice.daylist.PlannedDay;
import kerfwright.practice.restock.PurchaseRequest;
import kerfwright.schedule.Day;
import kerfwright.schedule.Goal;
import kerfwright.schedule.GoalResult;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.Shortage;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.remedy.Remedy;
import kerfwright.schedule.search.FreshTrays;
import org.jspecify.annotations.Nullable;

/**
 * What stands on the page of a day.
 *
 * @param say the language
 * @param book the day
 * @param shown the plan shown: the kept one, or the best of a running search
 * @param job the running search, or null
 * @param setting what days look like here
 * @param nowMin minute of the day, 0 where it has not begun
 * @param types names of types
 * @param requests what stands on the order list
 */
public record DayView(
    Say say,
    DayBook book,
    @Nullable PlannedDay shown,
    DayJob.@Nullable State job,
    DaySetting setting,
    int nowMin,
    UnaryOperator<String> types,
    Set<PurchaseRequest> requests) {
  private static final int TRAYS_AHEAD = 3;
  private static final int MOST_SHORT = 4;

  public boolean running() {
    return job != null && job.running();
  }

  public boolean seekingRemedies() {
    return job != null && job.stage() == DayJob.Stage.REMEDIES;
  }

  public boolean failed() {
    return job != null && job.stage() == DayJob.Stage.FAILED;
  }

  public boolean planned() {
    return shown != null;
  }

  public long seconds() {
    return job == null ? 0 : Math.round(job.seconds());
  }

  public int shortages() {
    return shown == null ? 0 : shown.plan().shortages().size();
  }

  /** The one line to be read across the room. */
  public String headline() {
    if (shown == null) {
      return say.at(running() ? "day.first-plan" : "day.not-planned");
    }
    long trays = shown.plan().shortages().stream().map(Shortage::appointment).distinct().count();
    return shortages() == 0 ? say.at("day.complete") : say.at("day.short", shortages(), trays);
  }

  /** What is short, the first few. */
  public List<String> shortOnes() {
    return shown == null
        ? List.of()
        : shown.plan().shortages().stream()
            .flatMap(s -> book.booking(s.appointment()).stream().map(b -> shortOne(b, s)))
            .limit(MOST_SHORT)
            .toList();
  }

  private String shortOne(Booking b, Shortage s) {
    return say.at("day.short-one", b.id(), say.time(b.start()), b.chair(), types.apply(s.type()));
  }

  /** Appointments that do not fit what is set by now. */
  public List<String> misfits() {
    return FaultWords.of(say, BookingFault.of(book.bookings(), setting));
  }

  public DayLanes lanes() {
    return new DayLanes(this);
  }

  /** The goals with what the running search knows of them by now. */
  public List<GoalResult> goals() {
    List<GoalResult> goals = new ArrayList<>();
    boolean proven = true;
    for (GoalResult g : shown == null ? List.<GoalResult>of() : shown.plan().goals()) {
      int known = job == null ? 0 : job.bounds().getOrDefault(g.goal(), 0);
      int bound = Math.min(g.value(), Math.max(g.bound(), known));
      proven &= bound == g.value();
      goals.add(new GoalResult(g.goal(), g.value(), bound, proven, g.seconds()));
    }
    return goals;
  }

  public String proof(GoalResult goal) {
    return goal.proven()
        ? say.at("day.proven")
        : goal.bound() == goal.value()
            ? say.at("day.proven-given")
            : say.at("day.not-proven", goal.bound(), goal.value());
  }

  public boolean optimal() {
    return shown != null && shown.plan().result(Goal.SHORTAGES).proven();
  }

  /** Trays of the day in order of time. */
  public List<Tray> trays() {
    return book.bookings().stream().map(booking -> Tray.of(booking, shown)).toList();
  }

  /** The next few trays that have not been laid. */
  public List<Tray> nextTrays() {
    return trays().stream()
        .filter(one -> !one.laid() && setting.minute(one.booking().start()) >= nowMin)
        .limit(TRAYS_AHEAD)
        .toList();
  }

  /** From when to when an appointment lasts. */
  public String when(Booking booking) {
    return say.time(booking.start()) + "\u2013" + say.time(booking.end());
  }

  /** What on a tray is asked for more than is left of its life. */
  public List<String> worn(Tray tray) {
    return shown == null
        ? List.of()
        : FreshTrays.worn(shown.problem(), shown.plan()).stream()
            .filter(w -> w.place().appointment().equals(tray.booking().id()))
            .map(
                w ->
                    say.at(
                        "day.worn",
                        label(w.place().instrument()),
                        Math.round(100 * w.asked()),
                        Math.round(100 * w.left())))
            .toList();
  }

  public String label(InstrumentRef piece) {
    return shown == null ? "" : shown.label(piece);
  }

  public List<String> labels(List<InstrumentRef> pieces) {
    return pieces.stream().map(this::label).toList();
  }

  /** A piece by its label and type. */
  public String piece(InstrumentRef piece) {
    return label(piece) + " " + types.apply(piece.type());
  }

  /** The names of types. */
  public List<String> named(List<String> all) {
    return all.stream().map(types).toList();
  }

  /** The page of one tray, what lies on it. */
  public String trayPage(String id) {
    return TrayLabels.page(book.date(), id);
  }

  /** Where the labels of trays are printed. */
  public String trayLabels(List<Booking> bookings) {
    return TrayLabels.sheet(book.date(), bookings);
  }

  /** Loads in order of their start; they are numbered from 1. */
  public List<SteriliserLoad> loads() {
    return shown == null ? List.of() : shown.plan().loads();
  }

  /** The time of a load some minutes after its start. */
  public String time(SteriliserLoad load, int afterMin) {
    return shown == null ? "" : say.time(shown.problem().clock(load.startMin() + afterMin));
  }

  public List<InstrumentRef> inside(SteriliserLoad load) {
    return load.instruments().stream().sorted().toList();
  }

  /** The items of the drawer that go in, for an address. */
  public String asked(SteriliserLoad load) {
    return URLEncoder.encode(
        labels(inside(load)).stream()
            .map(PlannedDay::itemLabel)
            .distinct()
            .collect(Collectors.joining(",")),
        StandardCharsets.UTF_8);
  }

  /** The next load that has not started, or is due and may be started yet; null where none is. */
  public @Nullable SteriliserLoad nextLoad() {
    if (shown == null) {
      return null;
    }
    Day problem = shown.problem();
    return loads().stream()
        .filter(l -> !problem.facts().loads().contains(l))
        .filter(l -> l.startMin() >= nowMin - problem.loadMin())
        .findFirst()
        .orElse(null);
  }

  public List<KeptRemedy> remedies() {
    return shown == null ? List.of() : shown.remedies();
  }

  /** Words for the remedies of the plan shown. */
  public RemedyWords words() {
    return new RemedyWords(say, Objects.requireNonNull(shown).problem(), types);
  }

  /** What a remedy wants bought; null where it is done with what there is. */
  public @Nullable PurchaseRequest wish(KeptRemedy remedy) {
    return remedy.remedy() instanceof Remedy.BuyMore more
        ? new PurchaseRequest(more.type(), book.date(), more.pieces())
        : null;
  }
}
