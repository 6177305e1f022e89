package kerfwright.physics.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class HardnessRatioTest {
  @Test
  void aToolNoHarderThanTheLayerCutsNothing() {
    assertEquals(0, HardnessRatio.cuttingShare(1e9, 1e9), 1e-12);
    assertEquals(0, HardnessRatio.cuttingShare(0.4e9, 3.5e9));
  }

  @Test
  void halfIsLeftAtTheNeededRatioAndAllFromOnePointFour() {
    assertEquals(1.2, HardnessRatio.NEEDED);
    assertEquals(0.25, HardnessRatio.cuttingShare(1.1e9, 1e9), 1e-9);
    assertEquals(0.5, HardnessRatio.cuttingShare(1.2e9, 1e9), 1e-9);
    assertEquals(1, HardnessRatio.cuttingShare(1.4e9, 1e9), 1e-9);
    assertEquals(1, HardnessRatio.cuttingShare(80e9, 1e9));
  }

  @Test
  void theNeededRatioItselfCuts() {
    assertTrue(HardnessRatio.canCut(1.2e9, 1e9));
    assertFalse(HardnessRatio.canCut(1.1999e9, 1e9));
  }

  /** Polymer 0.4, sound dentine 0.6, carious dentine 0.2, enamel 3.5 GPa (catalogue, typical). */
  @Test
  void aPolymerBurCutsCariousDentineAndStopsAtSoundDentineAndEnamel() {
    assertTrue(HardnessRatio.canCut(0.4e9, 0.2e9));
    assertFalse(HardnessRatio.canCut(0.4e9, 0.6e9));
    assertFalse(HardnessRatio.canCut(0.4e9, 3.5e9));
  }
}
