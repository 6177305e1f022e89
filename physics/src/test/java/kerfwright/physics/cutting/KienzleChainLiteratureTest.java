package kerfwright.physics.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import kerfwright.quantity.Length;
import kerfwright.quantity.RotationalSpeed;
import org.junit.jupiter.api.Test;

/**
 * Milling of structural steel S235: inputs and constants as published in open code after Dietrich
 * J, Tschaetsch H. Praxis der Zerspantechnik, 11th ed. 2014 (D 3 mm, a_e 0.25 mm, a_p 3 mm, two
 * edges, f_z 0.1 mm, helix 45 degrees, v_c 200 m/min, k_c1.1 1780 N/mm2, m_c 0.17). The results
 * were worked out independently; tolerances are half of their last printed digit. The corrections
 * (rake 1.06, chip compression 1.2, wear 1.3) belong to metal cutting and stand here, not in the
 * product.
 */
class KienzleChainLiteratureTest {
  private static final double DEPTH_M = 0.25e-3;
  private static final double DIAMETER_M = 3e-3;
  private static final double FEED_M = 0.1e-3;
  private static final double HELIX_RAD = Math.toRadians(45);
  private static final double CORRECTIONS = (1 - (0.0 - 6.0) / 100) * 1.2 * 1.3;
  private static final SpecificForce STEEL = new SpecificForce(1780e6, 0.17);

  private static double meanChipM() {
    return ChipGeometry.meanM(FEED_M, DEPTH_M, DIAMETER_M, Math.PI / 2 - HELIX_RAD);
  }

  @Test
  void theSpeedFollowsFromTheRimSpeed() {
    RotationalSpeed speed = new RotationalSpeed(200 / 60.0 / (Math.PI * DIAMETER_M));
    assertEquals(21_220.66, speed.rpm(), 0.005);
    assertEquals(3.3333, speed.rimSpeed(Length.ofMillimetres(3)).metresPerSecond(), 5e-5);
  }

  @Test
  void theEngagementAngleIsTheOneWorkedOut() {
    double degrees = Math.toDegrees(ChipGeometry.engagementAngleRad(DEPTH_M, DIAMETER_M));
    assertEquals(33.5573, degrees, 5e-5);
  }

  @Test
  void theChipsAreTheOnesWorkedOut() {
    assertEquals(0.0201219e-3, meanChipM(), 5e-11);
    assertEquals(0.028457e-3, ChipGeometry.meanM(FEED_M, DEPTH_M, DIAMETER_M, Math.PI / 2), 5e-10);
    assertEquals(0.055277e-3, ChipGeometry.maximumM(FEED_M, DEPTH_M, DIAMETER_M), 5e-10);
  }

  @Test
  void theSpecificForceIsTheOneWorkedOut() {
    assertEquals(3457.77e6, STEEL.atPa(meanChipM()), 0.005e6);
    assertEquals(1.65360, CORRECTIONS, 5e-6);
    assertEquals(5717.77e6, CORRECTIONS * STEEL.atPa(meanChipM()), 0.005e6);
  }

  @Test
  void forceAndPowerAreTheOnesWorkedOut() {
    double width = 3e-3 / Math.cos(HELIX_RAD);
    assertEquals(4.242641e-3, width, 5e-10);
    double force = CORRECTIONS * STEEL.edgeForceN(meanChipM(), width);
    assertEquals(488.126, force, 5e-4);
    double edges = 2 * new Engagement(DIAMETER_M, 3e-3, DEPTH_M).arcShare();
    assertEquals(0.186429, edges, 5e-7);
    assertEquals(303.337, force * edges * 200 / 60, 5e-4);
  }

  /** C45 (2220, 0.14; constants from memory) and S235 at round chip thicknesses. */
  @Test
  void simplePointsOfTheLaw() {
    SpecificForce c45 = new SpecificForce(2220e6, 0.14);
    assertEquals(3064.5e6, c45.atPa(0.1e-3), 0.05e6);
    assertEquals(2781.0e6, c45.atPa(0.2e-3), 0.05e6);
    assertEquals(2632.8e6, STEEL.atPa(0.1e-3), 0.05e6);
  }
}
