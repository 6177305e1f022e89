package kerfwright.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Checks a plan against the statement of the problem, knowing nothing of how it was found. A plan
 * that fails here is never shown.
 */
public final class Referee {
  private final Day problem;
  private final Map<String, Appointment> appointments = new HashMap<>();
  private final Map<String, Stock> stock = new HashMap<>();
  private final List<String> errors = new ArrayList<>();

  private Referee(Day problem) {
    this.problem = problem;
    problem.appointments().forEach(a -> appointments.put(a.id(), a));
    problem.stock().forEach(s -> stock.put(s.type(), s));
  }

  /**
   * What the referee found.
   *
   * @param errors broken rules, empty for a valid plan
   * @param shortages needs not filled
   * @param loads loads started
   * @param wear sum over types of the difference between most and least worn
   */
  public record Verdict(List<String> errors, int shortages, int loads, int wear) {
    public Verdict {
      errors = List.copyOf(errors);
    }

    public boolean valid() {
      return errors.isEmpty();
    }
  }

  /** Judges trays and loads; values the plan claims are compared too. */
  public static Verdict judge(Day problem, DayPlan plan) {
    Referee referee = new Referee(problem);
    Map<InstrumentRef, List<Appointment>> uses = referee.trays(plan);
    referee.loads(plan);
    int wear = referee.instruments(plan, uses);
    int shortages = problem.demand() - plan.trays().size();
    if (shortages != plan.shortages().size()) {
      referee.errors.add("the shortages listed are not the needs left open");
    }
    referee.claims(
        plan, Map.of(Goal.SHORTAGES, shortages, Goal.LOADS, plan.loads().size(), Goal.WEAR, wear));
    referee.facts(plan);
    return new Verdict(referee.errors, shortages, plan.loads().size(), wear);
  }

  private Map<InstrumentRef, List<Appointment>> trays(DayPlan plan) {
    Map<InstrumentRef, List<Appointment>> uses = new HashMap<>();
    Set<String> filled = new HashSet<>();
    for (TrayPlace tray : plan.trays()) {
      InstrumentRef ref = tray.instrument();
      Appointment a = appointments.get(tray.appointment());
      Stock s = stock.get(ref.type());
      if (a == null
          || s == null
          || !a.needs().contains(ref.type())
          || !filled.add(a.id() + "\n" + ref.type())
          || ref.index() < 0
          || ref.index() >= s.uses().size()) {
        errors.add("no such place on a tray: " + tray);
        continue;
      }
      uses.computeIfAbsent(ref, r -> new ArrayList<>()).add(a);
    }
    for (Shortage s : plan.shortages()) {
      Appointment a = appointments.get(s.appointment());
      if (a == null || !a.needs().contains(s.type()) || !filled.add(a.id() + "\n" + s.type())) {
        errors.add("no such shortage: " + s);
      }
    }
    return uses;
  }

  private void loads(DayPlan plan) {
    for (SteriliserLoad load : plan.loads()) {
      int t = load.startMin();
      boolean fixed = problem.facts().loads().contains(load);
      if (!fixed && !problem.mayStartAt(t)) {
        errors.add("a load may not start at minute " + t);
      }
      if (load.instruments().size() > problem.loadCapacity()) {
        errors.add("the load at minute " + t + " is overfull");
      }
      if (problem.running(plan.loads(), t) > problem.sterilisers()) {
        errors.add("too many loads run at minute " + t);
      }
    }
  }

  private int instruments(DayPlan plan, Map<InstrumentRef, List<Appointment>> uses) {
    Map<InstrumentRef, List<Integer>> washes = new HashMap<>();
    for (SteriliserLoad load : plan.loads()) {
      for (InstrumentRef ref : load.instruments()) {
        washes.computeIfAbsent(ref, r -> new ArrayList<>()).add(load.startMin());
      }
    }
    int wear = 0;
    for (Stock s : problem.stock()) {
      int most = Integer.MIN_VALUE;
      int least = Integer.MAX_VALUE;
      for (int u = 0; u < s.uses().size(); u++) {
        InstrumentRef ref = new InstrumentRef(s.type(), u);
        List<Appointment> mine = new ArrayList<>(uses.getOrDefault(ref, List.of()));
        mine.sort(Comparator.comparingInt(Appointment::startMin));
        follow(ref, s, mine, washes.getOrDefault(ref, List.of()));
        int total = s.uses().get(u) + mine.size();
        if (total > s.life()) {
          errors.add(ref + " is used beyond its life");
        }
        most = Math.max(most, total);
        least = Math.min(least, total);
      }
      wear += s.uses().isEmpty() ? 0 : most - least;
    }
    return wear;
  }

  private void follow(InstrumentRef ref, Stock s, List<Appointment> uses, List<Integer> washes) {
    int dirtyFrom = s.dirty().contains(ref.index()) ? -Day.LONGEST_DAY_MIN : Integer.MIN_VALUE;
    for (Appointment a : uses) {
      int from = dirtyFrom;
      if (from != Integer.MIN_VALUE
          && washes.stream().noneMatch(t -> t >= from && t + problem.loadMin() <= a.startMin())) {
        errors.add(ref + " is not reprocessed before " + a.id());
      }
      if (washes.stream().anyMatch(t -> t < a.endMin() && a.startMin() < t + problem.loadMin())) {
        errors.add(ref + " is in a load during " + a.id());
      }
      dirtyFrom = a.endMin() + problem.cleaningMin();
    }
  }

  private void claims(DayPlan plan, Map<Goal, Integer> found) {
    for (GoalResult g : plan.goals()) {
      int value = found.getOrDefault(g.goal(), -1);
      if (g.value() != value) {
        errors.add(g.goal().label() + " are given as " + g.value() + ", not " + value);
      }
    }
  }

  private void facts(DayPlan plan) {
    if (!plan.trays().containsAll(problem.facts().trays())
        || !plan.loads().containsAll(problem.facts().loads())) {
      errors.add("a fixed fact is not kept");
    }
  }
}
