package kerfwright.physics.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import kerfwright.physics.TestSubstances;
import org.junit.jupiter.api.Test;

class SpecificForceTest {
  @Test
  void aChipOfOneMillimetreNeedsTheUnitForce() {
    assertEquals(1.7e9, new SpecificForce(1.7e9, 0.3).atPa(1e-3), 1);
    // 1700 N/mm2 over 1 mm x 1 mm
    assertEquals(1700, new SpecificForce(1.7e9, 0.3).edgeForceN(1e-3, 1e-3), 1e-9);
  }

  @Test
  void noChipNeedsNoForce() {
    assertEquals(0, new SpecificForce(1e9, 0.25).edgeForceN(0, 1e-3));
  }

  @Test
  void withoutSizeEffectForceGoesWithTheSection() {
    SpecificForce law = new SpecificForce(2e9, 0);
    assertEquals(2e9 * 3e-6 * 2e-3, law.edgeForceN(3e-6, 2e-3), 1e-12);
    assertEquals(3e-6, law.chipThicknessM(2e9 * 3e-6), 1e-18);
  }

  @Test
  void theChipAForceLiftsNeedsThatForce() {
    Random random = new Random(21);
    for (int i = 0; i < 5000; i++) {
      SpecificForce law =
          new SpecificForce(
              TestSubstances.logUniform(random, 1e6, 1e11), 0.9 * random.nextDouble());
      double chip = TestSubstances.logUniform(random, 1e-10, 3e-3);
      double force = law.edgeForceN(chip, 1);
      assertEquals(chip, law.chipThicknessM(force), 1e-9 * chip);
      assertEquals(law.atPa(chip) * chip, force, 1e-9 * force);
    }
  }

  @Test
  void thinnerChipsCostMoreForTheirVolume() {
    SpecificForce law = new SpecificForce(1e9, 0.27);
    assertTrue(law.atPa(1e-9) > law.atPa(1e-6));
    assertEquals(Math.pow(1000, 0.27), law.atPa(1e-9) / law.atPa(1e-6), 1e-9);
  }

  @Test
  void anImpossibleLawIsRefusedByName() {
    IllegalArgumentException force =
        assertThrows(IllegalArgumentException.class, () -> new SpecificForce(0, 0.2));
    assertEquals(
        "Unit cutting force k_c1.1 must be above zero and finite, got 0.0 Pa", force.getMessage());
    assertThrows(IllegalArgumentException.class, () -> new SpecificForce(1e9, 1));
    assertThrows(IllegalArgumentException.class, () -> new SpecificForce(1e9, -0.1));
    assertEquals(0, new SpecificForce(1e9, 0).exponent());
  }
}
