package kerfwright.physics.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class ChipGeometryTest {
  private static final double RIGHT_ANGLE = Math.PI / 2;

  @Test
  void aFullSlotEngagesHalfATurnWithTheFeedAsGreatestChip() {
    assertEquals(Math.PI, ChipGeometry.engagementAngleRad(1e-3, 1e-3), 1e-12);
    assertEquals(2e-6, ChipGeometry.maximumM(2e-6, 1e-3, 1e-3), 1e-18);
    assertEquals(2 * 2e-6 / Math.PI, ChipGeometry.meanM(2e-6, 1e-3, 1e-3, RIGHT_ANGLE), 1e-18);
  }

  @Test
  void halfTheDiameterEngagesARightAngle() {
    assertEquals(RIGHT_ANGLE, ChipGeometry.engagementAngleRad(0.5e-3, 1e-3), 1e-12);
    assertEquals(3e-6, ChipGeometry.maximumM(3e-6, 0.5e-3, 1e-3), 1e-18);
  }

  @Test
  void pastARightAngleTheGreatestChipIsTheFeed() {
    assertEquals(3e-6, ChipGeometry.maximumM(3e-6, 0.8e-3, 1e-3), 1e-18);
    assertTrue(ChipGeometry.maximumM(3e-6, 0.3e-3, 1e-3) < 3e-6);
  }

  @Test
  void deeperThanTheDiameterIsAFullSlot() {
    assertEquals(Math.PI, ChipGeometry.engagementAngleRad(5e-3, 1e-3), 1e-12);
    assertEquals(
        ChipGeometry.meanM(2e-6, 1e-3, 1e-3, RIGHT_ANGLE),
        ChipGeometry.meanM(2e-6, 5e-3, 1e-3, RIGHT_ANGLE),
        1e-18);
  }

  @Test
  void noDepthGivesNoChip() {
    assertEquals(0, ChipGeometry.meanM(2e-6, 0, 1e-3, RIGHT_ANGLE));
    assertEquals(0, ChipGeometry.maximumM(2e-6, 0, 1e-3));
  }

  @Test
  void theGreatestChipIsTwiceTheFeedTimesTheRootOfTheDepthShare() {
    Random random = new Random(11);
    for (int i = 0; i < 2000; i++) {
      double share = random.nextDouble() / 2;
      double expected = 2 * Math.sqrt(share * (1 - share));
      assertEquals(expected, ChipGeometry.maximumM(1, share, 1), 1e-9);
    }
  }

  /** Mean over the arc by summing h = f sin(phi), which the closed form integrates. */
  @Test
  void theMeanChipIsTheIntegralOverTheArc() {
    Random random = new Random(12);
    for (int i = 0; i < 200; i++) {
      double depth = 0.001 + 0.999 * random.nextDouble();
      double angle = ChipGeometry.engagementAngleRad(depth, 1);
      double sum = 0;
      int steps = 2000;
      for (int k = 0; k < steps; k++) {
        sum += Math.sin((k + 0.5) * angle / steps) / steps;
      }
      assertEquals(sum, ChipGeometry.meanM(1, depth, 1, RIGHT_ANGLE), 1e-6 * sum);
    }
  }

  @Test
  void feedOfATurnIsSpeedOverTurns() {
    // 60 mm/min at 288 400 1/min: 0.208 um (inputs published: leucite glass-ceramic study)
    assertEquals(0.208e-6, ChipGeometry.feedPerRevolutionM(1e-3, 288_400 / 60.0), 0.0005e-6);
  }

  /** The mean of the thickness along the arc is the mean thickness; at the exit it is greatest. */
  @Test
  void theThicknessAlongTheArcHasTheMeanOfTheFormula() {
    double feed = 100e-9;
    double depth = 50e-6;
    double diameter = 1.4e-3;
    double end = ChipGeometry.engagementAngleRad(depth, diameter);
    double sum = 0;
    int parts = 10_000;
    for (int i = 0; i < parts; i++) {
      sum += ChipGeometry.atM(feed, depth, diameter, end * (i + 0.5) / parts);
    }
    double mean = ChipGeometry.meanM(feed, depth, diameter, Math.PI / 2);
    assertEquals(mean, sum / parts, 1e-6 * mean);
    assertEquals(
        ChipGeometry.maximumM(feed, depth, diameter),
        ChipGeometry.atM(feed, depth, diameter, end),
        1e-18);
    assertEquals(0, ChipGeometry.atM(feed, depth, diameter, -0.1));
    assertEquals(0, ChipGeometry.atM(feed, depth, diameter, end + 0.01));
    assertEquals(feed, ChipGeometry.feedPerBladeM(mean, depth, diameter), 1e-18);
  }
}
