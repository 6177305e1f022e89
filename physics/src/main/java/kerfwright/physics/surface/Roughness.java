package kerfwright.physics.surface;

import kerfwright.physics.cutting.CrackThreshold;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.material.Substance;

/**
 * Roughness Ra a pass leaves, and how deep its damage reaches.
 *
 * <p>Abrasive: Ra = 0.022 d g (1 + 0.3 f), d grain size, g rigidity of the bond, f share of the
 * load that cracks: set by grit, hardly by load, as Yin L et al. (Wear 2003;255:975-989) and Dong
 * saw; "some percent of grain size" is common practice. Blades: Ra = 0.8 um (6/z)^0.8, for z
 * blades: run-out and blade spacing set it, feed marks are nanometres; brittle layers chip besides
 * (Clarke I et al.: carbide chips enamel margins), times 1 + B/B0 with B = H/K_c and B0 = 4e3
 * 1/sqrt(m). All five constants are project settings: order of magnitude only.
 *
 * <p>Damage: lateral cracks run at the floor of the plastic zone, depth 0.43 (E/H)^(2/5)
 * (P/H)^(1/2) for a grain load P (Evans and Marshall 1981; factor from memory), weighted by f;
 * where nothing cracks, the torn layer is about four times Ra (project setting).
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>Ra</td><td>m</td><td>mean roughness</td></tr>
 *   <tr><td>d, g</td><td>m, -</td><td>grain size, rigidity of the bond</td></tr>
 *   <tr><td>f</td><td>-</td><td>share of the load that cracks</td></tr>
 *   <tr><td>z</td><td>-</td><td>blades</td></tr>
 *   <tr><td>B</td><td>1/sqrt(m)</td><td>brittleness H/K_c; B0 = 4e3</td></tr>
 *   <tr><td>H, E</td><td>Pa</td><td>hardness, Young's modulus</td></tr>
 *   <tr><td>P</td><td>N</td><td>load on a grain</td></tr>
 *   <tr><td>s, r</td><td>m</td><td>step-over, radius of the head</td></tr>
 * </table>
 *
 * <p>Ridge between two passes of a round head of radius r: s^2/(8 r), s step-over (standard
 * machining texts, from memory); valid for s well below r. Leaves out: scratches of a stray grain,
 * smearing of soft layers.
 */
public final class Roughness {
  private static final double ABRASIVE_SHARE = 0.022;
  private static final double CRACK_ROUGHENS = 0.3;
  private static final double SIX_BLADES_M = 0.8e-6;
  private static final double BLADE_EXPONENT = 0.8;
  private static final double CHIPPING_BRITTLENESS = 4e3;

  private Roughness() {}

  /** Ra after an abrasive pass, m. */
  public static double ofAbrasiveM(double grainSizeM, double rigidity, CutResult cut) {
    return ABRASIVE_SHARE * grainSizeM * rigidity * (1 + CRACK_ROUGHENS * cut.brittleShare());
  }

  /** Ra after a pass of a bur, m. */
  public static double ofBladesM(int blades, Substance work) {
    double chipping = work.brittlenessPerSqrtM() / CHIPPING_BRITTLENESS;
    return SIX_BLADES_M * Math.pow(6.0 / blades, BLADE_EXPONENT) * (1 + chipping);
  }

  /** Height of the ridge between two passes of a round head: s^2 / (8 r), m. */
  public static double ridgeM(double stepOverM, double radiusM) {
    return stepOverM * stepOverM / (8 * radiusM);
  }

  /** Depth the next pass must clear, m. */
  public static double damageDepthM(
      double raM, double grainLoadN, double brittleShare, Substance work) {
    return Math.max(4 * raM, brittleShare * CrackThreshold.lateralDepthM(work, grainLoadN));
  }
}
