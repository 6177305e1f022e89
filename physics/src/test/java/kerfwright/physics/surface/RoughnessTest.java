package kerfwright.physics.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerfwright.physics.TestSubstances;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.material.Substance;
import org.junit.jupiter.api.Test;

class RoughnessTest {
  private static CutResult cracking(double share) {
    return new CutResult(1e-9, 0.5, 10, share, 0.01, 1e-6, 1, 0.5, 0);
  }

  /** Standard machining texts (from memory): s^2/(8 r). */
  @Test
  void ridgesOfARoundHead() {
    assertEquals(18.75e-6, Roughness.ridgeM(0.3e-3, 0.6e-3), 1e-12);
    assertEquals(6.250e-6, Roughness.ridgeM(0.2e-3, 0.8e-3), 1e-12);
    assertEquals(3.91e-9, Roughness.ridgeM(5e-6, 0.8e-3), 0.005e-9);
    // exact height r - sqrt(r^2 - s^2/4), close for steps well below the radius
    double exact = 0.6e-3 - Math.sqrt(0.36e-6 - 0.09e-6 / 4);
    assertEquals(exact, Roughness.ridgeM(0.3e-3, 0.6e-3), 0.02 * exact);
  }

  @Test
  void anAbrasiveLeavesAShareOfItsGrainMoreWhereItCracks() {
    assertEquals(2.2e-6, Roughness.ofAbrasiveM(100e-6, 1, cracking(0)), 1e-15);
    assertEquals(1.3 * 2.2e-6, Roughness.ofAbrasiveM(100e-6, 1, cracking(1)), 1e-15);
    assertEquals(0.15 * 2.2e-6, Roughness.ofAbrasiveM(100e-6, 0.15, cracking(0)), 1e-15);
  }

  @Test
  void moreBladesLeaveASmootherSurfaceAndBrittleWorkChips() {
    Substance soft = TestSubstances.of(1e-3, 1, 1e3, 1, 0);
    assertEquals(0.8e-6, Roughness.ofBladesM(6, soft), 1e-12);
    assertEquals(0.8e-6 * Math.pow(0.5, 0.8), Roughness.ofBladesM(12, soft), 1e-12);
    Substance brittle = TestSubstances.of(4, 80, 1, 4, 1); // H/K_c = 4e3 1/sqrt(m)
    assertEquals(1.6e-6, Roughness.ofBladesM(6, brittle), 1e-12);
    for (Substance work : TestSubstances.ALL) {
      double before = Double.POSITIVE_INFINITY;
      for (int blades : new int[] {4, 6, 8, 12, 30}) {
        double ra = Roughness.ofBladesM(blades, work);
        assertTrue(ra < before);
        before = ra;
      }
    }
  }

  @Test
  void damageReachesToTheLateralCracksOrFourTimesTheRoughness() {
    Substance work = TestSubstances.of(1, 32, 1, 1, 1); // (E/H)^0.4 = 4
    assertEquals(4e-6, Roughness.damageDepthM(1e-6, 5, 0, work), 1e-15);
    // 0.43 * 4 * sqrt(0.4 / 1e9)
    double lateral = 1.72 * Math.sqrt(0.4e-9);
    assertEquals(lateral, Roughness.damageDepthM(0, 0.4, 1, work), 1e-12);
    assertEquals(lateral / 2, Roughness.damageDepthM(1e-6, 0.4, 0.5, work), 1e-12);
    assertEquals(4e-6, Roughness.damageDepthM(1e-6, 0, 1, work), 1e-15);
  }
}
