package kerfwright.planner.explain;

import java.util.List;
import kerfwright.catalogue.operation.Operation;
import kerfwright.planner.plan.Cue;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.StepTimes;
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

  /**
   * Of a whole plan: the burs with pauses and changes as sampled together, which the middle values
   * of the steps do not add up to, then looks, hand instruments, and what a published time of an
   * operation has beyond its own.
   */
  public static CutPlan.PlanTimes of(SampledPlan sampled, List<PlannedStep> steps, List<Cue> cues) {
    Estimate chair = sampled.totalTimeS();
    for (PlannedStep step : steps) {
      StepTimes times = step.times();
      chair =
          chair.plus(times.chairPublished() ? beyond(times.chairS(), times.withPausesS()) : LOOK_S);
    }
    for (Cue cue : cues) {
      chair = chair.plus(of(cue));
    }
    return new CutPlan.PlanTimes(sampled.cutTimeS(), sampled.totalTimeS(), chair);
  }

  private static Estimate beyond(Estimate chairS, Estimate burS) {
    double low = Math.max(0, chairS.low() - burS.low());
    double typical = Math.max(low, chairS.typical() - burS.typical());
    return new Estimate(low, typical, Math.max(typical, chairS.high() - burS.high()));
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
