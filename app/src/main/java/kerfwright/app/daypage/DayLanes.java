package kerfwright.app.daypage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
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
import org.jspecify.annotations.Nullable;

/**
 * The day as lanes to the scale of time: chairs, sterilisers, and the instruments of types that
 * have to be turned round or are short. Text is large enough to be read across the room.
 */
final class DayLanes {
  private static final int WIDE = 1200;
  private static final int LEFT = 148;
  private static final int CHAIR = 78;
  private static final int STERILISER = 58;
  private static final int PIECE = 34;
  private static final int HEAD = 30;
  private static final int MOST_PIECES = 9;
  private static final double LETTER = 0.58;

  private final Say say;
  private final List<Booking> bookings;
  private final DaySetting setting;
  private final @Nullable PlannedDay planned;
  private final UnaryOperator<String> typeWords;
  private final StringBuilder out = new StringBuilder();
  private double y;
  private boolean movable;

  DayLanes(
      Say say,
      List<Booking> bookings,
      DaySetting setting,
      @Nullable PlannedDay planned,
      UnaryOperator<String> typeWords) {
    this.say = say;
    this.bookings = bookings;
    this.setting = setting;
    this.planned = planned;
    this.typeWords = typeWords;
  }

  /**
   * The drawing.
   *
   * @param nowMin minute of the day it is now, 0 where the day has not begun
   * @param canMove whether appointments can be moved in it
   */
  String svg(int nowMin, boolean canMove) {
    movable = canMove;
    y = 44;
    Set<String> chairs = new LinkedHashSet<>(setting.chairs());
    // an appointment in a chair that is no longer there must be seen to be moved
    bookings.forEach(b -> chairs.add(b.chair()));
    chairs.forEach(this::chair);
    if (planned != null) {
      sterilisers(planned);
      pieces(planned);
    }
    String lanes = out.toString();
    out.setLength(0);
    double height = y + 8;
    out.append(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"lanes\" role=\""
            + (movable ? "group" : "img")
            + "\" viewBox=\"0 0 ");
    out.append(WIDE).append(' ').append(number(height)).append("\" aria-label=\"");
    out.append(escape(say.at("day.lanes"))).append("\" data-opens=\"");
    out.append(setting.opens().toSecondOfDay() / 60).append("\" data-left=\"").append(LEFT);
    out.append("\" data-per-min=\"").append(number(perMin())).append("\">");
    out.append(
        "<defs><pattern id=\"lane-hatch\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\""
            + " patternTransform=\"rotate(45)\"><path class=\"lane-hatch\" d=\"M0 0V8\"/></pattern></defs>");
    hours(height);
    out.append(lanes);
    if (nowMin > 0) {
      line(x(nowMin), 34, x(nowMin), height - 6, "lane-now");
      boolean late = nowMin > setting.lengthMin() * 0.9;
      double beside = x(nowMin) + (late ? -5 : 5);
      anchored(beside, 40, 15, "lane-now-text", late ? "end" : "start", say.at("day.now"));
    }
    return out.append("</svg>").toString();
  }

  private double perMin() {
    return (double) (WIDE - LEFT - 10) / setting.lengthMin();
  }

  private double x(int minute) {
    return LEFT + minute * perMin();
  }

  private void hours(double height) {
    int first = (60 - setting.opens().getMinute()) % 60;
    for (int m = first; m <= setting.lengthMin(); m += 60) {
      line(x(m), 30, x(m), height - 6, "lane-hour");
      String hour = say.time(setting.opens().plusMinutes(m));
      String anchor = m == 0 ? "start" : m > setting.lengthMin() - 20 ? "end" : "middle";
      anchored(x(m), 22, 20, "lane-text", anchor, hour);
    }
  }

  private void chair(String chair) {
    row(CHAIR, say.at("day.chair", chair), "chair", chair);
    for (Booking b : bookings) {
      if (b.chair().equals(chair)) {
        visit(b);
      }
    }
    y += CHAIR;
  }

  private void visit(Booking b) {
    int start = setting.minute(b.start());
    double width = (setting.minute(b.end()) - start) * perMin() - 3;
    long missing =
        planned == null
            ? 0
            : planned.plan().shortages().stream()
                .filter(s -> s.appointment().equals(b.id()))
                .count();
    String told =
        say.at(
            missing > 0 ? "day.visit-short" : "day.visit",
            b.id(),
            say.time(b.start()),
            say.time(b.end()),
            what(b),
            missing);
    out.append("<g class=\"visit").append(missing > 0 ? " short" : "");
    out.append('"');
    if (movable) {
      out.append(" tabindex=\"0\" role=\"button\" data-booking=\"").append(escape(b.id()));
      out.append("\" data-start=\"").append(b.start().toSecondOfDay() / 60);
      out.append("\" data-chair=\"").append(escape(b.chair())).append("\" aria-label=\"");
      out.append(escape(told)).append('"');
    }
    out.append("><title>").append(escape(told)).append("</title>");
    rect(x(start), y + 5, width, CHAIR - 10, "lane-box");
    double room = missing > 0 ? width - 34 : width;
    int size = b.id().length() * 23 * LETTER > room - 8 ? 17 : 23;
    text(x(start) + 5, y + 32, size, "lane-strong", fit(b.id(), room, size));
    text(x(start) + 5, y + 58, 16, "lane-text", second(b, width - 8));
    if (missing > 0) {
      out.append("<circle class=\"lane-mark\" cx=\"").append(number(x(start) + width - 17));
      out.append("\" cy=\"").append(number(y + 24)).append("\" r=\"14\"/>");
      anchored(x(start) + width - 17, y + 31, 19, "lane-mark-text", "middle", "\u2212" + missing);
    }
    out.append("</g>");
  }

