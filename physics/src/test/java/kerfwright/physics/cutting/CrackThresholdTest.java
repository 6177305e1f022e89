package kerfwright.physics.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerfwright.physics.TestSubstances;
import kerfwright.physics.material.Substance;
import org.junit.jupiter.api.Test;

class CrackThresholdTest {
  private static final Substance ROUND = TestSubstances.of(1, 10, 1, 1, 1);

  @Test
  void theThresholdIsToughnessToTheFourthOverHardnessCubed() {
    // 1e5 * (1e6)^4 / (1e9)^3
    assertEquals(100, CrackThreshold.loadN(ROUND), 1e-9);
    assertEquals(20, CrackThreshold.loadN(ROUND, 2e4), 1e-9);
    assertEquals(16 * 100, CrackThreshold.loadN(TestSubstances.of(1, 10, 2, 1, 1)), 1e-6);
    assertEquals(100 / 8.0, CrackThreshold.loadN(TestSubstances.of(2, 10, 1, 2, 1)), 1e-9);
    assertEquals(100, CrackThreshold.loadN(TestSubstances.of(1, 99, 1, 1, 1)), 1e-9);
  }

  /** What a grain breaks is as short as its scratch is deep: long cracks do not count. */
  @Test
  void theToughnessOfShortCracksCounts() {
    Substance rising = TestSubstances.withShortCracks(ROUND, 0.5);
    assertEquals(100 / 16.0, CrackThreshold.loadN(rising), 1e-9);
    assertEquals(
        Math.sqrt(2) * CrackThreshold.crackVolumePerLengthM2(ROUND, 1),
        CrackThreshold.crackVolumePerLengthM2(rising, 1),
        1e-15);
  }

  @Test
  void crackVolumeFollowsThePowersOfEvansAndMarshall() {
    double one = CrackThreshold.crackVolumePerLengthM2(ROUND, 1);
    // 1 * (1e6)^-0.5 * (1e9)^-0.625 * 10^0.8
    assertEquals(Math.pow(10, -3 - 5.625 + 0.8), one, 1e-12 * one);
    assertEquals(
        Math.pow(2, 9.0 / 8) * one, CrackThreshold.crackVolumePerLengthM2(ROUND, 2), 1e-9 * one);
    assertEquals(0, CrackThreshold.crackVolumePerLengthM2(ROUND, 0));
  }

  /**
   * Order published for cracking under load: porcelain before enamel before zirconia before metal.
   */
  @Test
  void porcelainCracksAtLessLoadThanEnamelZirconiaDentineAndMetal() {
    double porcelain = CrackThreshold.loadN(TestSubstances.PORCELAIN);
    double enamel = CrackThreshold.loadN(TestSubstances.ENAMEL);
    double zirconia = CrackThreshold.loadN(TestSubstances.ZIRCONIA);
    double dentine = CrackThreshold.loadN(TestSubstances.DENTINE);
    double metal = CrackThreshold.loadN(TestSubstances.COBALT_CHROMIUM);
    assertTrue(porcelain < enamel && enamel < zirconia && zirconia < dentine && dentine < metal);
  }
}
