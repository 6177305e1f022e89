package kerfwright.physics.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class EngagementTest {
  @Test
  void arcAndAreaFollowFromDepthAndDiameter() {
    Engagement contact = new Engagement(1.6e-3, 3e-3, 0.1e-3);
    assertEquals(0.4e-3, contact.arcLengthM(), 1e-15);
    assertEquals(1.2e-6, contact.areaM2(), 1e-15);
  }

  @Test
  void aSlotEngagesHalfTheCircumference() {
    assertEquals(0.5, new Engagement(1e-3, 1e-3, 1e-3).arcShare(), 1e-12);
    assertEquals(0.25, new Engagement(1e-3, 1e-3, 0.5e-3).arcShare(), 1e-12);
  }

  @Test
  void depthIsCappedAtTheDiameter() {
    assertEquals(1e-3, new Engagement(1e-3, 1e-3, 7e-3).depthOfCutM());
  }

  @Test
  void nothingInContactIsRefusedByName() {
    for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      message("Diameter must be above zero and finite, got " + bad + " m", bad, 1, 1);
      message("Engaged length must be above zero and finite, got " + bad + " m", 1, bad, 1);
      message("Depth of cut must be above zero and finite, got " + bad + " m", 1, 1, bad);
    }
  }

  private static void message(String expected, double d, double b, double a) {
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> new Engagement(d, b, a));
    assertEquals(expected, e.getMessage());
  }
}
