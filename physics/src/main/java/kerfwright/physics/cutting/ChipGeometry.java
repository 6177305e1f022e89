package kerfwright.physics.cutting;

/**
 * Thickness of the chip a blade lifts in a peripheral cut, circular-path approximation.
 *
 * <p>phi_s = arccos(1 - 2 a/D); h_max = f sin(phi_s), or f once phi_s passes a right angle; h_m = 2
 * a f / (D phi_s), times the sine of the blade's setting angle for a twisted blade.
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>f</td><td>m</td><td>feed a blade</td></tr>
 *   <tr><td>a</td><td>m</td><td>radial depth of cut</td></tr>
 *   <tr><td>D</td><td>m</td><td>diameter</td></tr>
 *   <tr><td>phi_s</td><td>rad</td><td>engagement angle</td></tr>
 * </table>
 *
 * <p>Valid for f << D; the true path makes the chip against rotation slightly longer and thinner,
 * which is left out, as is run-out: with hand feed it exceeds f by far. Source: Dietrich J,
 * Tschaetsch H. Praxis der Zerspantechnik, 11th ed. 2014, as coded in public open code.
 */
public final class ChipGeometry {
  private ChipGeometry() {}

  /** Angle over which a blade is in the work, rad. */
  public static double engagementAngleRad(double depthOfCutM, double diameterM) {
    double cosine = 1 - 2 * Math.min(depthOfCutM, diameterM) / diameterM;
    return Math.acos(Math.max(-1, Math.min(1, cosine)));
  }

  /** Greatest thickness of the chip, m. */
  public static double maximumM(double feedPerBladeM, double depthOfCutM, double diameterM) {
    double angle = engagementAngleRad(depthOfCutM, diameterM);
    return angle >= Math.PI / 2 ? feedPerBladeM : feedPerBladeM * Math.sin(angle);
  }

  /** Mean thickness of the chip, m; settingAngleRad is a right angle for straight blades. */
  public static double meanM(
      double feedPerBladeM, double depthOfCutM, double diameterM, double settingAngleRad) {
    double depth = Math.min(depthOfCutM, diameterM);
    if (depth <= 0) {
      return 0; // the limit of a thinning cut; the formula itself would be 0/0
    }
    double angle = engagementAngleRad(depth, diameterM);
    return 2 * depth * feedPerBladeM / (diameterM * angle) * Math.sin(settingAngleRad);
  }

  /**
   * Thickness of the chip at an angle behind or ahead of the finished wall, m: f sin(phi) within
   * the engagement, nothing outside it.
   */
  public static double atM(
      double feedPerBladeM, double depthOfCutM, double diameterM, double angleRad) {
    boolean cutting = angleRad > 0 && angleRad <= engagementAngleRad(depthOfCutM, diameterM);
    return cutting ? feedPerBladeM * Math.sin(angleRad) : 0;
  }

  /** Feed a blade whose chip of straight blades has this mean thickness, m. */
  public static double feedPerBladeM(double meanM, double depthOfCutM, double diameterM) {
    return meanM / meanM(1, depthOfCutM, diameterM, Math.PI / 2);
  }

  /** Feed in one turn, m. */
  public static double feedPerRevolutionM(double feedMPerS, double revolutionsPerS) {
    return feedMPerS / revolutionsPerS;
  }
}
