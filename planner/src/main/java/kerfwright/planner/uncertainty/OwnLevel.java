package kerfwright.planner.uncertainty;

import kerfwright.catalogue.evidence.Discrepancy;

/**
 * What is known of how far one laboratory, or one practice, lies off the models, on the scale of a
 * family: normal, with the mean some share of what its own figures lie off.
 *
 * @param weight share of its own mean; 0 before any figure, towards 1 with many
 * @param sd standard deviation left
 */
public record OwnLevel(double weight, double sd) {
  /** 95th percentile of the standard normal distribution. */
  public static final double Z95 = 1.6449;

  /** Before any figure of its own: a normal level with the 90 percent band of the t level. */
  public static OwnLevel prior(Discrepancy d) {
    return new OwnLevel(0, d.between() * t95(d.freedom()) / Z95);
  }

  /** After so many figures that scatter by so much; the usual normal update. */
  public OwnLevel after(int figures, double scatter) {
    double level = sd * sd;
    double ofMean = scatter * scatter / figures;
    return new OwnLevel(level / (level + ofMean), Math.sqrt(level * ofMean / (level + ofMean)));
  }

  /**
   * 95th percentile of Student's t: series of Cornish and Fisher (Abramowitz and Stegun 26.7.5),
   * within 3 percent from three degrees of freedom up.
   */
  static double t95(double freedom) {
    double z = Z95;
    double z3 = z * z * z;
    double z5 = z3 * z * z;
    double z7 = z5 * z * z;
    return z
        + (z3 + z) / (4 * freedom)
        + (5 * z5 + 16 * z3 + 3 * z) / (96 * freedom * freedom)
        + (3 * z7 + 19 * z5 + 17 * z3 - 15 * z) / (384 * freedom * freedom * freedom);
  }
}
