package kerfwright.practice.day;

/**
 * Plans a day with a constraint solver; the model is {@link ReadyModel} and {@link WearModel}.
 * Where the solver's library cannot be loaded, {@link BeamDayPlanner} goes on from the first plan.
 */
public final class CpSatDayPlanner implements DayPlanner {
  @Override
  public DayPlan plan(DayProblem problem, SearchLimits limits, DayProgress progress) {
    return new DaySearch(problem, limits, progress).run();
  }
}
