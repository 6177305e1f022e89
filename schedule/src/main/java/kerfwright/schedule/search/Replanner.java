package kerfwright.schedule.search;

import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.DayProgress;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.TrayPlace;

/**
 * Plans the rest of a day again after something changed, touching as little as possible: fewest
 * shortages first, then fewest changed trays, then fewest added loads.
 *
 * <p>Types whose plan still holds are left alone, and so are the loads that hold other types'
 * instruments; loads may be added. So the answer comes at once, and its shortages are not proven to
 * be the fewest of the whole day: plan the day afresh for that.
 */
public final class Replanner {
  /** Weights of the strict order: instruments in loads, loads, changed trays, shortages. */
  private static final long LOAD = 5_000;

  private static final long CHANGE = 40 * LOAD;

  private Replanner() {}

  /**
   * The new plan and what it changes.
   *
   * @param plan the plan from now on, what has happened included
   * @param changed trays on which an instrument of the plan before is another one or missing now
   */
  public record Replan(DayPlan plan, List<String> changed) {
    public Replan {
      changed = List.copyOf(changed);
    }
  }

  /** What a plan has made of the day by a minute: loads started, trays of appointments begun. */
  public static FixedFacts factsAt(Day day, DayPlan plan, int nowMin) {
    Set<String> begun =
        day.appointments().stream()
            .filter(a -> a.startMin() < nowMin)
            .map(Appointment::id)
            .collect(Collectors.toSet());
    return new FixedFacts(
        nowMin,
        plan.loads().stream().filter(l -> l.startMin() < nowMin).toList(),
        plan.trays().stream().filter(t -> begun.contains(t.appointment())).toList());
  }

  /**
   * Plans again.
   *
   * @param changed the day as it is now, its facts included
   * @param before the plan followed so far
   */
  public static Replan replan(Day changed, DayPlan before, SearchLimits limits) {
    DayView view = new DayView(changed);
    Timetable kept = Timetable.of(view, before);
    Timetable followed = DayRun.followed(view, kept);
    DaySearch search = new DaySearch(view, limits, DayProgress.NONE, "repair", followed);
    List<Integer> broken =
        IntStream.range(0, view.types.size())
            .filter(k -> !Arrays.equals(kept.unit[k], followed.unit[k]))
            .boxed()
            .toList();
    if (!broken.isEmpty() && NativeSolver.available()) {
      DayModel model = new DayModel(view, Levels::named, broken, followed);
      model.hint(followed);
      search.repair(model, cost(model, kept));
    }
    DayPlan plan = search.plan();
    Set<TrayPlace> now = new HashSet<>(plan.trays());
    List<String> touched =
        before.trays().stream()
            .filter(t -> !now.contains(t))
            .map(TrayPlace::appointment)
            .distinct()
            .toList();
    return new Replan(plan, touched);
  }

  /** The cost of a repair; each instrument is held to its life beside. */
  private static LinearExprBuilder cost(DayModel model, Timetable kept) {
    LinearExprBuilder cost = LinearExpr.newBuilder().add(model.contents());
    cost.addTerm(model.loads(), LOAD);
    int demands = model.flows.stream().mapToInt(flow -> flow.type.demands).sum();
    cost.addTerm(model.shortages(), CHANGE * (demands + 1));
    for (TypeFlow flow : model.flows) {
      for (int u = 0; u < flow.type.units; u++) {
        LinearExprBuilder uses = LinearExpr.newBuilder();
        for (int d = 0; d < flow.type.demands; d++) {
          int was = kept.unit[flow.k][d];
          if (flow.x[d][u + 1] != null) {
            uses.add(flow.x[d][u + 1]);
            cost.addTerm(flow.x[d][u + 1], was != Timetable.SHORT && was != u ? CHANGE : 0);
          }
        }
        model.model.addLessOrEqual(uses, flow.type.left[u]);
      }
    }
    return cost;
  }
}
