package kerfwright.schedule;

/**
 * How far one goal was brought.
 *
 * @param goal the goal
 * @param value what the plan reaches
 * @param bound no plan can do better, given the values of the goals before it
 * @param proven true only where value and bound meet and the goals before are proven too
 * @param seconds time spent on it
 */
public record GoalResult(Goal goal, int value, int bound, boolean proven, double seconds) {
  public GoalResult {
    if (bound > value) {
      throw new IllegalArgumentException(
          "bound " + bound + " of " + goal.label() + " lies above the value " + value);
    }
    if (proven && bound != value) {
      throw new IllegalArgumentException("no proof of " + goal.label() + ": the bound is open");
    }
  }
}
