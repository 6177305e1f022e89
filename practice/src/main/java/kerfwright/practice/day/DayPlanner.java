package kerfwright.practice.day;

/** Plans a day. Every plan handed out has passed {@link DayReferee}. */
public interface DayPlanner {
  /** Plans the whole day; returns the best plan found when time is up or the search is stopped. */
  DayPlan plan(DayProblem problem, SearchLimits limits, DayProgress progress);

  default DayPlan plan(DayProblem problem, SearchLimits limits) {
    return plan(problem, limits, DayProgress.NONE);
  }

  /**
   * The planner this machine can run: with the solver where its native library loads, else in plain
   * Java. Loading begins at once and does not hold up the first plan.
   */
  static DayPlanner forThisMachine() {
    NativeSolver.warmUp();
    return new CpSatDayPlanner();
  }
}
