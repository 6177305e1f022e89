package kerfwright.app.day;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kerfwright.app.words.Say;
import kerfwright.practice.daylist.KeptRemedy;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
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

  private final Say say;
  private final Day problem;
  private final DayPlan plan;
  private final List<RemedyResult> remedies;
  private final StringBuilder out = new StringBuilder();

  private DayText(Say say, Day problem, DayPlan plan, List<RemedyResult> remedies) {
    this.say = say;
    this.problem = problem;
    this.plan = plan;
    this.remedies = remedies;
  }

  static String of(Say say, Day problem, DayPlan plan, List<RemedyResult> remedies) {
    DayText text = new DayText(say, problem, plan, remedies);
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

  private void title(String key, Object... values) {
    out.append(say.at(key, values)).append('\n');
  }

  private void shortages() {
    if (plan.shortages().isEmpty()) {
      title("day.text-no-shortage");
      return;
    }
    title("day.text-short", plan.shortages().size());
    for (Appointment a : inOrder()) {
      List<String> missing =
          plan.shortages().stream()
              .filter(s -> s.appointment().equals(a.id()))
              .map(Shortage::type)
              .toList();
      if (!missing.isEmpty()) {
        line(clock(a.startMin()) + "  " + a.id(), String.join(", ", missing));
      }
    }
  }

  private void remedies() {
    if (remedies.isEmpty()) {
      return;
    }
    out.append('\n');
    title("day.text-remedies");
    RemedyWords words = new RemedyWords(say, problem, type -> type);
    for (RemedyResult r : remedies) {
      line(words.of(r.remedy()), words.leaves(KeptRemedy.of(r)));
    }
  }

  private void loads() {
    out.append('\n');
    title("day.text-loads", plan.loads().size());
    int n = 0;
    for (SteriliserLoad load : plan.loads()) {
      String span = clock(load.startMin()) + "-" + clock(load.startMin() + problem.loadMin());
      boolean begun = problem.facts().loads().contains(load);
      int size = load.instruments().size();
      line(
          ++n + ". " + (begun ? say.at("day.text-started", span) : span),
          say.at("day.text-load", size, problem.loadCapacity(), named(load.instruments())));
    }
    if (plan.loads().isEmpty()) {
      out.append("  ");
      title("day.text-no-load");
    }
  }

  private void trays() {
    out.append('\n');
    title("day.text-trays");
    for (Appointment a : inOrder()) {
      List<InstrumentRef> tray =
          plan.trays().stream()
              .filter(t -> t.appointment().equals(a.id()))
              .map(TrayPlace::instrument)
              .toList();
      String chair = a.chair() == null ? "" : "  " + say.at("day.text-chair", a.chair());
      line(
          clock(a.startMin()) + "-" + clock(a.endMin()) + "  " + a.id() + chair,
          tray.isEmpty() ? say.at("day.text-nothing") : named(tray));
    }
    for (FreshTrays.Worn w : FreshTrays.worn(problem, plan)) {
      String piece = named(List.of(w.place().instrument()));
      long left = Math.round(100 * w.left());
      line(w.place().appointment(), say.at("day.worn", piece, Math.round(100 * w.asked()), left));
    }
  }

  private void goals() {
    out.append('\n');
    title("day.text-how-good");
    for (GoalResult g : plan.goals()) {
      line(
          say.at("day.text-goal-" + g.goal().label()),
          g.value()
              + ", "
              + (g.proven()
                  ? say.at("day.text-proven")
                  : g.bound() == g.value()
                      ? say.at("day.text-proven-given")
                      : say.at("day.text-not-proven", g.bound(), g.value())));
    }
    title("day.text-caution");
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

  private void line(String what, String text) {
    out.append("  ").append(what).append("  ").append(text).append('\n');
  }
}
