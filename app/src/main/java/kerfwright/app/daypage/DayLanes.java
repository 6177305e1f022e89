package kerfwright.app.daypage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kerfwright.app.words.Say;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DaySetting;
import kerfwright.practice.daylist.PlannedDay;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.Shortage;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.Stock;
import kerfwright.schedule.TrayPlace;

/**
 * The day as lanes to the scale of time: chairs, sterilisers, and the instruments of types that
 * have to be turned round or are short. Where everything lies is computed here, {@code
 * day/lanes.jte} draws it. Text is large enough to be read across the room.
 */
public final class DayLanes {
  /** Width of the drawing, and of the column of names at its left. */
  public static final int WIDE = 1200;

  public static final int LEFT = 148;
  private static final int CHAIR = 78;
  private static final int STERILISER = 58;
  private static final int PIECE = 34;
  private static final int HEAD = 30;
  private static final int MOST_PIECES = 9;

  /** The ground of a lane; a chair's has its name. */
  public record Ground(String kind, String chair, double y, int height) {}

  /** A box of a kind, in which something happens. */
  public record Box(double x, double y, double width, double height, String kind) {}

  /** Words of a kind, at a point of their base line. */
  public record Words(double x, double y, int size, String kind, String anchor, String text) {}

  /** An upright line from one height to another. */
  public record Upright(double x, double from, String kind) {}

  /** An appointment, with what is told of it, and how many instruments it lacks. */
  public record Visit(Booking booking, String told, Box box, int missing, List<Words> words) {}

  private final DayView view;
  private final Say say;
  private final DaySetting setting;
  private final List<Ground> grounds = new ArrayList<>();
  private final List<Visit> visits = new ArrayList<>();
  private final List<Box> boxes = new ArrayList<>();
  private final List<Words> words = new ArrayList<>();
  private final List<Upright> uprights = new ArrayList<>();
  private double y = 44;

  DayLanes(DayView view) {
    this.view = view;
    this.say = view.say();
    this.setting = view.setting();
    int nowMin = view.nowMin();
    PlannedDay planned = view.shown();
    hours();
    Set<String> chairs = new LinkedHashSet<>(setting.chairs());
    // an appointment in a chair that is no longer there must be seen to be moved
    view.book().bookings().forEach(b -> chairs.add(b.chair()));
    chairs.forEach(this::chair);
    if (planned != null) {
      sterilisers(planned);
      pieces(planned);
    }
    if (nowMin > 0) {
      uprights.add(new Upright(x(nowMin), 34, "lane-now"));
      boolean late = nowMin > setting.lengthMin() * 0.9;
      double beside = x(nowMin) + (late ? -5 : 5);
      anchored(beside, 40, 15, "lane-now-text", late ? "end" : "start", say.at("day.now"));
    }
  }

  public double height() {
    return y + 8;
  }

  /** Width of the lanes alone. */
  public double length() {
    return rounded(setting.lengthMin() * perMin());
  }

  public double perMin() {
    return (double) (WIDE - LEFT - 10) / setting.lengthMin();
  }

  /** Minute of the clock the lanes begin at. */
  public int opens() {
    return setting.opens().toSecondOfDay() / 60;
  }

  public List<Ground> grounds() {
    return List.copyOf(grounds);
  }

  public List<Visit> visits() {
    return List.copyOf(visits);
  }

  public List<Box> boxes() {
    return List.copyOf(boxes);
  }

  public List<Words> words() {
    return List.copyOf(words);
  }

  public List<Upright> uprights() {
    return List.copyOf(uprights);
  }

  private double x(int minute) {
    return LEFT + minute * perMin();
  }

  private void hours() {
    int first = (60 - setting.opens().getMinute()) % 60;
    for (int m = first; m <= setting.lengthMin(); m += 60) {
      uprights.add(new Upright(rounded(x(m)), 30, "lane-hour"));
      String hour = say.time(setting.opens().plusMinutes(m));
      String anchor = m == 0 ? "start" : m > setting.lengthMin() - 20 ? "end" : "middle";
      anchored(x(m), 22, 20, "lane-text", anchor, hour);
    }
  }

  private void chair(String chair) {
    row(CHAIR, say.at("day.chair", chair), "chair", chair);
    for (Booking b : view.book().bookings()) {
      if (b.chair().equals(chair)) {
        visit(b);
      }
    }
    y += CHAIR;
  }

  private void visit(Booking b) {
    int start = setting.minute(b.start());
    double width = (setting.minute(b.end()) - start) * perMin() - 3;
    int missing = Tray.of(b, view.shown()).missing().size();
    String told =
        say.at(
            missing > 0 ? "day.visit-short" : "day.visit",
            b.id(),
            say.time(b.start()),
            say.time(b.end()),
            LaneText.what(b),
            missing);
    double room = missing > 0 ? width - 34 : width;
    int size = LaneText.width(b.id(), 23) > room - 8 ? 17 : 23;
    double left = x(start) + 5;
    List<Words> within =
        List.of(
            new Words(
                rounded(left),
                y + 32,
                size,
                "lane-strong",
                "start",
                LaneText.fit(b.id(), room, size)),
            new Words(
                rounded(left), y + 58, 16, "lane-text", "start", LaneText.second(b, width - 8)));
    Box box = box(x(start), y + 5, width, CHAIR - 10, "lane-box");
    visits.add(new Visit(b, told, box, missing, within));
  }

