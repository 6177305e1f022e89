package kerfwright.planner;

import kerfwright.planner.plan.Stroke;
import org.jspecify.annotations.Nullable;

/**
 * One change to a plan, to see what it would do; null leaves a figure as it is.
 *
 * @param step order of the step changed, 1 for the first; water is changed for all
 * @param instrument id of another instrument for the step
 * @param setRpm another speed
 * @param loadN another load
 * @param stroke another stroke
 * @param waterMlPerMin other water, for the whole case
 * @param moreUses how many uses more the step's instrument had behind it
 */
public record Variation(
    int step,
    @Nullable String instrument,
    @Nullable Double setRpm,
    @Nullable Double loadN,
    @Nullable Stroke stroke,
    @Nullable Double waterMlPerMin,
    int moreUses) {
  /** Nothing is changed. */
  public static Variation none(int step) {
    return new Variation(step, null, null, null, null, null, 0);
  }
}
