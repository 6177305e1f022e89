package kerfwright.app.day;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.Goal;
import kerfwright.schedule.GoalResult;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.Shortage;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.TrayPlace;
import kerfwright.schedule.remedy.RemedyResult;
import kerfwright.schedule.search.FreshTrays;

/** A day plan in words, in the order in which it is acted on: shortages, loads, trays. */
final class DayText {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

  private final Day problem;
  private final DayPlan plan;
  private final List<RemedyResult> remedies;
  private final StringBuilder out = new StringBuilder();

  private DayText(Day problem, DayPlan plan, List<RemedyResult> remedies) {
    this.problem = problem;
    this.plan = plan;
    this.remedies = remedies;
  }

  static String of(Day problem, DayPlan plan, List<RemedyResult> remedies) {
    DayText text = new DayText(problem, plan, remedies);
    text.shortages();
    text.remedies();
    text.loads();
    text.trays();
    text.goals();
    return text.out.toString();
  }

  private String clock(int minute) {
    return CLOCK.format(problem.clock(minute));
  }

  private void shortages() {
    if (plan.shortages().isEmpty()) {
      out.append("No shortage: every tray of the day is complete.\n");
      return;
    }
    out.append("Short of ").append(count(plan.shortages().size(), "instrument")).append(":\n");
    for (Appointment a : inOrder()) {
      List<String> missing = new ArrayList<>();
      for (Shortage s : plan.shortages()) {
        if (s.appointment().equals(a.id())) {
          missing.add(s.type());
        }
      }
      if (!missing.isEmpty()) {
        line(clock(a.startMin()) + "  " + a.id(), String.join(", ", missing));
      }
    }
  }

  private void remedies() {
    if (remedies.isEmpty()) {
      return;
    }
    out.append("\nWhat would help, the cheapest first (each planned again):\n");
    for (RemedyResult r : remedies) {
      String proof = r.plan().result(Goal.SHORTAGES).proven() ? "" : " at most";
      line(
          new RemedyFields(problem, r).words(),
          "leaves"
              + proof
              + " "
              + count(r.shortagesAfter(), "shortage")
              + " and "
              + count(r.loadsAfter(), "load")
              + "; costs about "
              + Math.round(r.costMin())
              + " min of work");
    }
  }

  private void loads() {
    out.append("\nSteriliser loads, ").append(plan.loads().size()).append(" in all:\n");
    int n = 0;
    for (SteriliserLoad load : plan.loads()) {
      String span = clock(load.startMin()) + "-" + clock(load.startMin() + problem.loadMin());
      String fixed = problem.facts().loads().contains(load) ? " (started)" : "";
      int size = load.instruments().size();
      line(
          ++n + ". " + span + fixed,
          size + " of " + problem.loadCapacity() + ": " + named(load.instruments()));
    }
    if (plan.loads().isEmpty()) {
      out.append("  none is needed during the day\n");
    }
  }

  private void trays() {
    out.append("\nTrays (numbers are the instruments of a type, from 1 as in the drawer list):\n");
    for (Appointment a : inOrder()) {
      List<InstrumentRef> tray = new ArrayList<>();
      for (TrayPlace t : plan.trays()) {
        if (t.appointment().equals(a.id())) {
          tray.add(t.instrument());
        }
      }
      String chair = a.chair() == null ? "" : "  chair " + a.chair();
      line(
          clock(a.startMin()) + "-" + clock(a.endMin()) + "  " + a.id() + chair,
          tray.isEmpty() ? "nothing" : named(tray));
    }
    for (FreshTrays.Worn w : FreshTrays.worn(problem, plan)) {
      line(
          "worn",
          w.place().appointment()
              + " asks "
              + Math.round(100 * w.asked())
              + " % of a life of "
              + named(List.of(w.place().instrument()))
              + ", which has "
              + Math.round(100 * w.left())
              + " % left");
    }
  }

  private void goals() {
    out.append("\nHow good this plan is (each goal given those above it):\n");
    for (GoalResult g : plan.goals()) {
      String proof =
          g.proven()
              ? "proven: no plan has fewer"
              : g.bound() == g.value()
                  ? "cannot be fewer unless a goal above gets better; that goal is not proven"
                  : "not proven: between " + g.bound() + " and " + g.value() + " is possible";
      line(
          switch (g.goal()) {
            case SHORTAGES -> "shortages";
            case LOADS -> "loads";
            case WEAR -> "unevenness of wear";
          },
          g.value() + ", " + proof);
    }
    out.append("A planning aid: check sterile state and makers' limits before each use.\n");
  }

  private List<Appointment> inOrder() {
    return problem.appointments().stream()
        .sorted(Comparator.comparingInt(Appointment::startMin))
        .toList();
  }

  /** Instruments by type, numbered from 1 for people. */
  private static String named(List<InstrumentRef> refs) {
    Map<String, List<String>> byType = new TreeMap<>();
    refs.stream()
        .sorted()
        .forEach(
            r ->
                byType
                    .computeIfAbsent(r.type(), t -> new ArrayList<>())
                    .add(String.valueOf(r.index() + 1)));
    List<String> parts = new ArrayList<>();
    byType.forEach((type, numbers) -> parts.add(type + " " + String.join("+", numbers)));
    return String.join(", ", parts);
  }

  private static String count(int n, String thing) {
    return n + " " + thing + (n == 1 ? "" : "s");
  }

  private void line(String what, String text) {
    out.append("  ").append(what).append("  ").append(text).append('\n');
  }
}
