package kerfwright.schedule.search;

import java.util.List;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.DayProgress;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.Shortage;
import org.jspecify.annotations.Nullable;

/**
 * Plans a day: a greedy first plan, then a constraint solver where its native library loads.
 * Without it the first plan stands, unproven. Every plan handed out has passed the referee.
 */
public final class DayPlanner {
  private static final int QUICK_SEED = 1;

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
    return new DaySearch(day, limits, progress).run(solver);
  }

  public DayPlan plan(Day day, SearchLimits limits) {
    return plan(day, limits, DayProgress.NONE);
  }

  /**
   * Shortages of a valid plan found at once, not proven to be fewest; for studies of many days.
   *
   * @param variations of the greedy plan that are tried
   */
  public static List<Shortage> quickShortages(Day day, int variations) {
    DayView view = new DayView(day);
    return FirstPlan.of(view, QUICK_SEED, variations).shortagesIn(view);
  }
}
