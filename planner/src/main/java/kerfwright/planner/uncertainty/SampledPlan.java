package kerfwright.planner.uncertainty;

import java.util.List;
import kerfwright.planner.plan.Estimate;

/**
 * What the samples say of a whole sequence.
 *
 * @param steps spread of each step
 * @param totalTimeS time with changes of instrument
 * @param cutTimeS burs on the tooth alone
 * @param peakK peak rise at the pulp wall, quick column
 * @param secondsAbove time above the limit
 * @param cem43Min thermal dose
 * @param remainingDentineMm dentine left under the floor
 * @param curveTimesS times of the band
 * @param curveLowK 5th percentile of the rise
 * @param curveHighK 95th percentile
 */
public record SampledPlan(
    List<StepSpread> steps,
    Estimate totalTimeS,
    Estimate cutTimeS,
    Estimate peakK,
    Estimate secondsAbove,
    Estimate cem43Min,
    Estimate remainingDentineMm,
    double[] curveTimesS,
    double[] curveLowK,
    double[] curveHighK) {
  public SampledPlan {
    steps = List.copyOf(steps);
  }
}
