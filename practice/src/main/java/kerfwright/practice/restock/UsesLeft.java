package kerfwright.practice.restock;

import kerfwright.physics.wear.Sharpness;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.tool.LifeLeft;
import kerfwright.practice.drawer.StockItem;

/**
 * How many more uses a piece is good for: the share of its life that is left ({@link LifeLeft})
 * over the share a use takes. That is what the uses before took where volumes are recorded; else a
 * third, a fifth or a tenth of a life (project setting, as there) and what each sterilisation takes
 * after it ({@link Sharpness}). The practice's own wear scales what is used. A piece for single use
 * is good for one.
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
    double shareOfUse = 1;
    for (int i = 0; i < 3; i++) {
      double used = wearFactor * (1 - left[i]);
      boolean known = !item.cutMm3ByMaterial().isEmpty() && item.uses() > 0 && used > 0;
      uses[i] =
          known
              ? Math.max(0, 1 - used) / (used / item.uses())
              : untilWorn(item, 1 - used, wearFactor / USES_IN_A_LIFE[i]);
      if (i == 1) {
        double next = wearFactor / USES_IN_A_LIFE[i] + ofSterilising(item, item.sterilisations());
        shareOfUse = known ? used / item.uses() : uses[i] > 0 ? (1 - used) / uses[i] : next;
      }
    }
    return new UsesLeft(uses[0], uses[1], uses[2], Math.min(1, shareOfUse));
  }

  /** Use after use, each with its sterilisation, until nothing of the life is left. */
  private static double untilWorn(StockItem item, double lifeLeft, double lifeOfUse) {
    double uses = 0;
    double left = lifeLeft;
    for (int cycles = item.sterilisations(); left > 0; cycles++) {
      double taken = lifeOfUse + ofSterilising(item, cycles);
      uses += Math.min(1, left / taken);
      left -= taken;
    }
    return uses;
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

  /** What one more takes: less from cycle to cycle, for some of the cut steam never takes. */
  private static double ofSterilising(StockItem item, int cycles) {
    boolean bladed = item.properties().kind().bladed();
    double before =
        bladed ? Sharpness.ofCarbideAfterCycles(cycles) : Sharpness.ofDiamondAfterCycles(cycles);
    double after =
        bladed
            ? Sharpness.ofCarbideAfterCycles(cycles + 1)
            : Sharpness.ofDiamondAfterCycles(cycles + 1);
    return Math.log(before / after) / Sharpness.LIFE_END;
  }

  /** True where not even half a use is left. */
  public boolean worn() {
    return typical < 0.5;
  }
}
