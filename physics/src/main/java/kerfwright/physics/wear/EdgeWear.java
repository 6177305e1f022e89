package kerfwright.physics.wear;

import kerfwright.physics.material.Substance;

/**
 * How fast the blades of a bur blunt: share of the edge's life used by a volume.
 *
 * <p>w = w0 [ (1 - s) g(H/H_t) + s^1.5 (H/H_h) g(H_h/H_t) ], g(r) = 1 / (1 + (0.7/r)^6). Abrasives
 * much softer than the tool hardly wear it, those as hard or harder wear it at a rate that no
 * longer rises (Khrushchov MM. Wear 1974;28:69-88; Richardson RCD. Wear 1968;11:245-275; both from
 * memory). Fillers of composite and carbides in cobalt-chromium are harder than what holds them:
 * such a particle presses on the edge no harder than its bed bears, so that it counts by H/H_h.
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>H, H_h, H_t</td><td>Pa</td><td>hardness of the bulk, its hardest phase, the tool</td></tr>
 *   <tr><td>s</td><td>-</td><td>volume share of the hardest phase; sparse hard particles count
 *       less than their share, hence the power 1.5 (project setting)</td></tr>
 *   <tr><td>w0</td><td>1/m3</td><td>12 lives a mm3 where the work is far harder than the tool (project
 *       setting: about 2 mm3 of porcelain or 60 of enamel to a carbide bur,
 *       common practice; one bench test cut 106 mm3 of glass with one carbide: Fais LMG et al. J Appl
 *       Oral Sci 2009;17:584)</td></tr>
 * </table>
 *
 * <p>Order of magnitude only. Where there is one phase only, s is 0 or 1. Leaves out: chipping by
 * shock, corrosion.
 */
public final class EdgeWear {
  private static final double FULL_RATE_PER_M3 = 12e9;
  private static final double HALF_RATIO = 0.7;
  private static final double STEEPNESS = 6;

  private EdgeWear() {}

  /** Lives used for a volume, 1/m3. */
  public static double livesPerM3(Substance work, double toolHardnessPa) {
    double bulk = severity(work.hardnessPa() / toolHardnessPa);
    double hard = severity(work.hardPhaseHardnessPa() / toolHardnessPa);
    double held = work.hardnessPa() / work.hardPhaseHardnessPa();
    double share = work.hardPhaseShare();
    return FULL_RATE_PER_M3 * ((1 - share) * bulk + share * Math.sqrt(share) * held * hard);
  }

  private static double severity(double ratio) {
    return 1 / (1 + Math.pow(HALF_RATIO / ratio, STEEPNESS));
  }
}
