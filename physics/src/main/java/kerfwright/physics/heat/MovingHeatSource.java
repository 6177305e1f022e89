package kerfwright.physics.heat;

import kerfwright.quantity.Check;

/**
 * Computes the hottest point of a surface under a small heat source that moves over it.
 *
 * <pre>
 *   dT = 2 q a / (k sqrt(pi (1.273 + Pe))),   Pe = v a / (2 alpha)
 *
 *   q   heat flux into the surface, W/m2      k       conductivity, W/(m K)
 *   a   radius of the round source, m         alpha   diffusivity, m2/s
 *   v   speed over the surface, m/s           Pe      Peclet number
 * </pre>
 *
 * <p>A join of two closed forms (Tian X, Kennedy FE. J Tribol 1994;116:167-174, from memory): at
 * rest q a / k (Carslaw and Jaeger 10.5), fast (2 q / k) sqrt(2 alpha a / (pi v)) (Jaeger JC. Proc
 * R Soc NSW 1942;76:203-224, band source, from memory). The source moves with the hand, not with
 * the rim of the instrument, because the rim heats the same spot all the time.
 *
 * <p>Valid for a source much smaller than the body and longer in place than a^2 / alpha, a few
 * tenths of a second. Leaves out: layers below, flashes under single grains, heat of strokes
 * before.
 */
public final class MovingHeatSource {
  private static final double AT_REST = 4 / Math.PI;

  private MovingHeatSource() {}

  /** Rise of the hottest point, K. */
  public static double peakRiseK(
      double fluxWPerM2,
      double radiusM,
      double speedMPerS,
      double conductivityWPerMK,
      double diffusivityM2PerS) {
    Check.positive("Radius of the source", "m", radiusM);
    Check.notNegative("Speed of the source", "m/s", speedMPerS);
    double peclet = speedMPerS * radiusM / (2 * diffusivityM2PerS);
    return 2
        * fluxWPerM2
        * radiusM
        / (conductivityWPerMK * Math.sqrt(Math.PI * (AT_REST + peclet)));
  }
}
