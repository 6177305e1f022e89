package kerfwright.planner.evidence;

import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.planner.plan.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * One case with what the models compute for it.
 *
 * @param asked the case
 * @param standing whether it counts
 * @param computed the figure with both levels of scatter, or the ratio with that of one laboratory,
 *     or the figure of the first set-up of a direction
 * @param oneLaboratory the same with the scatter within one laboratory alone
 * @param second the figure of the second set-up of a direction, else null
 * @param monteCarlo standard error of the ends of the interval from the number of samples, as a
 *     share of its width
 * @param verdict how it stands
 * @param holdsShare share of the samples in which a direction or bound holds; of the published
 *     scatter that lies in an interval
 */
public record Compared(
    EvidenceCase asked,
    Standing standing,
    Estimate computed,
    Estimate oneLaboratory,
    @Nullable Estimate second,
    double monteCarlo,
    Verdict verdict,
    double holdsShare) {
  /** The source, by which cases count once. */
  public String study() {
    return asked.row().sources().get(0).key();
  }

  /** Whether it is met when only the scatter within one laboratory is allowed for. */
  public boolean metInOneLaboratory() {
    return asked.comparison().interval() ? Comparing.inside(asked, oneLaboratory) : verdict.met();
  }

  /** Width of the interval as a factor; infinite where its low end is not above zero. */
  public double widthFactor() {
    return computed.low() > 0 ? computed.high() / computed.low() : Double.POSITIVE_INFINITY;
  }

  /** Width of the interval in its own unit. */
  public double width() {
    return computed.high() - computed.low();
  }
}
