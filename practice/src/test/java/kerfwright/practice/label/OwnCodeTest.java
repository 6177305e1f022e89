package kerfwright.practice.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class OwnCodeTest {
  @Test
  void everyCodeIsReadBack() {
    SplittableRandom chance = new SplittableRandom(3);
    for (OwnCode.Kind kind : OwnCode.Kind.values()) {
      for (int i = 0; i < 500; i++) {
        OwnCode code = new OwnCode(kind, new UUID(chance.nextLong(), chance.nextLong()));
        assertTrue(code.text().matches("KFW[APTL][0-9A-HJ-NP-X]{26}"), code.text());
        assertEquals(Optional.of(code), OwnCode.read(code.text()));
        assertEquals(Optional.of(code), OwnCode.read("]d1" + code.text().toLowerCase(Locale.ROOT)));
      }
    }
  }

  @Test
  void theEndsOfTheRangeAreReadBack() {
    for (UUID id :
        new UUID[] {new UUID(0, 0), new UUID(-1, -1), new UUID(0, -1), new UUID(-1, 0)}) {
      OwnCode code = new OwnCode(OwnCode.Kind.LOAD, id);
      assertEquals(Optional.of(code), OwnCode.read(code.text()));
    }
  }

  @Test
  void whatIsNoCodeIsNotRead() {
    String good = new OwnCode(OwnCode.Kind.TRAY, new UUID(7, 9)).text();
    for (String bad :
        new String[] {
          "",
          "D1",
          good.substring(1),
          good + "0",
          good.replace('T', 'Q'),
          "KFWA" + "X".repeat(26),
          good.substring(0, 29) + "Z"
        }) {
      assertFalse(OwnCode.read(bad).isPresent(), bad);
    }
  }

  @Test
  void noSignChangesItsPlaceBetweenTheUsualKeyboards() {
    for (OwnCode.Kind kind : OwnCode.Kind.values()) {
      assertTrue(new OwnCode(kind, new UUID(-1, 1)).text().matches("[0-9A-X]+"));
    }
  }
}
