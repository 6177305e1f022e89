package kerfwright.physics.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * Malkin S, Guo C. Grinding Technology, 2nd ed. 2008, ch. 3 (form from memory, derived from the
 * volume balance); the two worked examples were computed independently from round inputs, tolerance
 * half of the last digit.
 */
class GrainChipTest {
  private static final double SIXTY_DEGREES = Math.toRadians(60);

  private static double chip(double points, double feed, double rim, double depth, double head) {
    return GrainChip.thicknessM(points, SIXTY_DEGREES, feed, rim, depth, head);
  }

  @Test
  void aGrindingWheelLiftsChipsOfSomeMicrometres() {
    assertEquals(2.4028e-6, chip(10e6, 0.1, 30, 20e-6, 0.2), 5e-11);
  }

  @Test
  void aDiamondInstrumentLiftsChipsBelowAMicrometre() {
    double rim = Math.PI * 1.2e-3 * 300_000 / 60;
    assertEquals(18.850, rim, 5e-4);
    assertEquals(0.24495e-3, new Engagement(1.2e-3, 1e-3, 50e-6).arcLengthM(), 5e-9);
    assertEquals(0.96842e-6, chip(20e6, 1e-3, rim, 50e-6, 1.2e-3), 5e-12);
  }

  @Test
  void itScalesWithFeedDepthAndPoints() {
    double one = chip(20e6, 1e-3, 20, 50e-6, 1.2e-3);
    assertEquals(2 * one, chip(20e6, 4e-3, 20, 50e-6, 1.2e-3), 1e-15);
    assertEquals(2 * one, chip(20e6, 1e-3, 20, 16 * 50e-6, 1.2e-3), 1e-15);
    assertEquals(one / 2, chip(80e6, 1e-3, 20, 50e-6, 1.2e-3), 1e-15);
    assertEquals(one / 2, chip(20e6, 1e-3, 80, 50e-6, 1.2e-3), 1e-15);
    assertEquals(one / 2, chip(20e6, 1e-3, 20, 50e-6, 16 * 1.2e-3), 1e-15);
  }

  /**
   * Chips a second times the volume of one is what the feed brings: C v_s h^2 tan(a) l_c/3 = a v_w.
   */
  @Test
  void theVolumeBalanceCloses() {
    double h = chip(20e6, 1e-3, 20, 50e-6, 1.2e-3);
    double arc = Math.sqrt(50e-6 * 1.2e-3);
    double lifted = 20e6 * 20 * h * h * Math.tan(SIXTY_DEGREES) * arc / 3;
    assertEquals(50e-6 * 1e-3, lifted, 1e-17);
  }
}
