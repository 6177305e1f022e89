package kerfwright.physics.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class WettedContactTest {
  private static final WettedContact CONTACT = new WettedContact(8e6, 0.1);
  private static final double AREA = 1.5e-6;

  private static double wetted(double powerW, double flow) {
    return CONTACT.wettedShare(powerW, AREA, flow, 25);
  }

  @Test
  void withoutWaterItIsDryAndWithLittlePowerWet() {
    assertEquals(0, wetted(1, 0));
    assertEquals(1, wetted(0.5, 50), 1e-3);
    assertEquals(1, WettedContact.heatShare(0));
    assertEquals(WettedContact.WET_HEAT_SHARE, WettedContact.heatShare(1), 1e-12);
  }

  @Test
  void bothLimitsMustHold() {
    // far below the flow limit: half wetted at the flux limit, and four fifths to one fifth over
    // a factor of two round it
    double limit = 8e6 * AREA;
    assertEquals(0.5, CONTACT.wettedShare(limit, AREA, 5000, 25), 1e-3);
    assertEquals(0.8, CONTACT.wettedShare(limit / Math.sqrt(2), AREA, 5000, 25), 1e-3);
    assertEquals(0.2, CONTACT.wettedShare(limit * Math.sqrt(2), AREA, 5000, 25), 1e-3);
    // far below the flux limit: 15 mL/min of 25 degC, a tenth reaching the cut, carries 7.8 W
    assertEquals(0.5, CONTACT.wettedShare(7.84, 1e-3, 15, 25), 2e-3);
  }

  @Test
  void morePowerDriesAndMoreOrColderWaterWets() {
    double last = 1;
    for (double power = 1; power < 40; power *= 1.3) {
      double now = wetted(power, 15);
      assertTrue(now < last);
      last = now;
    }
    assertTrue(wetted(10, 30) > wetted(10, 15));
    assertTrue(CONTACT.wettedShare(10, AREA, 15, 10) > CONTACT.wettedShare(10, AREA, 15, 35));
  }
}
