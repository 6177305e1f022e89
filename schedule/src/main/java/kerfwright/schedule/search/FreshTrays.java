package kerfwright.schedule.search;

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
import kerfwright.schedule.Stock;
import kerfwright.schedule.TrayPlace;

/**
 * Lays worn instruments where little is asked and fresh ones where it matters, without touching the
 * goals of a plan: at a minute when two instruments of a type both lie clean, they may change roles
 * for the rest of the day.
 *
 * <p>First the needs that ask more of an instrument's life than it has left are made as few as
 * roles allow; then the sum over the needs of (share of a life asked) times (share of a life left)
 * is made large, which lays the freshest where most is asked (rearrangement inequality). Roles are
 * changed pair by pair until no change helps, so the sum need not be the greatest of all.
 */
public final class FreshTrays {
  private static final double BETTER = 1e-9;

  private final DayView view;
  private final Timetable t;

  private FreshTrays(DayView view, Timetable t) {
    this.view = view;
    this.t = t;
  }

  /**
   * A need that asks more of its instrument than is left.
   *
   * @param place appointment and instrument
   * @param asked share of a life the step uses
   * @param left share of a life the instrument has left
   */
  public record Worn(TrayPlace place, double asked, double left) {}

  /** The same plan with roles changed. */
  public static DayPlan laid(Day day, DayPlan plan) {
    if (day.appointments().stream().allMatch(a -> a.details().isEmpty())) {
      return plan;
    }
    DayView view = new DayView(day);
    FreshTrays fresh = new FreshTrays(view, Timetable.of(view, plan));
    for (int k = 0; k < view.types.size(); k++) {
      while (fresh.improve(k)) {
        // each change may make another one worth while
      }
    }
    int uneven = fresh.t.wear(view);
    List<GoalResult> goals = new ArrayList<>(plan.goals());
    goals.replaceAll(
        g ->
            g.goal() != Goal.WEAR
                ? g
                : new GoalResult(
                    g.goal(), uneven, Math.min(uneven, g.bound()), g.proven(), g.seconds()));
    return fresh.t.toPlan(view, goals, plan.solver());
  }

  /** Makes one change of roles that helps, if there is one. */
  private boolean improve(int k) {
    TypeView type = view.types.get(k);
    for (int d = 0; d < type.demands; d++) {
      for (int v = 0; v < type.units; v++) {
        int u = t.unit[k][d];
        if (u == Timetable.SHORT || u == v || !cleanAt(k, v, d)) {
          continue;
        }
        int uneven = Timetable.wear(type, t.unit[k]);
        double[] before = fit(k);
        exchange(k, u, v, type.startMin[d]);
        double[] after = fit(k);
        boolean better =
            after[0] < before[0] - BETTER
                || after[0] < before[0] + BETTER && after[1] > before[1] + BETTER;
        if (better && withinLife(k) && Timetable.wear(type, t.unit[k]) <= uneven) {
          return true;
        }
        exchange(k, u, v, type.startMin[d]);
      }
    }
    return false;
  }

  /** Whether an instrument lies clean when a demand begins, if only to begin another one. */
  private boolean cleanAt(int k, int u, int demand) {
    TypeRun run = new TypeRun(view, view.types.get(k));
    int now = run.type.startMin[demand];
    run.type.inTime(
        d -> {
          if (run.type.startMin[d] < now && t.unit[k][d] == u) {
            run.use(u, d);
          }
        },
        q -> {
          if (view.slotMin[q] < now && t.inside.get(q).contains(new Timetable.Inside(k, u))) {
            run.load(u, q);
          }
        });
    return run.isCleanAt(u, now);
  }

  /** From a minute on each of two instruments goes through what the other would have. */
  private void exchange(int k, int u, int v, int fromMin) {
    TypeView type = view.types.get(k);
    for (int d = 0; d < type.demands; d++) {
      if (type.startMin[d] >= fromMin) {
        t.unit[k][d] = other(t.unit[k][d], u, v);
      }
    }
    for (int q = 0; q < view.slots(); q++) {
      if (view.slotMin[q] >= fromMin) {
        t.inside
            .get(q)
            .replaceAll(i -> i.type() == k ? new Timetable.Inside(k, other(i.unit(), u, v)) : i);
      }
    }
  }

  private static int other(int now, int u, int v) {
    return now == u ? v : now == v ? u : now;
  }

  /** How far needs ask beyond what is left, and how well the rest fits. */
  private double[] fit(int k) {
    TypeView type = view.types.get(k);
    int[] uses = type.uses.clone();
    double[] fit = new double[2];
    for (int d = 0; d < type.demands; d++) {
      int u = t.unit[k][d];
      if (u != Timetable.SHORT) {
        double asked = type.appointment.get(d).detail(type.stock.type()).lifeAsked();
        double left = (double) (type.stock.life() - uses[u]++) / type.stock.life();
        fit[0] += Math.max(0, asked - left);
        fit[1] += asked * left;
      }
    }
    return fit;
  }

  private boolean withinLife(int k) {
    TypeView type = view.types.get(k);
    int[] left = type.left.clone();
    for (int u : t.unit[k]) {
      if (u != Timetable.SHORT && --left[u] < 0) {
        return false;
      }
    }
    return true;
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
