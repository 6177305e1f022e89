package kerfwright.planner.alike;

import java.util.Locale;
import kerfwright.catalogue.Remark;

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
  Remark inWords() {
    if (value >= 2 || value <= 0.1) {
      String times = String.format(Locale.ROOT, "%.2g", value).replace("e+00", "");
      return Remark.of("ratio-times", times);
    }
    long percent = Math.round(100 * Math.abs(value - 1));
    return value >= 1 ? Remark.of("ratio-faster", percent) : Remark.of("ratio-slower", percent);
  }
}
