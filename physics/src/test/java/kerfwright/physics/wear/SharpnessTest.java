package kerfwright.physics.wear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class SharpnessTest {
  @Test
  void newIsOneAndALifeIsOneOverE() {
    assertEquals(1, Sharpness.after(0));
    assertEquals(Math.exp(-1), Sharpness.after(1), 1e-15);
    assertEquals(Sharpness.WORN_OUT, Sharpness.after(Sharpness.LIFE_END), 1e-15);
    assertEquals(1.0 / 3, Sharpness.WORN_OUT);
  }

  @Test
  void noSterilisationLeavesItNew() {
    assertEquals(1, Sharpness.ofDiamondAfterCycles(0));
    assertEquals(1, Sharpness.ofCarbideAfterCycles(0));
    assertTrue(Sharpness.ofDiamondAfterCycles(1) < 1 && Sharpness.ofCarbideAfterCycles(1) < 1);
  }

  @Test
  void theMeanOverAStepIsTheIntegralOfTheFall() {
    Random random = new Random(51);
    for (int i = 0; i < 500; i++) {
      double used = 5 * random.nextDouble();
      double sum = 0;
      int steps = 2000;
      for (int k = 0; k < steps; k++) {
        sum += Sharpness.after((k + 0.5) * used / steps) / steps;
      }
      assertEquals(sum, Sharpness.meanOver(used), 1e-6);
    }
  }

  @Test
  void aVanishingStepKeepsTheWholeCut() {
    assertEquals(1, Sharpness.meanOver(0));
    assertEquals(1, Sharpness.meanOver(1e-10), 1e-9);
    assertEquals(1 - 0.5e-6, Sharpness.meanOver(1e-6), 1e-11);
    double justAbove = Sharpness.meanOver(1e-4);
    assertTrue(justAbove < 1 && justAbove > 0.99994, "no step where the closed form takes over");
  }
}
