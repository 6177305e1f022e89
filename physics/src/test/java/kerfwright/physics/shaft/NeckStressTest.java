package kerfwright.physics.shaft;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Any machine-design handbook; worked out independently, half of the last digit. */
class NeckStressTest {
  @Test
  void aThinNeckUnderOneNewton() {
    assertEquals(159.15e6, NeckStress.bendingPa(1.0, 8e-3, 0.8e-3), 0.005e6);
    assertEquals(19.89e6, NeckStress.shearPa(2e-3, 0.8e-3), 0.005e6);
    assertEquals(162.84e6, NeckStress.equivalentPa(1.0, 8e-3, 2e-3, 0.8e-3), 0.005e6);
  }

  @Test
  void aThickerNeckUnderTwo() {
    assertEquals(203.72e6, NeckStress.bendingPa(2, 10e-3, 1e-3), 0.005e6);
  }

  @Test
  void bendingOrTorqueAloneIsTheirOwnEquivalent() {
    assertEquals(
        NeckStress.bendingPa(1, 5e-3, 1e-3), NeckStress.equivalentPa(1, 5e-3, 0, 1e-3), 1e-3);
    assertEquals(
        Math.sqrt(3) * NeckStress.shearPa(1e-3, 1e-3),
        NeckStress.equivalentPa(0, 5e-3, 1e-3, 1e-3),
        1e-3);
  }
}
