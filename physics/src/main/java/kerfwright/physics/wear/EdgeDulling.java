package kerfwright.physics.wear;

/**
 * How the cut of a bladed edge falls with use: in a straight line, s(u) = 1 - (2/3) u/u_e, with u
 * lives of {@link EdgeWear} and u_e the life's end; held at 0.05.
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>s</td><td>-</td><td>sharpness: share of the cut when new</td></tr>
 *   <tr><td>u, u_e</td><td>-</td><td>lives used, {@link Sharpness#LIFE_END}</td></tr>
 * </table>
 *
 * <p>Carbide fissure burs dulled in proportion to use (DC025, abstract). A third is left at the end
 * of a life by the meaning of {@link Sharpness#WORN_OUT}. Valid up to there. Leaves out: a blade
 * that breaks.
 */
public final class EdgeDulling {
  private static final double LEAST = 0.05;
  private static final double FALL = (1 - Sharpness.WORN_OUT) / Sharpness.LIFE_END;

  private EdgeDulling() {}

  /** Sharpness after a number of lives used. */
  public static double after(double livesUsed) {
    return Math.max(LEAST, 1 - FALL * livesUsed);
  }

  /** Lives that a new edge would use in the time these take: the integral of 1/s. */
  public static double slowness(double livesUsed, double livesInStep) {
    double blunt = (1 - LEAST) / FALL;
    double falling = Math.max(0, Math.min(livesInStep, blunt - livesUsed));
    double flat = livesInStep - falling;
    return -Math.log1p(-FALL * falling / (1 - FALL * Math.min(livesUsed, blunt))) / FALL
        + flat / LEAST;
  }
}
