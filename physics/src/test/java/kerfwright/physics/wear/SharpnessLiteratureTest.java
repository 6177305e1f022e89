package kerfwright.physics.wear;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * These rows set the constants, so they are calibration: that they are recovered proves no more.
 */
class SharpnessLiteratureTest {
  /**
   * Gonzaga CC et al. Indian J Dent Res 2019;30:915-919: 33.38 s new, 39.55 s after five cycles.
   */
  @Test
  void fiveSterilisationsOfADiamondAreRecovered() {
    assertEquals(33.38 / 39.55, Sharpness.ofDiamondAfterCycles(5), 1e-12);
  }

  /**
   * Fais LMG et al. J Appl Oral Sci 2009;17:584-589: 0.2077 g against 0.2642 g of the control in
   * twelve periods, sterilised after each, so the first period was cut with none behind it and the
   * last with eleven.
   */
  @Test
  void twelveSterilisedPeriodsOfACarbideAreRecovered() {
    double sum = 0;
    for (int cycles = 0; cycles < 12; cycles++) {
      sum += Sharpness.ofCarbideAfterCycles(cycles);
    }
    assertEquals(0.2077 / 0.2642, sum / 12, 0.002);
  }
}
