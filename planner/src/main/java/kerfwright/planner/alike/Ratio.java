package kerfwright.planner.alike;

import java.util.Locale;

/** A figure of the neighbour over that of the wanted one, in numbers and words. */
record Ratio(double value) {
  /** Smaller differences are lost in the spread of the models and are not put into words. */
  static final double NOTICED = 0.08;

  static Ratio of(double its, double wanted) {
    return new Ratio(its / wanted);
  }

  double distance() {
    return Math.abs(Math.log(value));
  }

  boolean noticed() {
    return distance() > NOTICED;
  }

  /** "14 % faster", "30 % slower", "2.4 times as fast". */
  String inWords(String more, String less, String as) {
    if (value >= 2 || value <= 0.1) {
      return String.format(Locale.ROOT, "%.2g times as %s", value, as).replace("e+00", "");
    }
    return value >= 1
        ? String.format(Locale.ROOT, "%.0f %% %s", 100 * (value - 1), more)
        : String.format(Locale.ROOT, "%.0f %% %s", 100 * (1 - value), less);
  }
}
