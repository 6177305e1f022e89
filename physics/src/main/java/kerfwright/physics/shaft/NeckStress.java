package kerfwright.physics.shaft;

/**
 * Stress at the neck under a side load and a torque: sigma = 32 F L / (pi d^3), tau = 16 M / (pi
 * d^3), together sqrt(sigma^2 + 3 tau^2) after von Mises.
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>F, L</td><td>N, m</td><td>side load and its distance from the neck</td></tr>
 *   <tr><td>M</td><td>N m</td><td>torque</td></tr>
 *   <tr><td>d</td><td>m</td><td>diameter of the neck</td></tr>
 *   <tr><td>sigma, tau</td><td>Pa</td><td>bending and shear stress</td></tr>
 * </table>
 *
 * <p>Valid while the neck stays elastic. Leaves out the fillet's stress concentration and shear of
 * the side load. Turning makes the bending fully reversed, so it is held against a fatigue
 * strength, with a factor for the fillet. Source: any machine-design handbook.
 */
public final class NeckStress {
  private NeckStress() {}

  /** Bending stress, Pa. */
  public static double bendingPa(double loadN, double leverM, double diameterM) {
    return 32 * loadN * leverM / (Math.PI * diameterM * diameterM * diameterM);
  }

  /** Shear stress of the torque, Pa. */
  public static double shearPa(double torqueNM, double diameterM) {
    return 16 * torqueNM / (Math.PI * diameterM * diameterM * diameterM);
  }

  /** Equivalent stress, Pa. */
  public static double equivalentPa(
      double loadN, double leverM, double torqueNM, double diameterM) {
    double bending = bendingPa(loadN, leverM, diameterM);
    double shear = shearPa(torqueNM, diameterM);
    return Math.sqrt(bending * bending + 3 * shear * shear);
  }
}
