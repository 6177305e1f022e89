package kerfwright.planner.evidence;

import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.planner.plan.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * One case with what the models compute for it.
 *
 * @param asked the case
 * @param computed the figure, or the ratio, or that of the first set-up of a direction
 * @param second the figure of the second set-up of a direction, else null
 * @param verdict how it stands
 * @param holdsShare share of the samples in which a direction or bound holds; 1 or 0 for an
 *     interval
 */
public record Compared(
    EvidenceCase asked,
    Estimate computed,
    @Nullable Estimate second,
    Verdict verdict,
    double holdsShare) {
  /** Width of the interval as a factor; infinite where its low end is not above zero. */
  public double widthFactor() {
    return computed.low() > 0 ? computed.high() / computed.low() : Double.POSITIVE_INFINITY;
  }

  /** Width of the interval in its own unit. */
  public double width() {
    return computed.high() - computed.low();
  }
}
