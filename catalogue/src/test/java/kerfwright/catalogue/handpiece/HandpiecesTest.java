package kerfwright.catalogue.handpiece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Torque;
import org.junit.jupiter.api.Test;

class HandpiecesTest {
  @Test
  void theIdsAndShanksAreThoseOfTheCaseFile() {
    assertEquals(
        List.of("turbine", "electric-1to5", "electric-1to1", "electric-reducing", "straight"),
        Handpieces.ids());
    assertEquals(
        List.of(ShankType.FG, ShankType.FG, ShankType.RA, ShankType.RA, ShankType.HP),
        Handpieces.all().stream().map(Handpiece::shank).toList());
  }

  /**
   * P = M0 w0 / 4 stands at half the free speed of a straight line; the closed form gives it back.
   */
  @Test
  void theGreatestPowerOfTheTurbineIsTheOneItsTorqueWasDerivedFrom() {
    Handpiece turbine = Handpieces.byId("turbine").orElseThrow();
    RotationalSpeed free = turbine.drive().freeSpeed();
    double greatest = 0;
    for (int i = 0; i <= 1000; i++) {
      Torque load = new Torque(turbine.drive().stallTorque().newtonMetres() * i / 1000);
      double power =
          load.newtonMetres() * turbine.drive().speedUnder(load, free).radiansPerSecond();
      greatest = Math.max(greatest, power);
    }
    assertEquals(18, greatest, 1e-9);
    assertEquals(1.7189, turbine.drive().stallTorque().newtonMillimetres(), 1e-4);
  }

  /** Brockhurst and Shams 1994: at most 500 000 per min, 2.33 N mm, 29.6 W among 41 turbines. */
  @Test
  void theTurbineStaysBelowEveryGreatestFigureMeasured() {
    Handpiece turbine = Handpieces.byId("turbine").orElseThrow();
    assertTrue(turbine.drive().freeSpeed().rpm() < 500_000);
    assertTrue(turbine.drive().stallTorque().newtonMillimetres() < 2.33);
  }

  /** A practice page: 200 000 per min with 1:5; ideal gearing gives 6 N mm, less with losses. */
  @Test
  void theSpeedIncreasingContraAngleTurnsFiveTimesAsFastWithAFifthOfTheTorqueLessLosses() {
    Handpiece geared = Handpieces.byId("ELECTRIC-1TO5").orElseThrow();
    assertEquals(200_000, geared.drive().freeSpeed().rpm(), 1e-6);
    assertEquals(6 * 0.85, geared.drive().stallTorque().newtonMillimetres(), 1e-9);
  }
}
