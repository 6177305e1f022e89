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
public record RootHeat(@Nullable Estimate peakRiseK, double limitK, @Nullable Message why) {
  /**
   * 10 K over body temperature: 47 degrees for a minute harms bone (Eriksson, Albrektsson 1983).
   */
  public static final double LIMIT_K = 10;

  /** Not computed yet. */
  public static RootHeat notComputed() {
    return new RootHeat(null, LIMIT_K, Message.of("plan.root-not-computed"));
  }
}
