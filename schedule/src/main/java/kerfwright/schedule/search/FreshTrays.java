package kerfwright.schedule.search;

import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.Goal;
import kerfwright.schedule.GoalResult;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.Stock;
import kerfwright.schedule.TrayPlace;

/**
 * Lays worn instruments where little is asked and fresh ones where it matters, with the goals of a
 * plan held.
 *
 * <p>First the needs that ask more of an instrument's life than it has left are made as few as can
 * be; then the sum over the needs of (share of a life asked) times (share of a life left) is made
 * large, which lays the freshest where most is asked (rearrangement inequality). Each type is laid
 * by itself, the others held; without the solver the plan stays as it is.
 */
public final class FreshTrays {
  private static final double SECONDS = 2;

  /** Shares of a life are counted in thousandths; what is asked beyond comes far above the fit. */
  private static final double THOUSANDTHS = 1_000;

  private static final long BEYOND = 1_000_000;

  private FreshTrays() {}

  /**
   * A need that asks more of its instrument than is left.
   *
   * @param place appointment and instrument
   * @param asked share of a life the step uses
   * @param left share of a life the instrument has left
   */
  public record Worn(TrayPlace place, double asked, double left) {}

  /** The same plan with instruments laid where they fit. */
  public static DayPlan laid(Day day, DayPlan plan) {
    if (day.appointments().stream().allMatch(a -> a.details().isEmpty())
        || !NativeSolver.available()) {
      return plan;
    }
    DayView view = new DayView(day);
    Search search = new Search(new SearchLimits(SECONDS, 1, 1), () -> false);
    Timetable[] t = {Timetable.of(view, plan)};
    for (int k = 0; k < view.types.size(); k++) {
      DayModel one = new DayModel(view, Levels::worn, List.of(k), t[0]);
      one.holdAllButWho(t[0]);
      one.model.addLessOrEqual(one.wear(), Timetable.wear(view.types.get(k), t[0].unit[k]));
      one.hint(t[0]);
      search.run(one, misfit(one.flows.get(0)), List.of(), search.left(), n -> t[0] = n, b -> {});
    }
    int uneven = t[0].wear(view);
    List<GoalResult> goals = new ArrayList<>(plan.goals());
    goals.replaceAll(
        g ->
            g.goal() != Goal.WEAR
                ? g
                : new GoalResult(
                    g.goal(), uneven, Math.min(uneven, g.bound()), g.proven(), g.seconds()));
    return t[0].toPlan(view, goals, plan.solver());
  }

  /** How far needs ask beyond what is left, and less how well the rest fits. */
  private static LinearExprBuilder misfit(TypeFlow flow) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    String type = flow.type.stock.type();
    for (int d = 0; d < flow.type.demands; d++) {
      double asked = flow.type.appointment.get(d).detail(type).lifeAsked();
      for (int r = 1; r < flow.x[d].length; r++) {
        double left = (double) r / flow.type.stock.life();
        long beyond = Math.round(THOUSANDTHS * Math.max(0, asked - left));
        if (flow.x[d][r] != null) {
          sum.addTerm(flow.x[d][r], BEYOND * beyond - Math.round(THOUSANDTHS * asked * left));
        }
      }
    }
    return sum;
  }

  /** Needs that ask more than their instrument has left, in the plan as it is. */
  public static List<Worn> worn(Day day, DayPlan plan) {
    Map<String, Stock> byType = new HashMap<>();
    day.stock().forEach(s -> byType.put(s.type(), s));
    Map<InstrumentRef, Integer> uses = new HashMap<>();
    List<Worn> worn = new ArrayList<>();
    // the trays of a plan stand in order of time
    for (TrayPlace tray : plan.trays()) {
      Stock s = byType.get(tray.instrument().type());
      Appointment a = day.appointment(tray.appointment()).orElse(null);
      if (s == null || a == null) {
        continue;
      }
      int today = uses.merge(tray.instrument(), 1, Integer::sum) - 1;
      int before = s.uses().get(tray.instrument().index()) + today;
      double left = (double) (s.life() - before) / s.life();
      double asked = a.detail(s.type()).lifeAsked();
      if (asked > left) {
        worn.add(new Worn(tray, asked, left));
      }
    }
    return worn;
  }
}
