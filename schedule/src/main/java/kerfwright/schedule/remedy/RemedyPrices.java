package kerfwright.schedule.remedy;

/**
 * What remedies are worth, in minutes of the team's work, so that they can be ranked on one scale.
 * All are project settings, open to the practice's own figures.
 *
 * @param substituteMin a substitute that costs twice what the type costs; others in proportion
 * @param swap two appointments moved: two calls
 * @param loadBetween a load off the usual times
 * @param loadBeforeOpening a load before opening
 * @param loadBeside another steriliser for the day
 * @param piece one more instrument, ordering included
 */
public record RemedyPrices(
    double substituteMin,
    double swap,
    double loadBetween,
    double loadBeforeOpening,
    double loadBeside,
    double piece) {
  /** Least cost of any substitute: somebody has to change the tray. */
  private static final double CHANGE_MIN = 1;

  public static final RemedyPrices USUAL = new RemedyPrices(10, 10, 15, 30, 120, 45);

  double substitute(double costRatio) {
    return CHANGE_MIN + substituteMin * Math.max(0, costRatio - 1);
  }
}
