package kerfwright.physics.shaft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WhirlLiteratureTest {
  /**
   * Thomson WT. Theory of Vibration with Applications, app. D.3: 3.5160, 22.0345, 61.6972; and Math
   * Probl Eng 2017, article 1568019, table 1 for a tip mass equal to the bar's.
   */
  @Test
  void theExactSolutionOfTheTestsGivesThePrintedEigenvalues() {
    assertEquals(3.5160, CantileverExact.uniformSquare(0, 1), 5e-5);
    assertEquals(22.0345, CantileverExact.uniformSquare(0, 2), 5e-5);
    assertEquals(61.6972, CantileverExact.uniformSquare(0, 3), 5e-5);
    assertEquals(1.557298, CantileverExact.uniformSquare(1, 1), 5e-7);
    assertEquals(16.25009, CantileverExact.uniformSquare(1, 2), 5e-6);
    assertEquals(50.89584, CantileverExact.uniformSquare(1, 3), 5e-6);
  }

  /** Tip mass over bar mass mu against exact b^2, worked out from the characteristic equation. */
  @ParameterizedTest
  @CsvSource({"0, 3.51602", "0.1, 2.96784", "0.5, 2.01630", "1, 1.55730", "10, 0.541375"})
  void theLowerBoundLiesWithinTwoPercentBelowTheExactValue(double mu, double exact) {
    assertEquals(exact, CantileverExact.uniformSquare(mu, 1), 5e-6);
    double ours = square(mu);
    assertTrue(ours < exact, ours + " is not below " + exact);
    assertTrue(ours > 0.98 * exact, ours + " is more than 2 % below " + exact);
  }

  /** Dunkerley's sum for a uniform bar in closed form: 1/b^4 = 1/12 + mu/3. */
  @ParameterizedTest
  @CsvSource({"0", "0.1", "0.5", "1", "10"})
  void theBoundIsDunkerleysSum(double mu) {
    double closed = 1 / Math.sqrt(1.0 / 12 + mu / 3);
    assertEquals(closed, square(mu), 2e-4 * closed, "midpoint rule over 60 slices");
  }

  /**
   * Plain shanks of 1.6 mm, worked out: steel (200 GPa, 7850) 10 mm 677 900 1/min, 15 mm 301 300,
   * 20 mm 169 500; cemented carbide (600 GPa, 14 900) 15 mm 378 800.
   */
  @ParameterizedTest
  @CsvSource({
    "10, 200, 7850, 677900",
    "15, 200, 7850, 301300",
    "20, 200, 7850, 169500",
    "15, 600, 14900, 378800"
  })
  void plainShanksWhirlJustBelowTheExactSpeed(
      double lengthMm, double youngGPa, double density, double exactRpm) {
    OverhungShaft shaft =
        new OverhungShaft(lengthMm * 1e-3, 1.6e-3, 0, 1e-3, 0, youngGPa * 1e9, density);
    double rpm = 60 * shaft.firstWhirlPerS();
    assertTrue(rpm < exactRpm && rpm > 0.98 * exactRpm, rpm + " against " + exactRpm);
  }

  /** Nondimensional b^2 of our shaft: a uniform bar cut into shank and neck of equal diameter. */
  private static double square(double mu) {
    double d = 1.6e-3;
    double length = 15e-3;
    double barMass = 7850 * Math.PI / 4 * d * d * length;
    OverhungShaft shaft = new OverhungShaft(6e-3, d, 9e-3, d, mu * barMass, 200e9, 7850);
    double second = Math.PI * Math.pow(d, 4) / 64;
    return 2
        * Math.PI
        * shaft.firstWhirlPerS()
        / Math.sqrt(200e9 * second / (barMass * Math.pow(length, 3)));
  }
}
