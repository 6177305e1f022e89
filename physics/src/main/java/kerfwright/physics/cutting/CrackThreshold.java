package kerfwright.physics.cutting;

import kerfwright.physics.material.Substance;

/**
 * Load on one sliding grain above which lateral cracks form, P* = lambda K_0^4 / H^3, and the
 * volume they lift from a length of travel, V/s = alpha P^(9/8) K_0^(-1/2) H^(-5/8) (E/H)^(4/5).
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>P</td><td>N</td><td>load on the grain</td></tr>
 *   <tr><td>K_0</td><td>Pa sqrt(m)</td><td>fracture toughness of a crack as short as a grain's, 5 to
 *       50 micrometres: where toughness grows with the crack the figure of long cracks is too high</td></tr>
 *   <tr><td>H, E</td><td>Pa</td><td>hardness, Young's modulus</td></tr>
 *   <tr><td>lambda</td><td>-</td><td>1e5 when sliding, half of the 2e5 of static indentation (from
 *       memory), with K_0: zirconia then stays mainly ductile and porcelain cracks (DC014 to DC016)</td></tr>
 *   <tr><td>alpha</td><td>-</td><td>dimensionless factor, fitted</td></tr>
 * </table>
 *
 * <p>Valid for sharp grains and contacts large against the grain of the work; order of magnitude
 * only. Leaves out: transformation toughening under a small contact, crack interaction between
 * grains. Sources: Lawn BR, Marshall DB. J Am Ceram Soc 1979;62:347-350 (form of the threshold);
 * Evans AG, Marshall DB, in Rigney (ed.), Fundamentals of Friction and Wear of Materials, 1981
 * (volume).
 */
public final class CrackThreshold {
  private CrackThreshold() {}

  /** Load on a grain above which it cracks the work, with the usual sliding factor, N. */
  public static double loadN(Substance work) {
    return loadN(work, CuttingConstants.TYPICAL.slidingFactor());
  }

  /** Load on a grain above which it cracks the work, N. */
  public static double loadN(Substance work, double slidingFactor) {
    double k = work.shortCrackToughnessPaSqrtM();
    double h = work.hardnessPa();
    return slidingFactor * k * k * k * k / (h * h * h);
  }

  /**
   * Depth at which lateral cracks run, the floor of the plastic zone: 0.43 (E/H)^(2/5) (P/H)^(1/2),
   * m (Evans and Marshall 1981; factor from memory).
   */
  public static double lateralDepthM(Substance work, double grainLoadN) {
    double h = work.hardnessPa();
    return 0.43 * Math.pow(work.youngPa() / h, 0.4) * Math.sqrt(grainLoadN / h);
  }

  /** Volume lifted by lateral cracks over a length of travel at factor one, m3/m. */
  public static double crackVolumePerLengthM2(Substance work, double grainLoadN) {
    double h = work.hardnessPa();
    return Math.pow(grainLoadN, 9.0 / 8)
        * Math.pow(work.shortCrackToughnessPaSqrtM(), -0.5)
        * Math.pow(h, -5.0 / 8)
        * Math.pow(work.youngPa() / h, 0.8);
  }
}
