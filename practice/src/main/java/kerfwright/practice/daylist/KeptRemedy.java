package kerfwright.practice.daylist;

import kerfwright.schedule.Goal;
import kerfwright.schedule.remedy.Remedy;
import kerfwright.schedule.remedy.RemedyResult;

/**
 * A remedy as it is kept with a plan.
 *
 * @param remedy the change
 * @param costMin its cost, minutes of work
 * @param shortagesAfter shortages of the plan made with it
 * @param loadsAfter its loads
 * @param proven whether fewer shortages are ruled out with it
 */
public record KeptRemedy(
    Remedy remedy, double costMin, int shortagesAfter, int loadsAfter, boolean proven) {
  public static KeptRemedy of(RemedyResult found) {
    return new KeptRemedy(
        found.remedy(),
        found.costMin(),
        found.shortagesAfter(),
        found.loadsAfter(),
        found.plan().result(Goal.SHORTAGES).proven());
  }
}
