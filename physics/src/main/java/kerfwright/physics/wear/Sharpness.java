package kerfwright.physics.wear;

/**
 * What is left of a working part's cut after a share of its life, and on average over a step.
 *
 * <p>s = exp(-u), u lives used; the mean over a step that uses du is s (1 - exp(-du)) / du; after n
 * sterilisations s = q^n. Worn out is below one third (project setting).
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>s</td><td>-</td><td>sharpness: share of the cut when new</td></tr>
 *   <tr><td>u, du</td><td>-</td><td>lives used before a step, lives the step uses</td></tr>
 *   <tr><td>n, q</td><td>-</td><td>sterilisations, what one of them leaves</td></tr>
 * </table>
 *
 * <p>q comes from steam sterilising: diamonds took 18.5 percent longer after five cycles (Gonzaga
 * CC et al. Indian J Dent Res 2019;30:915); another study saw no loss in ten (Gureckis KM et al. J
 * Prosthet Dent 1991;66:721). Carbides sterilised after each of twelve periods cut 0.786 of the
 * control's mass in all (Fais LMG et al. J Appl Oral Sci 2009;17:584); five operators felt no loss
 * in ten cycles (Spranley TJ et al. Gen Dent 2011;59:53). Valid up to the cycles tested. Leaves
 * out: corrosion between uses, cleaning damage.
 */
public final class Sharpness {
  /** Below this a working part is worn out. */
  public static final double WORN_OUT = 1.0 / 3;

  /** Lives after which that is reached: ln 3. */
  public static final double LIFE_END = Math.log(3);

  /**
   * Loss of sharpness for one steam sterilisation of a diamond: 1 - (33.38/39.55)^(1/5) (DC060,
   * DC061).
   */
  private static final double DIAMOND_LOSS_PER_CYCLE = 1 - Math.pow(33.38 / 39.55, 0.2);

  /**
   * The same for carbide: twelve periods of cutting, sterilised after each, took 0.2077/0.2642 of
   * the control's mass (DC066, DC068); the mean of q^0 to q^11 is that for q = 0.9551.
   */
  private static final double CARBIDE_LOSS_PER_CYCLE = 1 - 0.9551;

  private Sharpness() {}

  /** Sharpness after a number of lives used. */
  public static double after(double livesUsed) {
    return Math.exp(-livesUsed);
  }

  /** Mean factor while a further share of life is used, at most 1. */
  public static double meanOver(double livesUsedInStep) {
    return livesUsedInStep < 1e-9 ? 1 : -Math.expm1(-livesUsedInStep) / livesUsedInStep;
  }

  /** What steam sterilising leaves of a diamond instrument. */
  public static double ofDiamondAfterCycles(int cycles) {
    return Math.pow(1 - DIAMOND_LOSS_PER_CYCLE, cycles);
  }

  /** What steam sterilising leaves of a carbide bur. */
  public static double ofCarbideAfterCycles(int cycles) {
    return Math.pow(1 - CARBIDE_LOSS_PER_CYCLE, cycles);
  }
}
