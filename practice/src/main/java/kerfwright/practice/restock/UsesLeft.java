package kerfwright.practice.restock;

import kerfwright.physics.wear.Sharpness;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.tool.LifeLeft;
import kerfwright.practice.drawer.StockItem;

/**
 * How many more uses a piece is good for: the share of its life that is left ({@link LifeLeft})
 * over the share a use takes. That is what the uses before took where volumes are recorded; else a
 * third, a fifth or a tenth of a life (project setting, as there) and what the sterilisations of a
 * life take ({@link Sharpness}). The practice's own wear scales what is used. A piece for single
 * use is good for one.
 *
 * @param low fewest, uses
 * @param typical uses
 * @param high most, uses
 * @param shareOfUse share of a life one use takes, typical, at most 1
 */
public record UsesLeft(double low, double typical, double high, double shareOfUse) {
  private static final double[] USES_IN_A_LIFE = {3, 5, 10};

  /**
   * Of one piece of an item.
   *
   * @param wearFactor how many times as fast as in the literature this practice wears it
   */
  public static UsesLeft of(StockItem item, double wearFactor) {
    if (item.singleUse()) {
      double left = item.uses() == 0 ? 1 : 0;
      return new UsesLeft(left, left, left, 1);
    }
    double[] left = shares(item);
    double[] uses = new double[3];
    double[] share = new double[3];
    for (int i = 0; i < 3; i++) {
      double used = wearFactor * (1 - left[i]);
      boolean known = !item.cutMm3ByMaterial().isEmpty() && item.uses() > 0 && used > 0;
      share[i] =
          known
              ? used / item.uses()
              : wearFactor * (1 / USES_IN_A_LIFE[i]) + ofSterilising(item, USES_IN_A_LIFE[i]);
      uses[i] = Math.max(0, 1 - used) / share[i];
    }
    return new UsesLeft(uses[0], uses[1], uses[2], Math.min(1, share[1]));
  }

  /** Share of the life left: low, typical, high. */
  private static double[] shares(StockItem item) {
    Estimate left = item.lifeLeft().orElse(null);
    if (left != null) {
      return new double[] {left.low(), left.typical(), left.high()};
    }
    double[] shares = new double[3];
    for (int i = 0; i < 3; i++) {
      shares[i] = Math.max(0, 1 - item.uses() / USES_IN_A_LIFE[i]);
    }
    return shares;
  }

  /** Share of a life one sterilisation takes, in the mean of so many more: the first take most. */
  private static double ofSterilising(StockItem item, double more) {
    double now = kept(item, item.sterilisations());
    double then = kept(item, item.sterilisations() + (int) more);
    return Math.log(now / then) / more / Sharpness.LIFE_END;
  }

  private static double kept(StockItem item, int cycles) {
    return item.properties().kind().bladed()
        ? Sharpness.ofCarbideAfterCycles(cycles)
        : Sharpness.ofDiamondAfterCycles(cycles);
  }

  /** True where not even half a use is left. */
  public boolean worn() {
    return typical < 0.5;
  }
}
