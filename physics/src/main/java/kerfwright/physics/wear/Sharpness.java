package kerfwright.physics.wear;

/**
 * Life and steam: when a working part counts as worn out, and what sterilising takes.
 *
 * <p>After n sterilisations s = q + (1 - q) r^n: each takes its part of what steam can reach, the
 * rest stays. What use takes stands in {@link GrainDulling} and {@link EdgeDulling}.
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>s</td><td>-</td><td>share of the cut left</td></tr>
 *   <tr><td>n</td><td>-</td><td>sterilisations</td></tr>
 *   <tr><td>q</td><td>-</td><td>0.75: what steam never takes (project setting, 0.7 to 0.8; no data)</td></tr>
 *   <tr><td>r</td><td>-</td><td>what one leaves of the rest: 0.822 diamond, 0.424 carbide</td></tr>
 * </table>
 *
 * <p>Diamonds took 18.5 percent longer after five cycles (Gonzaga CC et al. Indian J Dent Res
 * 2019;30:915); another study saw no loss in ten (Gureckis KM et al. J Prosthet Dent 1991;66:721).
 * Carbides sterilised after each of twelve periods cut 0.786 of the control's mass in all (Fais LMG
 * et al. J Appl Oral Sci 2009;17:584); five operators felt no loss in ten cycles (Spranley TJ et
 * al. Gen Dent 2011;59:53). Valid up to the cycles tested. Leaves out: corrosion between uses,
 * cleaning damage.
 */
public final class Sharpness {
  /** What a worn-out edge has left of its cut (project setting). */
  public static final double WORN_OUT = 1.0 / 3;

  /** Lives after which a working part counts as worn out: ln 3. */
  public static final double LIFE_END = Math.log(3);

  private static final double STEAM_LEAVES = 0.75;

  /** From 33.38 against 39.55 s after five cycles (DC060, DC061). */
  private static final double DIAMOND_REST =
      Math.pow((33.38 / 39.55 - STEAM_LEAVES) / (1 - STEAM_LEAVES), 0.2);

  /**
   * Twelve periods of cutting, sterilised after each, took 0.2077/0.2642 of the control's mass
   * (DC066, DC068); the mean of the shares after 0 to 11 cycles is that for 0.4237.
   */
  private static final double CARBIDE_REST = 0.4237;

  private Sharpness() {}

  /** What steam sterilising leaves of a diamond instrument. */
  public static double ofDiamondAfterCycles(int cycles) {
    return STEAM_LEAVES + (1 - STEAM_LEAVES) * Math.pow(DIAMOND_REST, cycles);
  }

  /** What steam sterilising leaves of a carbide bur. */
  public static double ofCarbideAfterCycles(int cycles) {
    return STEAM_LEAVES + (1 - STEAM_LEAVES) * Math.pow(CARBIDE_REST, cycles);
  }
}
