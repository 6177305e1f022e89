package kerfwright.app.daypage;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import kerfwright.schedule.Goal;
import kerfwright.schedule.GoalResult;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.Shortage;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.TrayPlace;
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

  /** One goal in words. */
  public record GoalLine(String goal, String value, String proof, boolean proven) {}

  /** One tray: when, where, what lies on it, what is missing, what is worn. */
  public record TrayLine(
      String id,
      String when,
      String chair,
      String what,
      List<String> pieces,
      List<String> labels,
      List<String> missing,
      List<String> worn,
      boolean laid) {}

  /** One load: its number, when it starts and ends, and what goes in. */
  public record LoadLine(
      int number,
      int startMin,
      String start,
      String end,
      List<String> pieces,
      List<String> labels,
      boolean started) {
    /** The items of the drawer that go in, for an address. */
    public String asked() {
      return URLEncoder.encode(
          labels.stream().map(PlannedDay::itemLabel).distinct().collect(Collectors.joining(",")),
          StandardCharsets.UTF_8);
    }
  }

  /** One remedy: what to do and what it leaves. */
  public record RemedyLine(
      int index, String words, String result, boolean canTake, boolean canBuy, boolean onList) {}

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
    List<String> lines = new ArrayList<>();
    if (shown != null) {
      for (Shortage s : shown.plan().shortages()) {
        book.booking(s.appointment())
            .filter(b -> lines.size() < MOST_SHORT)
            .ifPresent(
                b ->
                    lines.add(
                        say.at(
                            "day.short-one",
                            b.id(),
                            say.time(b.start()),
                            b.chair(),
                            types.apply(s.type()))));
      }
    }
    return lines;
  }

  /** Appointments that do not fit what is set by now. */
  public List<String> misfits() {
    return BookingFault.of(book.bookings(), setting).stream()
        .map(fault -> FaultWords.of(say, fault))
        .toList();
  }

  public DayLanes lanes() {
    return new DayLanes(say, book.bookings(), setting, shown, types, nowMin);
  }

  public List<GoalLine> goals() {
    List<GoalLine> lines = new ArrayList<>();
    if (shown == null) {
      return lines;
    }
    boolean above = true;
    for (GoalResult g : shown.plan().goals()) {
      int known = job == null ? 0 : job.bounds().getOrDefault(g.goal(), 0);
      int bound = Math.min(g.value(), Math.max(g.bound(), known));
      above &= bound == g.value();
      String proof =
          above
              ? say.at("day.proven")
              : bound == g.value()
                  ? say.at("day.proven-given")
                  : say.at("day.not-proven", bound, g.value());
      lines.add(
          new GoalLine(
              say.at("day.goal-" + g.goal().label()), Integer.toString(g.value()), proof, above));
    }
    return lines;
  }

  public boolean optimal() {
    return shown != null && shown.plan().result(Goal.SHORTAGES).proven();
  }

  /** Trays of the day in order of time. */
  public List<TrayLine> trays() {
    List<TrayLine> lines = new ArrayList<>();
    Map<TrayPlace, FreshTrays.Worn> worn = new LinkedHashMap<>();
    if (shown != null) {
      FreshTrays.worn(shown.problem(), shown.plan()).forEach(w -> worn.put(w.place(), w));
    }
    for (Booking b : book.bookings()) {
      List<String> pieces = new ArrayList<>();
      List<String> labels = new ArrayList<>();
      List<String> missing = new ArrayList<>();
      List<String> tired = new ArrayList<>();
      boolean laid = false;
      if (shown != null) {
        for (TrayPlace t : shown.plan().trays()) {
          if (t.appointment().equals(b.id())) {
            String label = shown.label(t.instrument());
            labels.add(label);
            pieces.add(label + " " + types.apply(t.instrument().type()));
            laid |= shown.problem().facts().trays().contains(t);
            FreshTrays.Worn w = worn.get(t);
            if (w != null) {
              tired.add(
                  say.at(
                      "day.worn", label, Math.round(100 * w.asked()), Math.round(100 * w.left())));
            }
          }
        }
        shown.plan().shortages().stream()
            .filter(s -> s.appointment().equals(b.id()))
            .forEach(s -> missing.add(types.apply(s.type())));
      }
      lines.add(
          new TrayLine(
              b.id(),
              say.time(b.start()) + "\u2013" + say.time(b.end()),
              b.chair(),
              (b.tooth() + " " + b.work() + " " + b.caseReference()).strip(),
              pieces,
              labels,
              missing,
              tired,
              laid));
    }
    return lines;
  }

  /** The page of one tray, what lies on it. */
  public String trayPage(String id) {
    return TrayLabels.page(book.date(), id);
  }

  /** Where the labels of the day's trays are printed. */
  public String trayLabels() {
    return TrayLabels.sheet(book.date(), book.bookings());
  }

  /** The next few trays that have not been laid. */
  public List<TrayLine> nextTrays() {
    List<TrayLine> next = new ArrayList<>();
    List<TrayLine> all = trays();
    for (int i = 0; i < all.size() && next.size() < TRAYS_AHEAD; i++) {
      if (!all.get(i).laid() && setting.minute(book.bookings().get(i).start()) >= nowMin) {
        next.add(all.get(i));
      }
    }
    return next;
  }

  public List<LoadLine> loads() {
    List<LoadLine> lines = new ArrayList<>();
    if (shown == null) {
      return lines;
    }
    List<SteriliserLoad> loads = new ArrayList<>(shown.plan().loads());
    loads.sort(Comparator.comparingInt(SteriliserLoad::startMin));
    for (SteriliserLoad load : loads) {
      lines.add(
          new LoadLine(
              lines.size() + 1,
              load.startMin(),
              say.time(shown.problem().clock(load.startMin())),
              say.time(shown.problem().clock(load.startMin() + shown.problem().loadMin())),
              load.instruments().stream().sorted().map(this::piece).toList(),
              load.instruments().stream().sorted().map(shown::label).toList(),
              shown.problem().facts().loads().contains(load)));
    }
    return lines;
  }

  private String piece(InstrumentRef ref) {
    return shown == null ? "" : shown.label(ref) + " " + types.apply(ref.type());
  }

  /** The next load that has not started, or is due and may be started yet; null where none is. */
  public @Nullable LoadLine nextLoad() {
    int due = shown == null ? nowMin : nowMin - shown.problem().loadMin();
    return loads().stream()
        .filter(l -> !l.started() && l.startMin() >= due)
        .findFirst()
        .orElse(null);
  }

  public boolean isDue(LoadLine load) {
    return load.startMin() < nowMin;
  }

  public List<RemedyLine> remedies() {
    List<RemedyLine> lines = new ArrayList<>();
    if (shown == null) {
      return lines;
    }
    RemedyWords words = new RemedyWords(say, shown.problem(), types);
    for (KeptRemedy told : shown.remedies()) {
      String result =
          say.at(
              told.proven() ? "day.leaves" : "day.leaves-at-most",
              told.shortagesAfter(),
              told.loadsAfter(),
              Math.round(told.costMin()));
      boolean buy = told.remedy() instanceof Remedy.BuyMore;
      boolean onList =
          told.remedy() instanceof Remedy.BuyMore more
              && requests.contains(new PurchaseRequest(more.type(), book.date(), more.pieces()));
      lines.add(
          new RemedyLine(
              lines.size(),
              words.of(told.remedy()),
              result,
              !running() && !buy,
              !running() && buy && !onList,
              onList));
    }
    return lines;
  }
}
