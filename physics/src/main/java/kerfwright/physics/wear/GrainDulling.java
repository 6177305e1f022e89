package kerfwright.physics.wear;

/**
 * How the cut of grit falls with use: running-in, a long plateau, a slow decline.
 *
 * <pre>
 *   s(u) = [ p + (1 - p) exp(-u/u_r) ] exp(-u/u_L)
 *   p    = max( 1/2, 1 - 2^-(d/d1)^2 )
 * </pre>
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>s</td><td>-</td><td>sharpness: share of the cut when new</td></tr>
 *   <tr><td>u</td><td>-</td><td>lives used, see {@link GrainWear}</td></tr>
 *   <tr><td>u_r, u_L</td><td>-</td><td>{@link WearConstants}</td></tr>
 *   <tr><td>p</td><td>-</td><td>plateau: what is left once the sharpest tips have gone</td></tr>
 *   <tr><td>d, d1</td><td>m</td><td>grain size; 115 micrometres, medium</td></tr>
 * </table>
 *
 * <p>That grains break at first, then wear evenly, then dull is the general finding of grinding
 * (textbook, excerpt); enamel was cut at a steady rate for 72 minutes (DC001 to DC011). The plateau
 * by grit is read from losses of 50, 35 and 25 percent of medium, coarse and super-coarse grit over
 * the same cut (Siegel SC, von Fraunhofer JA 2000: DC017, DC018, R01). Finer grit was not tested:
 * it is held at the plateau of medium (project setting). Valid for one layer of grain; at the end
 * of its life ({@link Sharpness#LIFE_END}) an instrument still cuts, slower and hotter for what it
 * takes. Leaves out: grains torn out, clogging.
 */
public final class GrainDulling {
  private static final double MEDIUM_M = 115e-6;
  private static final double LEAST_PLATEAU = 0.5;

  private GrainDulling() {}

  /** Share of the cut left after running-in. */
  public static double plateau(double grainSizeM) {
    double size = grainSizeM / MEDIUM_M;
    return Math.max(LEAST_PLATEAU, 1 - Math.pow(2, -size * size));
  }

  /** Sharpness after a number of lives used. */
  public static double after(WearConstants constants, double grainSizeM, double livesUsed) {
    double p = plateau(grainSizeM);
    return (p + (1 - p) * Math.exp(-livesUsed / constants.runningInLives()))
        * Math.exp(-livesUsed / constants.declineLives());
  }

  /**
   * Lives that a new instrument would use in the time these take: the integral of 1/s from one
   * state of use to another. The decline, slow against a step, is taken at its middle.
   */
  public static double slowness(
      WearConstants constants, double grainSizeM, double livesUsed, double livesInStep) {
    double p = plateau(grainSizeM);
    double from = livesUsed / constants.runningInLives();
    double step = livesInStep / constants.runningInLives();
    double worn =
        step + Math.log((p + (1 - p) * Math.exp(-from - step)) / (p + (1 - p) * Math.exp(-from)));
    double middle = livesUsed + livesInStep / 2;
    return constants.runningInLives() / p * worn * Math.exp(middle / constants.declineLives());
  }
}