  /** As much as can be read whole: work, or the tooth alone. */
  private static String second(Booking b, double width) {
    String both = (b.tooth() + " " + b.work()).strip();
    for (String words : List.of(what(b), both, b.work(), b.tooth())) {
      if (!words.isEmpty() && words.length() * 16 * LETTER <= width) {
        return words;
      }
    }
    return "";
  }

  private static String what(Booking b) {
    String reference = b.caseReference();
    return b.tooth().isEmpty() ? b.work() : (b.tooth() + " " + b.work() + " " + reference).strip();
  }

  private void sterilisers(PlannedDay day) {
    Day problem = day.problem();
    List<List<SteriliserLoad>> lanes = new ArrayList<>();
    for (int s = 0; s < problem.sterilisers(); s++) {
      lanes.add(new ArrayList<>());
    }
    List<SteriliserLoad> loads = new ArrayList<>(day.plan().loads());
    loads.sort(Comparator.comparingInt(SteriliserLoad::startMin));
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
        rect(x(from), y + 5, width, STERILISER - 10, fixed ? "lane-load started" : "lane-load");
        int number = loads.indexOf(load) + 1;
        text(
            x(from) + 7,
            y + 27,
            19,
            "lane-strong",
            fit(say.at("day.load-short", number), width, 19));
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
      text(8, y + 22, 17, "lane-strong", typeWords.apply(s.type()));
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

  private void block(int from, int until, String kind, String words) {
    double width = (until - from) * perMin() - 2;
    rect(x(from), y + 3, width, PIECE - 6, kind);
    if (!words.isEmpty()) {
      text(x(from) + 5, y + 23, 16, kind + "-text", fit(words, width - 4, 16));
    }
  }

  private void row(int height, String label, String kind, String chair) {
    out.append("<rect class=\"lane lane-").append(kind).append('"');
    if (!chair.isEmpty()) {
      out.append(" data-lane=\"").append(escape(chair)).append('"');
    }
    out.append(" x=\"").append(LEFT).append("\" y=\"").append(number(y)).append("\" width=\"");
    out.append(number(setting.lengthMin() * perMin()))
        .append("\" height=\"")
        .append(height)
        .append("\"/>");
    int usual = height > PIECE ? 21 : 17;
    int size = label.length() * usual * LETTER > LEFT - 12 ? 16 : usual;
    text(8, y + height / 2.0 + 7, size, "lane-text", fit(label, LEFT - 8, size));
  }

  private void rect(double x, double top, double width, double height, String kind) {
    out.append("<rect class=\"").append(kind).append("\" x=\"").append(number(x));
    out.append("\" y=\"")
        .append(number(top))
        .append("\" width=\"")
        .append(number(Math.max(1, width)));
    out.append("\" height=\"").append(number(height)).append("\" rx=\"5\"/>");
  }

  private void line(double x1, double y1, double x2, double y2, String kind) {
    out.append("<path class=\"").append(kind).append("\" d=\"M").append(number(x1)).append(' ');
    out.append(number(y1))
        .append('L')
        .append(number(x2))
        .append(' ')
        .append(number(y2))
        .append("\"/>");
  }

  private void text(double x, double base, int size, String kind, String words) {
    anchored(x, base, size, kind, "start", words);
  }

  private void anchored(double x, double base, int size, String kind, String anchor, String words) {
    out.append("<text class=\"").append(kind).append("\" x=\"").append(number(x));
    out.append("\" y=\"").append(number(base)).append("\" font-size=\"").append(size);
    out.append("\" text-anchor=\"")
        .append(anchor)
        .append("\">")
        .append(escape(words))
        .append("</text>");
  }

  /** As much of the words as there is room for. */
  private static String fit(String words, double width, int size) {
    int letters = (int) (width / (size * LETTER));
    return words.length() <= letters ? words : words.substring(0, Math.max(0, letters));
  }

  private static String number(double value) {
    double rounded = Math.round(value * 10) / 10.0;
    return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
  }

  private static String escape(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
