package kerfwright.physics.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerfwright.quantity.Length;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Torque;
import org.junit.jupiter.api.Test;

class HandpieceLiteratureTest {
  /**
   * Brockhurst PJ, Shams R. Aust Dent J 1994;39:33-38 (abstract): 41 turbines, stall torque up to
   * 2.33 N mm, power up to 29.6 W, free speed up to 500 000 1/min. With a straight line the two
   * belong to a free speed of 485 250 1/min, inside the reported maximum; tolerance half of the
   * last digit of the power.
   */
  @Test
  void greatestTorqueAndGreatestPowerBelongToASpeedBelowTheGreatest() {
    Torque stall = Torque.ofNewtonMillimetres(2.33);
    RotationalSpeed free = RotationalSpeed.ofRpm(485_250);
    assertEquals(29.6, greatestPowerW(new TurbineDrive(free, stall)), 0.05);
    assertTrue(free.rpm() < 500_000);
  }

  /** The straight line says half of free speed; measured 49 to 79 percent (same abstract). */
  @Test
  void powerIsGreatestAtHalfTheFreeSpeedTheLowEndOfWhatWasMeasured() {
    TurbineDrive turbine = new TurbineDrive(RotationalSpeed.ofRpm(400_000), new Torque(1e-3));
    double best = 0;
    double at = 0;
    for (int i = 0; i <= 1000; i++) {
      Torque load = new Torque(1e-3 * i / 1000);
      RotationalSpeed speed = turbine.speedUnder(load, turbine.freeSpeed());
      double power = load.newtonMetres() * speed.radiansPerSecond();
      if (power > best) {
        best = power;
        at = speed.rpm() / 400_000;
      }
    }
    assertEquals(0.5, at, 1e-3);
    assertTrue(at >= 0.49 && at <= 0.79);
    assertEquals(1e-3 * turbine.freeSpeed().radiansPerSecond() / 4, best, 1e-9);
  }

  /**
   * In-process assessment of dental cutting of a leucite-reinforced glass-ceramic (abstract): free
   * 322 200 1/min fell to 288 400, by 10.5 percent. On a straight line that is 10.49 percent of the
   * stall torque.
   */
  @Test
  void aTenthOfTheStallTorqueTakesATenthOfTheSpeed() {
    TurbineDrive turbine = new TurbineDrive(RotationalSpeed.ofRpm(322_200), new Torque(1.5e-3));
    double share = (322_200 - 288_400) / 322_200.0;
    assertEquals(0.105, share, 0.0005);
    RotationalSpeed under =
        turbine.speedUnder(new Torque(share * 1.5e-3), RotationalSpeed.ofRpm(322_200));
    assertEquals(288_400, under.rpm(), 0.5);
  }

  /**
   * Electric motor with 3 N cm and 40 000 1/min through 1:5 (trade page, weak source): 200 000
   * 1/min and at most 6 N mm at the bur without losses.
   */
  @Test
  void aSpeedIncreasingContraAngleGivesAFifthOfTheTorque() {
    GearedDrive drive = GearedDrive.of(RotationalSpeed.ofRpm(40_000), new Torque(0.03), 5, 1);
    assertEquals(200_000, drive.freeSpeed().rpm(), 1e-6);
    assertEquals(6, drive.stallTorque().newtonMillimetres(), 1e-12);
  }

  /** v = pi D n, any machining handbook; worked out to three decimals. */
  @Test
  void rimSpeedsOfUsualHeads() {
    assertEquals(16.755, rim(1.6, 200_000), 5e-4);
    assertEquals(10.053, rim(1.2, 160_000), 5e-4);
    assertEquals(20.944, rim(1.0, 400_000), 5e-4);
  }

  private static double rim(double diameterMm, double rpm) {
    return RotationalSpeed.ofRpm(rpm).rimSpeed(Length.ofMillimetres(diameterMm)).metresPerSecond();
  }

  private static double greatestPowerW(TurbineDrive turbine) {
    double best = 0;
    for (int i = 0; i <= 1000; i++) {
      Torque load = new Torque(turbine.stallTorque().newtonMetres() * i / 1000);
      double speed = turbine.speedUnder(load, turbine.freeSpeed()).radiansPerSecond();
      best = Math.max(best, load.newtonMetres() * speed);
    }
    return best;
  }
}
