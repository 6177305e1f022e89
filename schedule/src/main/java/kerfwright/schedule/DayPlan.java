package kerfwright.schedule;

import java.util.List;

/**
 * The plan of a day.
 *
 * @param trays which instrument lies on which tray
 * @param loads steriliser loads in order of start, fixed ones included
 * @param shortages needs without an instrument
 * @param goals one result a goal, in their order
 * @param solver what searched, in words
 */
public record DayPlan(
    List<TrayPlace> trays,
    List<SteriliserLoad> loads,
    List<Shortage> shortages,
    List<GoalResult> goals,
    String solver) {
  public DayPlan {
    trays = List.copyOf(trays);
    loads = List.copyOf(loads);
    shortages = List.copyOf(shortages);
    goals = List.copyOf(goals);
  }

  public GoalResult result(Goal goal) {
    return goals.stream()
        .filter(g -> g.goal() == goal)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no result for " + goal.label()));
  }

  public int value(Goal goal) {
    return result(goal).value();
  }

  public boolean proven() {
    return goals.stream().allMatch(GoalResult::proven);
  }
}
