package kerfwright.practice.drawer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.SplittableRandom;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class TimeOrderedIdsTest {
  private static final Instant NOON = Instant.parse("2026-03-02T12:00:00.123Z");

  @Test
  void textsOfIdsGrowEvenWithinAMillisecondAndWithAStoppedClock() {
    TimeOrderedIds ids =
        new TimeOrderedIds(Clock.fixed(NOON, ZoneOffset.UTC), new SplittableRandom(1));
    String before = "";
    for (int i = 0; i < 20_000; i++) {
      String id = ids.next().toString();
      assertTrue(id.compareTo(before) > 0, before + " then " + id);
      before = id;
    }
  }

  /** RFC 9562, section 5.7: 48 bits of Unix milliseconds, version 7, variant 10. */
  @Test
  void theFieldsAreThoseOfVersionSeven() {
    UUID id = new TimeOrderedIds(Clock.fixed(NOON, ZoneOffset.UTC), new SplittableRandom(1)).next();
    assertEquals(7, id.version());
    assertEquals(2, id.variant());
    assertEquals(NOON.toEpochMilli(), id.getMostSignificantBits() >>> 16);
  }
}
