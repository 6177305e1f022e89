package kerfwright.planner.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class BandsTest {
  private static String time(double low, double typical, double high) {
    return new TimeBand(new Estimate(low, typical, high)).words().key();
  }

  @Test
  void wordsOfATimeAreAsWideAsItsBand() {
    assertEquals("figure.time-seconds", time(3, 8, 25));
    assertEquals("figure.time-under-a-minute", time(8, 20, 50));
    assertEquals("figure.time-some-minutes", time(70, 150, 500));
    assertEquals("figure.time-seconds-to-minutes", time(20, 60, 400));
    assertEquals("figure.time-minutes-or-more", time(90, 300, 4000));
    assertEquals("figure.time-seconds-to-long", time(10, 60, 4000));
  }

  @Test
  void thePulpStandsBelowMayPassOrPassesAndTheTypicalValueDecides() {
    assertEquals(PulpBand.BELOW, PulpBand.of(new Estimate(0, 2, 5.4), 5.5));
    assertEquals(PulpBand.MAY_PASS, PulpBand.of(new Estimate(0, 2, 5.5), 5.5));
    assertEquals(PulpBand.PASSES, PulpBand.of(new Estimate(0, 5.5, 9), 5.5));
  }

  @Test
  void aRatioTurnsRoundAndSaysWhenItIsOpen() {
    RatioBand three = RatioBand.of(3, 0.3);
    assertFalse(three.open());
    assertEquals(1 / three.high(), three.inverse().low(), 1e-12);
    assertEquals("figure.ratio-long", three.asLong().key());
    assertEquals("figure.ratio-fast", three.inverse().asFast().key());
    assertEquals("[3, 2, 5]", three.asLong().values().toString());
    RatioBand alike = RatioBand.of(1.1, 0.5);
    assertTrue(alike.open());
    assertEquals("figure.ratio-alike-long", alike.asLong().key());
    // twice as long at typical values, but the band leaves it open
    assertEquals("figure.ratio-alike-long", RatioBand.of(2, 0.5).asLong().key());
    assertEquals("figure.ratio-long", RatioBand.of(2, 0.3).asLong().key());
    assertThrows(IllegalArgumentException.class, () -> new RatioBand(2, 1, 3));
  }
}
