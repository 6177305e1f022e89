package kerfwright.physics.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Both limits in closed form, and the order between. */
class MovingHeatSourceLiteratureTest {
  private static final double K = 0.81;
  private static final double ALPHA = 4.08e-7;
  private static final double A = 0.5e-3;
  private static final double Q = 1e5;

  private static double rise(double speedMPerS) {
    return MovingHeatSource.peakRiseK(Q, A, speedMPerS, K, ALPHA);
  }

  @Test
  void atRestItIsTheMiddleOfADisc() {
    assertEquals(Q * A / K, rise(0), 1e-9 * Q * A / K);
  }

  @Test
  void fastItIsJaegersBand() {
    double speed = 5;
    double band = 2 * Q / K * Math.sqrt(2 * ALPHA * A / (Math.PI * speed));
    assertEquals(band, rise(speed), 1e-3 * band);
  }

  @Test
  void aFasterHandLeavesACoolerSpot() {
    // 0.2 W over a disc of 0.5 mm on enamel: 157 K at rest, 85 K at 5 mm/s (computed by hand)
    double flux = 0.2 / (Math.PI * A * A);
    double rest = MovingHeatSource.peakRiseK(flux, A, 0, K, ALPHA);
    double moving = MovingHeatSource.peakRiseK(flux, A, 0.005, K, ALPHA);
    assertEquals(157, rest, 1);
    assertEquals(85, moving, 6);
    assertTrue(rise(0.01) < rise(0.005) && rise(0.005) < rise(0.002));
  }
}
