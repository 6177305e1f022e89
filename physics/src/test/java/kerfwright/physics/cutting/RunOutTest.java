package kerfwright.physics.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerfwright.physics.TestSubstances;
import kerfwright.physics.material.Substance;
import org.junit.jupiter.api.Test;

class RunOutTest {
  private static final double MASS_KG = CuttingConstants.TYPICAL.shakenMassKg();
  private static final Engagement FISSURE = new Engagement(1e-3, 3e-3, 50e-6);

  @Test
  void atRestOrTurningTrueTheWholeTurnCuts() {
    assertEquals(1, RunOut.cuttingShare(1, 0, 1e-3, 5e-6, MASS_KG));
    assertEquals(1, RunOut.cuttingShare(1, 30, 1e-3, 0, MASS_KG));
    assertEquals(1, RunOut.cuttingShare(1, 30, 1e-3, 5e-6, 0));
    assertEquals(0, RunOut.cuttingShare(0, 30, 1e-3, 0, MASS_KG));
  }

  @Test
  void atTheBestSpeedTheThrowIsTheLoadAndHalfTheTurnCuts() {
    for (double load : new double[] {0.3, 1, 2}) {
      double best = RunOut.bestRimSpeedMPerS(load, 1.2e-3, 5e-6, MASS_KG);
      assertEquals(0.5, RunOut.cuttingShare(load, best, 1.2e-3, 5e-6, MASS_KG), 1e-12);
      double rate = best * 0.5;
      for (double other : new double[] {0.8 * best, 1.25 * best}) {
        assertTrue(other * RunOut.cuttingShare(load, other, 1.2e-3, 5e-6, MASS_KG) < rate);
      }
    }
  }

  /** Twice the speed far above the best takes half, twice far below takes double. */
  @Test
  void theRateFallsAsOneOverSpeedAboveTheBestAndRisesInProportionBelow() {
    double best = RunOut.bestRimSpeedMPerS(1, 1.2e-3, 5e-6, MASS_KG);
    assertEquals(0.5, rate(200 * best) / rate(100 * best), 1e-3);
    assertEquals(2, rate(0.002 * best) / rate(0.001 * best), 1e-3);
  }

  private static double rate(double rimSpeed) {
    return rimSpeed * RunOut.cuttingShare(1, rimSpeed, 1.2e-3, 5e-6, MASS_KG);
  }

  /** A heavier hand and a truer head bear more speed: n* = sqrt(F/(m e))/(2 pi). */
  @Test
  void theBestSpeedRisesWithTheRootOfLoadOverRunOut() {
    double one = RunOut.bestRimSpeedMPerS(1, 1.2e-3, 5e-6, MASS_KG);
    assertEquals(2 * one, RunOut.bestRimSpeedMPerS(4, 1.2e-3, 5e-6, MASS_KG), 1e-12);
    assertEquals(one / 2, RunOut.bestRimSpeedMPerS(1, 1.2e-3, 20e-6, MASS_KG), 1e-12);
    assertEquals(161_000, one / (Math.PI * 1.2e-3) * 60, 1000);
  }

  /**
   * The finding that sets the shaken mass (DC025, calibration): a fissure bur of 1 mm with six
   * blades cut an enamel substitute best at 200 000 1/min.
   */
  @Test
  void aFissureBurCutsItsFindingBestNearTwoHundredThousand() {
    double best = 0;
    double bestRate = 0;
    for (double rpm = 50_000; rpm <= 400_000; rpm += 5000) {
      double rate = fissure(rpm).removalM3PerS();
      if (rate > bestRate) {
        bestRate = rate;
        best = rpm;
      }
    }
    assertEquals(200_000, best, 15_000);
    assertTrue(fissure(100_000).removalM3PerS() < bestRate);
    assertTrue(fissure(300_000).removalM3PerS() < bestRate);
  }

  /** The heat is not spared: power follows speed beyond the best rate. */
  @Test
  void powerGoesOnRisingWithSpeed() {
    assertEquals(3, fissure(300_000).powerW() / fissure(100_000).powerW(), 1e-9);
  }

  private static CutResult fissure(double rpm) {
    Substance mica = TestSubstances.of(3.4, 70, 1.3, 3.4, 1);
    BladedTool bur = new BladedTool(6, 3e-6, 1, 15e9, 5e-6, 2e5);
    double rim = Math.PI * 1e-3 * rpm / 60;
    return BladedCutting.cut(bur, mica, FISSURE, new OperatingPoint(1.55, rim, 40, 1));
  }
}
