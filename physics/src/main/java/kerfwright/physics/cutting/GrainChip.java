package kerfwright.physics.cutting;

/**
 * Greatest thickness of the chip of one grain in grinding with a set feed, triangular section:
 *
 * <p>h_m = sqrt( 3/(C tan(alpha)) (v_w/v_s) sqrt(a/d_s) ).
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>C</td><td>1/m2</td><td>active cutting points on an area</td></tr>
 *   <tr><td>alpha</td><td>rad</td><td>half-angle of the chip section</td></tr>
 *   <tr><td>v_w, v_s</td><td>m/s</td><td>feed, rim speed</td></tr>
 *   <tr><td>a, d_s</td><td>m</td><td>depth of cut, diameter</td></tr>
 * </table>
 *
 * <p>Valid for v_w << v_s, a << d_s and grains of equal height. Source: Malkin S, Guo C. Grinding
 * Technology, 2nd ed. 2008, ch. 3 (from memory; it follows from the volume balance C v_s h^2
 * tan(alpha) l_c / 3 = a v_w).
 */
public final class GrainChip {
  private GrainChip() {}

  /** Greatest chip thickness of a grain, m. */
  public static double thicknessM(
      double pointsPerM2,
      double halfAngleRad,
      double feedMPerS,
      double rimSpeedMPerS,
      double depthOfCutM,
      double diameterM) {
    return Math.sqrt(
        3
            / (pointsPerM2 * Math.tan(halfAngleRad))
            * (feedMPerS / rimSpeedMPerS)
            * Math.sqrt(depthOfCutM / diameterM));
  }
}
