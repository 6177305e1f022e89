package kerfwright.practice.day;

public final class BeamDayPlanner implements DayPlanner {
  @Override
  public DayPlan plan(DayProblem problem, SearchLimits limits, DayProgress progress) {
    throw new UnsupportedOperationException();
  }
}
