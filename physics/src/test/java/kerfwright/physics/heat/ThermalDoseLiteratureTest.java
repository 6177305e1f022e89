package kerfwright.physics.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Halving above 43 degC and quartering below: Sapareto SA, Dewey WC. 1984;10:787-800. */
class ThermalDoseLiteratureTest {
  @ParameterizedTest
  @CsvSource({
    "42.4, 10, 4.3528",
    "42.5, 1, 0.5",
    "43, 1, 1",
    "45, 1, 4",
    "47, 0.5, 8",
    "47, 1, 16",
    "48.1, 1, 34.2968",
    "50, 1, 128"
  })
  void constantTemperatureGivesTheTabulatedDose(double temperature, double minutes, double dose) {
    double[] times = {0, 20 * minutes, 60 * minutes};
    double[] values = {temperature, temperature, temperature};
    assertEquals(dose, ThermalDose.cem43Min(times, values), 5e-5);
  }

  @Test
  void aRampThroughFortyThreeAddsBothBranches() {
    // Integral over one minute from 42 to 44: (1 - 1/4)/ln 4 / 2 + (2 - 1)/ln 2 / 2.
    double expected = 0.5 * (0.75 / Math.log(4) + 1 / Math.log(2));
    double[] times = {0, 60};
    assertEquals(expected, ThermalDose.cem43Min(times, new double[] {42, 44}), 1e-12);
    assertEquals(expected, ThermalDose.cem43Min(times, new double[] {44, 42}), 1e-12);
  }

  @Test
  void secondsAboveALimitAreCutAtTheCrossing() {
    double[] times = {0, 10, 20, 30, 40};
    double[] values = {37, 47, 47, 37, 30};
    assertEquals(
        10,
        ThermalDose.secondsAbove(new double[] {0, 10, 20}, new double[] {42, 42, 43}, 42),
        1e-12);
    assertEquals(
        10,
        ThermalDose.secondsAbove(new double[] {0, 10, 20}, new double[] {43, 42, 41}, 42),
        1e-12);
    assertEquals(5 + 10 + 5, ThermalDose.secondsAbove(times, values, 42), 1e-12);
    assertEquals(0, ThermalDose.secondsAbove(times, values, 47), 1e-12);
    assertEquals(0, ThermalDose.secondsAbove(times, values, 50), 1e-12);
    assertEquals(47, ThermalDose.peakC(values));
  }
}
