package kerfwright.schedule.search;

import java.util.List;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.DayProgress;
import kerfwright.schedule.Goal;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.Shortage;
import org.jspecify.annotations.Nullable;

/**
 * Plans a day: a greedy first plan, then a constraint solver where its native library loads.
 * Without it the first plan stands, unproven. Every plan handed out has passed the referee.
 */
public final class DayPlanner {
  /** Variations of the greedy plan before the solver takes over. */
  private static final int VARIATIONS = 1_000;

  private final boolean solver;

  DayPlanner(boolean solver) {
    this.solver = solver;
  }

  /** The planner of this machine. Loading begins at once and does not hold up the first plan. */
  public static DayPlanner forThisMachine() {
    NativeSolver.warmUp();
    return new DayPlanner(true);
  }

  /** Why the solver does not run here, or null where it does. */
  public static @Nullable String solverFault() {
    return NativeSolver.fault();
  }

  /** Plans the whole day; returns the best plan found when time is up or the search is stopped. */
  public DayPlan plan(Day day, SearchLimits limits, DayProgress progress) {
    return plan(day, limits, progress, Goal.WEAR);
  }

  /** The same with the last goal left to chance, for comparing days. */
  public DayPlan withoutWear(Day day, SearchLimits limits, DayProgress progress) {
    return plan(day, limits, progress, Goal.LOADS);
  }

  private DayPlan plan(Day day, SearchLimits limits, DayProgress progress, Goal last) {
    DayView view = new DayView(day);
    FirstPlan first = new FirstPlan(view);
    DaySearch search = new DaySearch(view, limits, progress, "first plan", first.best());
    if (!progress.stopped()) {
      search.offer(first.varied(limits.seed(), VARIATIONS));
    }
    if (solver && !progress.stopped() && NativeSolver.available()) {
      search.improve(last);
    }
    return search.plan();
  }

  public DayPlan plan(Day day, SearchLimits limits) {
    return plan(day, limits, DayProgress.NONE);
  }

  /** Shortages of the greedy plan, found at once; for studies of many days. */
  public static List<Shortage> quickShortages(Day day) {
    DayView view = new DayView(day);
    return new FirstPlan(view).best().shortagesIn(view);
  }
}
