package kerfwright.app.learning;

import kerfwright.app.plan.Figures;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.casework.OwnPace.Factor;
import kerfwright.practice.learning.Narrowed;

/** Factors in words. */
public final class PaceWords {
  private static final double MUCH = 1.995;
  private static final double AS_GOOD_AS_ONE = 0.02;

  private PaceWords() {}

  /** 20 % faster than the literature. */
  public static String time(Say say, double factor) {
    if (factor >= MUCH || factor <= 1 / MUCH) {
      return say.at("pace.times", Figures.plain(say, factor));
    }
    return said(say, factor, "pace.faster", "pace.slower", "pace.as-fast");
  }

  /** Wears 20 % more slowly than in the literature. */
  public static String wear(Say say, double factor) {
    return said(say, factor, "pace.wears-less", "pace.wears-more", "pace.wears-alike");
  }

  private static String said(Say say, double factor, String less, String more, String alike) {
    if (Math.abs(factor - 1) < AS_GOOD_AS_ONE) {
      return say.at(alike);
    }
    return say.at(factor < 1 ? less : more, Math.round(100 * Math.abs(1 - factor)));
  }

  /** The 90 percent interval, in percent of the literature's time. */
  public static String interval(Say say, Factor factor) {
    return say.at("pace.interval", Math.round(100 * factor.low()), Math.round(100 * factor.high()));
  }

  /** What a band holds for: a material and kind, or the rest of a family. */
  public static String where(Say say, Narrowed one) {
    OwnPace.Where where = one.where();
    return where == null
        ? say.at("pace.rest-" + one.family().id())
        : Labels.material(say, where.materialId()) + ", " + Labels.kind(say, where.kind());
  }
}