  private void sterilisers(PlannedDay day) {
    Day problem = day.problem();
    List<List<SteriliserLoad>> lanes = new ArrayList<>();
    for (int s = 0; s < problem.sterilisers(); s++) {
      lanes.add(new ArrayList<>());
    }
    List<SteriliserLoad> loads = day.plan().loads();
    for (SteriliserLoad load : loads) {
      lanes.stream()
          .filter(
              lane ->
                  lane.isEmpty()
                      || lane.get(lane.size() - 1).startMin() + problem.loadMin()
                          <= load.startMin())
          .findFirst()
          .ifPresent(lane -> lane.add(load));
    }
    for (int s = 0; s < lanes.size(); s++) {
      row(STERILISER, say.at("day.steriliser", s + 1), "steriliser", "");
      for (SteriliserLoad load : lanes.get(s)) {
        int from = Math.max(0, load.startMin());
        double width = (load.startMin() + problem.loadMin() - from) * perMin() - 3;
        boolean fixed = problem.facts().loads().contains(load);
        boxes.add(
            box(x(from), y + 5, width, STERILISER - 10, fixed ? "lane-load started" : "lane-load"));
        int number = loads.indexOf(load) + 1;
        text(
            x(from) + 7,
            y + 27,
            19,
            "lane-strong",
            LaneText.fit(say.at("day.load-short", number), width, 19));
        String filled = load.instruments().size() + "/" + problem.loadCapacity();
        text(x(from) + 7, y + 46, 15, "lane-text", filled);
      }
      y += STERILISER;
    }
  }

  /** Types under pressure: the short ones first, then those asked for more often than there are. */
  private void pieces(PlannedDay day) {
    Map<String, Integer> asked = new HashMap<>();
    day.problem()
        .appointments()
        .forEach(a -> a.needs().forEach(type -> asked.merge(type, 1, Integer::sum)));
    Map<String, Integer> missing = new HashMap<>();
    day.plan().shortages().forEach(s -> missing.merge(s.type(), 1, Integer::sum));
    List<Stock> pressed =
        day.problem().stock().stream()
            .filter(s -> asked.getOrDefault(s.type(), 0) > s.uses().size())
            .sorted(
                Comparator.comparingInt((Stock s) -> -missing.getOrDefault(s.type(), 0))
                    .thenComparingInt(s -> s.uses().size() - asked.getOrDefault(s.type(), 0))
                    .thenComparing(Stock::type))
            .toList();
    int shown = 0;
    for (Stock s : pressed) {
      if (shown > 0 && shown + s.uses().size() > MOST_PIECES) {
        break;
      }
      shown += Math.max(1, s.uses().size());
      text(8, y + 22, 17, "lane-strong", view.types().apply(s.type()));
      y += HEAD;
      for (int u = 0; u < s.uses().size(); u++) {
        piece(day, new InstrumentRef(s.type(), u));
      }
      if (missing.containsKey(s.type())) {
        addShortage(day, s.type());
      }
    }
  }

  private void piece(PlannedDay day, InstrumentRef ref) {
    Day problem = day.problem();
    row(PIECE, day.label(ref), "piece", "");
    for (TrayPlace t : day.plan().trays()) {
      if (t.instrument().equals(ref)) {
        problem
            .appointment(t.appointment())
            .ifPresent(
                a -> {
                  block(a.startMin(), a.endMin(), "lane-used", a.id());
                  int cleaned = Math.min(problem.lengthMin(), a.endMin() + problem.cleaningMin());
                  block(a.endMin(), cleaned, "lane-cleaning", "");
                });
      }
    }
    DayPlan plan = day.plan();
    for (int n = 0; n < plan.loads().size(); n++) {
      SteriliserLoad load = plan.loads().get(n);
      if (load.instruments().contains(ref)) {
        int from = Math.max(0, load.startMin());
        block(
            from,
            load.startMin() + problem.loadMin(),
            "lane-load",
            say.at("day.load-short", n + 1));
      }
    }
    y += PIECE;
  }

  private void addShortage(PlannedDay day, String type) {
    row(PIECE, say.at("day.missing"), "piece", "");
    for (Shortage s : day.plan().shortages()) {
      if (s.type().equals(type)) {
        day.problem()
            .appointment(s.appointment())
            .ifPresent(a -> block(a.startMin(), a.endMin(), "lane-missing", "! " + a.id()));
      }
    }
    y += PIECE;
  }

  private void block(int from, int until, String kind, String label) {
    double width = (until - from) * perMin() - 2;
    boxes.add(box(x(from), y + 3, width, PIECE - 6, kind));
    if (!label.isEmpty()) {
      text(x(from) + 5, y + 23, 16, kind + "-text", LaneText.fit(label, width - 4, 16));
    }
  }

  private void row(int height, String label, String kind, String chair) {
    grounds.add(new Ground(kind, chair, y, height));
    int usual = height > PIECE ? 21 : 17;
    int size = LaneText.width(label, usual) > LEFT - 12 ? 16 : usual;
    text(8, y + height / 2.0 + 7, size, "lane-text", LaneText.fit(label, LEFT - 8, size));
  }

  private static Box box(double x, double y, double width, double height, String kind) {
    return new Box(rounded(x), rounded(y), rounded(Math.max(1, width)), height, kind);
  }

  private void text(double x, double base, int size, String kind, String label) {
    anchored(x, base, size, kind, "start", label);
  }

  private void anchored(double x, double base, int size, String kind, String anchor, String label) {
    words.add(new Words(rounded(x), rounded(base), size, kind, anchor, label));
  }

  private static double rounded(double value) {
    return Math.round(value * 10) / 10.0;
  }
}
