package kerfwright.schedule.remedy;

import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.Goal;

/**
 * What a remedy brings.
 *
 * @param remedy the change
 * @param costMin its cost in minutes of work
 * @param day the day with the change made
 * @param plan the plan of that day
 */
public record RemedyResult(Remedy remedy, double costMin, Day day, DayPlan plan) {
  public int shortagesAfter() {
    return plan.value(Goal.SHORTAGES);
  }

  public int loadsAfter() {
    return plan.value(Goal.LOADS);
  }
}
