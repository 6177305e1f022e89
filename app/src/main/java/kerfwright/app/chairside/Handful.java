package kerfwright.app.chairside;

import kerfwright.app.plan.Figures;
import kerfwright.app.words.Say;

/** A load in words a hand understands; the limits between the words are project settings. */
final class Handful {
  private static final double VERY_LIGHT_N = 0.35;
  private static final double LIGHT_N = 0.8;
  private static final double STEADY_N = 1.2;
  private static final double GRAMS_PER_N = 1000 / 9.80665;

  private Handful() {}

  static String words(Say say, double newtons) {
    return say.at(
        newtons < VERY_LIGHT_N
            ? "chairside.load-very-light"
            : newtons < LIGHT_N
                ? "chairside.load-light"
                : newtons < STEADY_N ? "chairside.load-steady" : "chairside.load-firm");
  }

  /** The same as a reading of kitchen scales, to feel it once before the case. */
  static String scales(Say say, double newtons) {
    long grams = Math.round(newtons * GRAMS_PER_N / 5) * 5;
    return say.at("chairside.load-scales", Figures.plain(say, newtons), Math.max(5, grams));
  }
}
