package kerfwright.practice.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Plans the rest of a day again after something changed, touching as little as possible: fewest
 * shortages first, then fewest changed trays, then fewest added loads.
 *
 * <p>Types whose plan still holds are left alone, and so are the loads that hold other types'
 * instruments; loads may be added. So the answer comes at once, and its shortages are not proven to
 * be the fewest of the whole day: plan the day afresh for that.
 */
public final class DayReplanner {
  private DayReplanner() {}

  /**
   * The new plan and what it changes.
   *
   * @param plan the plan from now on, what has happened included
   * @param changed trays on which an instrument of the plan before is another one or missing now
   * @param seconds time taken
   */
  public record Replan(DayPlan plan, List<String> changed, double seconds) {
    public Replan {
      changed = List.copyOf(changed);
    }
  }

  /** What a plan has made of the day by a minute: loads started, trays of appointments begun. */
  public static FixedFacts factsAt(DayProblem problem, DayPlan plan, int nowMin) {
    Set<String> begun = new HashSet<>();
    for (Appointment a : problem.appointments()) {
      if (a.startMin() < nowMin) {
        begun.add(a.id());
      }
    }
    List<TrayPlace> trays =
        plan.trays().stream().filter(t -> begun.contains(t.appointment())).toList();
    List<SteriliserLoad> loads = plan.loads().stream().filter(l -> l.startMin() < nowMin).toList();
    return new FixedFacts(nowMin, loads, trays);
  }

  /**
   * Plans again.
   *
   * @param changed the day as it is now, its facts included
   * @param before the plan followed so far
   */
  public static Replan replan(DayProblem changed, DayPlan before, SearchLimits limits) {
    long started = System.nanoTime();
    DayView view = new DayView(changed);
    Timetable kept = kept(view, before);
    KeptDay keeper = new KeptDay(view, kept);
    Set<Integer> broken = keeper.broken();
    Timetable repaired = keeper.repair(broken);
    Scoreboard board = new Scoreboard(view, DayProgress.NONE);
    board.solver("repair");
    board.offer(repaired);
    if (!broken.isEmpty() && NativeSolver.available()) {
      double left = limits.seconds() - (System.nanoTime() - started) / 1e9;
      RepairModel model = new RepairModel(view, kept, broken);
      Timetable better = model.solve(new Search(limits, () -> false), repaired, left);
      if (better != null) {
        board = new Scoreboard(view, DayProgress.NONE);
        board.solver("CP-SAT repair");
        board.offer(better);
      }
    }
    DayPlan plan = board.plan();
    return new Replan(plan, changes(before, plan), (System.nanoTime() - started) / 1e9);
  }

  /** The old plan in the numbers of the new day. */
  private static Timetable kept(DayView view, DayPlan before) {
    Map<String, Integer> old = new HashMap<>();
    before.trays().forEach(t -> old.put(key(t), t.instrument().index()));
    Map<String, Integer> types = new HashMap<>();
    Timetable t = new Timetable(view);
    for (int k = 0; k < view.types.size(); k++) {
      TypeView type = view.types.get(k);
      types.put(type.stock.type(), k);
      for (int d = 0; d < type.demands; d++) {
        String id = view.problem.appointments().get(type.appointment[d]).id();
        t.unit[k][d] = old.getOrDefault(id + "\n" + type.stock.type(), Timetable.SHORT);
      }
    }
    for (SteriliserLoad load : before.loads()) {
      for (int q = 0; q < view.slots(); q++) {
        if (view.slotMin[q] == load.startMin()) {
          t.loads[q]++;
          List<int[]> inside = t.inside.get(q);
          load.instruments()
              .forEach(r -> inside.add(new int[] {types.getOrDefault(r.type(), 0), r.index()}));
        }
      }
    }
    return t;
  }

  private static String key(TrayPlace t) {
    return t.appointment() + "\n" + t.instrument().type();
  }

  private static List<String> changes(DayPlan before, DayPlan now) {
    Set<TrayPlace> kept = new HashSet<>(now.trays());
    List<String> changed = new ArrayList<>();
    for (TrayPlace t : before.trays()) {
      if (!kept.contains(t) && !changed.contains(t.appointment())) {
        changed.add(t.appointment());
      }
    }
    return changed;
  }
}
