package kerfwright.physics.wear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SharpnessTest {
  @Test
  void aLifeEndsWhereAThirdOfAnEdgeIsLeft() {
    assertEquals(1.0 / 3, Sharpness.WORN_OUT);
    assertEquals(Math.log(3), Sharpness.LIFE_END);
  }

  @Test
  void noSterilisationLeavesItNew() {
    assertEquals(1, Sharpness.ofDiamondAfterCycles(0));
    assertEquals(1, Sharpness.ofCarbideAfterCycles(0));
  }

  /** The loss of a cycle shrinks, and a quarter in all is the most. */
  @Test
  void theLossToSteamLevels() {
    for (int n = 0; n < 20; n++) {
      assertTrue(loss(n + 1, true) < loss(n, true) && loss(n, true) > 0);
      assertTrue(loss(n + 1, false) <= loss(n, false) && loss(n, false) > 0);
    }
    assertEquals(0.75, Sharpness.ofDiamondAfterCycles(1000), 1e-12);
    assertEquals(0.75, Sharpness.ofCarbideAfterCycles(1000), 1e-12);
  }

  private static double loss(int n, boolean diamond) {
    return diamond
        ? Sharpness.ofDiamondAfterCycles(n) - Sharpness.ofDiamondAfterCycles(n + 1)
        : Sharpness.ofCarbideAfterCycles(n) - Sharpness.ofCarbideAfterCycles(n + 1);
  }
}
