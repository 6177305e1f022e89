package kerfwright.planner.explain;

import java.util.List;
import kerfwright.catalogue.operation.Operation;
import kerfwright.planner.plan.Cue;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.uncertainty.SampledPlan;

/**
 * Time in the chair beside the time the burs cut. Changing an instrument 15 to 30 s, a look 10 to
 * 20 s (common practice), a hand instrument 20 to 90 s (estimate of the project); where a time is
 * published for an operation, that stands.
 */
public final class ChairTimes {
  private static final Estimate CHANGE_S = new Estimate(15, 20, 30);
  private static final Estimate LOOK_S = new Estimate(10, 15, 20);
  private static final Estimate BY_HAND_S = new Estimate(20, 40, 90);

  private ChairTimes() {}

  /** Of a whole plan. */
  public static CutPlan.PlanTimes of(SampledPlan sampled, List<PlannedStep> steps, List<Cue> cues) {
    Estimate chair = Estimate.exactly(0);
    for (PlannedStep step : steps) {
      chair = chair.plus(step.times().chairS());
    }
    for (Cue cue : cues) {
      chair = chair.plus(of(cue));
    }
    return new CutPlan.PlanTimes(sampled.cutTimeS(), sampled.totalTimeS(), chair);
  }

  /** Of a step: cutting and pausing, one change where another instrument comes in, and a look. */
  public static Estimate of(Operation row, Estimate withPausesS, boolean changes) {
    Double least = row.chairLeastS();
    Double most = row.chairMostS();
    if (least != null && most != null) {
      return new Estimate(least, Math.sqrt(least * most), most);
    }
    Estimate looked = withPausesS.plus(LOOK_S);
    return changes ? looked.plus(CHANGE_S) : looked;
  }

  /** Of what is done between the steps. */
  static Estimate of(Cue cue) {
    return of(cue.row(), cue.tool().isEmpty() ? Estimate.exactly(0) : BY_HAND_S, false);
  }
}
