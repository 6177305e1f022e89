package kerfwright.planner.plan;

import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/**
 * Heat at the outer root surface.
 *
 * @param peakRiseK greatest rise, null where it is not computed
 * @param limitK the limit, 10 K
 * @param why why it is not computed, null where it is
 */
public record RootRise(@Nullable Estimate peakRiseK, double limitK, @Nullable Message why) {}
