package kerfwright.physics.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Torque;
import org.junit.jupiter.api.Test;

class DriveTest {
  private static final RotationalSpeed FREE = RotationalSpeed.ofRpm(400_000);
  private static final TurbineDrive TURBINE = new TurbineDrive(FREE, new Torque(1e-3));
  private static final GearedDrive GEARED = new GearedDrive(FREE, new Torque(6e-3));

  private static double rpm(Drive drive, double torqueNM, double setRpm) {
    return drive.speedUnder(new Torque(torqueNM), RotationalSpeed.ofRpm(setRpm)).rpm();
  }

  @Test
  void aTurbineSlowsInAStraightLineToStall() {
    assertEquals(400_000, rpm(TURBINE, 0, 400_000), 1e-6);
    assertEquals(300_000, rpm(TURBINE, 0.25e-3, 400_000), 1e-6);
    assertEquals(0, rpm(TURBINE, 1e-3, 400_000));
    assertEquals(0, rpm(TURBINE, 5e-3, 400_000));
  }

  @Test
  void setSlowerATurbineStallsSooner() {
    assertEquals(200_000, rpm(TURBINE, 0, 200_000), 1e-6);
    assertEquals(100_000, rpm(TURBINE, 0.25e-3, 200_000), 1e-6);
    assertEquals(0, rpm(TURBINE, 0.5e-3, 200_000));
    assertEquals(0, rpm(TURBINE, 0, 0));
  }

  @Test
  void setFasterThanItsFreeSpeedATurbineRunsAtItsFreeSpeed() {
    assertEquals(300_000, rpm(TURBINE, 0.25e-3, 900_000), 1e-6);
  }

  @Test
  void aTurbineWithoutFreeSpeedIsRefused() {
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class,
            () -> new TurbineDrive(new RotationalSpeed(0), new Torque(1)));
    assertEquals("Free speed must be above zero and finite, got 0.0 1/s", e.getMessage());
  }

  @Test
  void aGearedDriveHoldsItsSpeedUpToTheTorqueLimit() {
    assertEquals(150_000, rpm(GEARED, 0, 150_000), 1e-6);
    assertEquals(150_000, rpm(GEARED, 5.99e-3, 150_000), 1e-6);
    assertEquals(400_000, rpm(GEARED, 1e-3, 900_000), 1e-6);
    assertEquals(0, rpm(GEARED, 6e-3, 150_000));
  }

  @Test
  void gearsTradeTorqueForSpeed() {
    GearedDrive reducing =
        GearedDrive.of(RotationalSpeed.ofRpm(40_000), new Torque(0.03), 0.25, 0.8);
    assertEquals(10_000, reducing.freeSpeed().rpm(), 1e-9);
    assertEquals(0.03 * 0.8 / 0.25, reducing.stallTorque().newtonMetres(), 1e-15);
  }

  @Test
  void moreTorqueNeverSpeedsAnythingUp() {
    Random random = new Random(31);
    for (int i = 0; i < 5000; i++) {
      Drive drive = random.nextBoolean() ? TURBINE : GEARED;
      double set = 500_000 * random.nextDouble();
      double torque = 8e-3 * random.nextDouble();
      double here = rpm(drive, torque, set);
      assertEquals(true, rpm(drive, torque * 1.1, set) <= here);
      assertEquals(true, here >= 0 && here <= Math.min(set, 400_000) + 1e-6);
    }
  }
}
