package kerfwright.physics.shaft;

import static kerfwright.physics.TestSubstances.logUniform;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class OverhungShaftTest {
  private static OverhungShaft of(double ls, double ds, double ln, double dn, double mass) {
    return new OverhungShaft(ls, ds, ln, dn, mass, 200e9, 7850);
  }

  private static OverhungShaft any(Random random) {
    return of(
        20e-3 * random.nextDouble(),
        logUniform(random, 0.8e-3, 2.4e-3),
        0.1e-3 + 10e-3 * random.nextDouble(),
        logUniform(random, 0.4e-3, 2.4e-3),
        logUniform(random, 1e-7, 1e-3));
  }

  @Test
  void aPlainBarBendsByTheHandbook() {
    double d = 1.6e-3;
    double stiffness = 3 * 200e9 * Math.PI * Math.pow(d, 4) / 64 / Math.pow(12e-3, 3);
    assertEquals(stiffness, of(12e-3, d, 0, 1e-3, 0).tipStiffnessNPerM(), 1e-9 * stiffness);
    assertEquals(stiffness, of(0, 1e-3, 12e-3, d, 0).tipStiffnessNPerM(), 1e-9 * stiffness);
    assertEquals(stiffness, of(5e-3, d, 7e-3, d, 0).tipStiffnessNPerM(), 1e-9 * stiffness);
  }

  /** Deflection of a stepped cantilever by summing M(x)/(E I) (L - x) over fine slices. */
  @Test
  void aSteppedBarBendsByTheUnitLoadIntegral() {
    OverhungShaft shaft = of(8e-3, 1.6e-3, 4e-3, 0.8e-3, 1e-5);
    double sum = 0;
    int slices = 60_000;
    for (int i = 0; i < slices; i++) {
      double x = (i + 0.5) * 12e-3 / slices;
      double d = x < 8e-3 ? 1.6e-3 : 0.8e-3;
      double arm = 12e-3 - x;
      sum += arm * arm * 64 / (Math.PI * Math.pow(d, 4) * 200e9) * 12e-3 / slices;
    }
    assertEquals(1 / sum, shaft.tipStiffnessNPerM(), 1e-6 / sum);
  }

  @Test
  void aHeavyHeadOnAThinNeckIsASpringWithAMass() {
    OverhungShaft shaft = of(8e-3, 1.6e-3, 4e-3, 0.8e-3, 1);
    double simple = Math.sqrt(shaft.tipStiffnessNPerM() / 1) / (2 * Math.PI);
    assertEquals(simple, shaft.firstWhirlPerS(), 1e-3 * simple);
  }

  /**
   * Below because Dunkerley's sum is a lower bound; above 1/sqrt(3) of it because each of the three
   * terms alone (shank, neck, head) is at most the exact 1/w^2, apart from the 1.5 percent of a
   * bar.
   */
  @Test
  void aSteppedShaftWhirlsBelowItsExactSpeedByNoMoreThanTheThreeTermsAllow() {
    Random random = new Random(41);
    for (int i = 0; i < 300; i++) {
      OverhungShaft shaft = any(random);
      double ratio = shaft.firstWhirlPerS() / CantileverExact.steppedPerS(shaft);
      assertTrue(ratio < 1, shaft + " lies above the exact value: " + ratio);
      assertTrue(ratio > 0.98 / Math.sqrt(3), shaft + " lies far below: " + ratio);
    }
  }

  /** Necks no thicker than the shank and heads of steel or carbide, as instruments have them. */
  @Test
  void forInstrumentsTheBoundGivesAwayAtMostATenth() {
    Random random = new Random(44);
    double worst = 1;
    for (int i = 0; i < 300; i++) {
      double head = logUniform(random, 0.6e-3, 3e-3);
      double length = logUniform(random, 1e-3, 10e-3);
      double density = random.nextBoolean() ? 7850 : 14_900;
      OverhungShaft shaft =
          of(
              12e-3 * random.nextDouble(),
              1.6e-3,
              0.5e-3 + 7e-3 * random.nextDouble(),
              Math.max(0.45e-3, Math.min(0.75 * head + 0.05e-3, 1.44e-3)),
              density * Math.PI / 4 * head * head * length * 0.7);
      worst = Math.min(worst, shaft.firstWhirlPerS() / CantileverExact.steppedPerS(shaft));
    }
    assertTrue(worst > 0.9, "worst ratio " + worst);
  }

  @Test
  void longerShaftsAndHeavierHeadsWhirlSoonerAndBendMore() {
    Random random = new Random(42);
    for (int i = 0; i < 2000; i++) {
      OverhungShaft s = any(random);
      double whirl = s.firstWhirlPerS();
      double stiff = s.tipStiffnessNPerM();
      assertTrue(Double.isFinite(whirl) && whirl > 0 && Double.isFinite(stiff) && stiff > 0);
      OverhungShaft longer =
          of(
              s.shankLengthM() + 1e-3,
              s.shankDiameterM(),
              s.neckLengthM(),
              s.neckDiameterM(),
              s.headMassKg());
      assertTrue(longer.firstWhirlPerS() < whirl && longer.tipStiffnessNPerM() < stiff);
      OverhungShaft longNeck =
          of(
              s.shankLengthM(),
              s.shankDiameterM(),
              s.neckLengthM() + 1e-3,
              s.neckDiameterM(),
              s.headMassKg());
      assertTrue(longNeck.firstWhirlPerS() < whirl && longNeck.tipStiffnessNPerM() < stiff);
      OverhungShaft heavy =
          of(
              s.shankLengthM(),
              s.shankDiameterM(),
              s.neckLengthM(),
              s.neckDiameterM(),
              2 * s.headMassKg());
      assertTrue(heavy.firstWhirlPerS() < whirl);
    }
  }

  @Test
  void thickerShanksWhirlLaterAndThickerNecksBendLess() {
    Random random = new Random(43);
    for (int i = 0; i < 2000; i++) {
      OverhungShaft s = any(random);
      OverhungShaft thick =
          of(
              s.shankLengthM(),
              1.1 * s.shankDiameterM(),
              s.neckLengthM(),
              s.neckDiameterM(),
              s.headMassKg());
      assertTrue(thick.firstWhirlPerS() >= s.firstWhirlPerS());
      OverhungShaft neck =
          of(
              s.shankLengthM(),
              s.shankDiameterM(),
              s.neckLengthM(),
              1.1 * s.neckDiameterM(),
              s.headMassKg());
      assertTrue(neck.tipStiffnessNPerM() > s.tipStiffnessNPerM());
    }
  }

  @Test
  void impossibleShaftsAreRefused() {
    String length = "needs a length above zero";
    String diameters = "needs diameters above zero and a mass of zero or more";
    String stuff = "needs stiffness and density above zero";
    refused(length, -1e-3, 1e-3, 5e-3, 1e-3, 0, 1, 1);
    refused(length, 5e-3, 1e-3, -1e-3, 1e-3, 0, 1, 1);
    refused(length, 0, 1e-3, 0, 1e-3, 0, 1, 1);
    refused(diameters, 5e-3, 0, 1e-3, 1e-3, 0, 1, 1);
    refused(diameters, 5e-3, 1e-3, 1e-3, 0, 0, 1, 1);
    refused(diameters, 5e-3, 1e-3, 1e-3, 1e-3, -1, 1, 1);
    refused(stuff, 5e-3, 1e-3, 1e-3, 1e-3, 0, 0, 1);
    refused(stuff, 5e-3, 1e-3, 1e-3, 1e-3, 0, 1, 0);
  }

  private static void refused(String why, double... v) {
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class,
            () -> new OverhungShaft(v[0], v[1], v[2], v[3], v[4], v[5], v[6]));
    assertTrue(e.getMessage().contains(why), e.getMessage());
  }
}
