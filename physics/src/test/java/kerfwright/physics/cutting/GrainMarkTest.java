package kerfwright.physics.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerfwright.physics.material.Substance;
import org.junit.jupiter.api.Test;

class GrainMarkTest {
  /** Enamel-like: H 3.5 GPa, E 85 GPa, K 0.67 MPa sqrt(m). */
  private static final Substance BRITTLE =
      new Substance(3.5e9, 85e9, 0.67e6, 2900, 0.8, 700, 3.5e9, 1);

  @Test
  void itCracksAboveTheThresholdAndOnlyThere() {
    double threshold = CrackThreshold.loadN(BRITTLE);
    GrainMark below = GrainMark.of(BRITTLE, threshold * (1 - 1e-9));
    GrainMark above = GrainMark.of(BRITTLE, threshold * (1 + 1e-9));
    assertFalse(below.cracks());
    assertEquals(0, below.crackedM2());
    assertEquals(0, below.crackDepthM());
    assertTrue(above.cracks());
    assertTrue(above.crackedM2() > above.grooveM2(), "cracks take more than the groove");
    assertTrue(above.crackDepthM() > above.depthM(), "they run below the tip");
  }

  /** The cone carries H times its area at the surface: P = H pi (y tan theta)^2. */
  @Test
  void theTipCarriesTheLoadOnItsArea() {
    GrainMark mark = GrainMark.of(BRITTLE, 0.1);
    double radius = mark.depthM() * Math.tan(GrainMark.tipHalfAngleRad());
    assertEquals(0.1, BRITTLE.hardnessPa() * Math.PI * radius * radius, 1e-12);
    assertEquals(radius * mark.depthM(), mark.grooveM2(), 1e-24);
  }

  @Test
  void fourTimesTheLoadSinksTwiceAsDeep() {
    assertEquals(
        2 * GrainMark.of(BRITTLE, 0.05).depthM(), GrainMark.of(BRITTLE, 0.2).depthM(), 1e-15);
  }
}
