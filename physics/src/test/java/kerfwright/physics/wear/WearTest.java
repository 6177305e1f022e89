package kerfwright.physics.wear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import kerfwright.physics.TestSubstances;
import kerfwright.physics.material.Substance;
import org.junit.jupiter.api.Test;

class WearTest {
  private static final double CARBIDE_PA = 15e9;
  private static final double FULL_RATE = 12e9;

  private static Substance onePhase(double hardnessGPa) {
    return TestSubstances.of(hardnessGPa, 20 * hardnessGPa, 1, hardnessGPa, 1);
  }

  /** Khrushchov, Richardson (from memory): soft abrasives hardly wear, hard ones no longer more. */
  @Test
  void softWorkHardlyWearsAnEdgeAndVeryHardWorkNoLongerMore() {
    assertTrue(EdgeWear.livesPerM3(onePhase(0.2), CARBIDE_PA) < 1e-6 * FULL_RATE);
    assertEquals(FULL_RATE, EdgeWear.livesPerM3(onePhase(150), CARBIDE_PA), 1e-5 * FULL_RATE);
    assertEquals(FULL_RATE / 2, EdgeWear.livesPerM3(onePhase(0.7 * 15), CARBIDE_PA), 1);
  }

  @Test
  void edgeWearFollowsTheSixthPowerFarBelowTheTool() {
    double one = EdgeWear.livesPerM3(onePhase(0.5), CARBIDE_PA);
    assertEquals(64 * one, EdgeWear.livesPerM3(onePhase(1), CARBIDE_PA), 1e-3 * 64 * one);
  }

  @Test
  void hardParticlesInSoftWorkWearByTheirShareAndByHowWellTheyAreHeld() {
    double soft = EdgeWear.livesPerM3(TestSubstances.of(0.3, 9, 1, 150, 0), CARBIDE_PA);
    double filled = EdgeWear.livesPerM3(TestSubstances.of(0.3, 9, 1, 150, 0.25), CARBIDE_PA);
    assertEquals(0.75 * soft + 0.125 * FULL_RATE * 0.3 / 150, filled, 1e-5 * filled);
    assertTrue(filled > 1000 * soft);
    // fillers of fresh composite: sixty cubic millimetres a life, as enamel, not six
    Substance composite = TestSubstances.of(0.6, 19.5, 1.71, 6, 0.55);
    assertEquals(60, 1e9 / EdgeWear.livesPerM3(composite, CARBIDE_PA), 6);
  }

  @Test
  void aLifeOfACarbideIsSomeSixtyOfEnamelAndTwoOfPorcelain() {
    // what the constant was set by (common practice); cubic millimetres a life
    assertEquals(60, 1e9 / EdgeWear.livesPerM3(TestSubstances.ENAMEL, CARBIDE_PA), 6);
    assertEquals(2, 1e9 / EdgeWear.livesPerM3(TestSubstances.PORCELAIN, CARBIDE_PA), 0.2);
  }

  @Test
  void grainWearAtTheReferencePointIsOneLifeIn600CubicMillimetres() {
    Substance enamel = onePhase(3.5);
    double one = GrainWear.livesPerM3(enamel, 115e-6, 1, 15);
    assertEquals(1 / 600e-9, one, 1e-6 / 600e-9);
    assertEquals(one / 6, GrainWear.livesPerM3(enamel, 115e-6, 6, 15), 1e-6 * one);
    assertEquals(2 * one, GrainWear.livesPerM3(enamel, 115e-6, 1, 30), 1e-6 * one);
    assertEquals(5 * one, GrainWear.livesPerM3(enamel, 23e-6, 1, 15), 1e-6 * one);
    assertEquals(8 * one, GrainWear.livesPerM3(onePhase(7), 115e-6, 1, 15), 1e-6 * one);
    assertEquals(0, GrainWear.livesPerM3(enamel, 115e-6, 1, 0));
  }

  @Test
  void wearStaysFiniteAndHarderWorkNeverWearsLess() {
    Random random = new Random(52);
    for (int i = 0; i < 5000; i++) {
      Substance work = TestSubstances.any(random);
      double tool = TestSubstances.logUniform(random, 0.3e9, 100e9);
      double edge = EdgeWear.livesPerM3(work, tool);
      assertTrue(edge >= 0 && edge <= FULL_RATE);
      assertTrue(EdgeWear.livesPerM3(work, 1.5 * tool) <= edge, "a harder tool wears less");
      double grain =
          GrainWear.livesPerM3(
              work,
              TestSubstances.logUniform(random, 5e-6, 200e-6),
              1 + 5 * random.nextDouble(),
              40 * random.nextDouble());
      assertTrue(grain >= 0 && Double.isFinite(grain));
    }
  }
}
