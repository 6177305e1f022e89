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

  /**
   * Lives that the edge as it is now would use in the time these take: the integral of 1/(f + (1 -
   * f) s/s_0), s_0 the sharpness now.
   *
   * @param steadyShare f, share of the rate now that does not dull: cracks under points of the edge
   */
  public static double slowness(double livesUsed, double livesInStep, double steadyShare) {
    double now = after(livesUsed);
    double falling = Math.max(0, Math.min(livesInStep, (now - LEAST) / FALL));
    double fall = (1 - steadyShare) * FALL / now;
    double whileFalling = fall > 0 ? -Math.log1p(-fall * falling) / fall : falling;
    return whileFalling + (livesInStep - falling) / (steadyShare + (1 - steadyShare) * LEAST / now);
  }
}
