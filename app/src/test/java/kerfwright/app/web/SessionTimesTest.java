package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import kerfwright.practice.people.Session;
import org.junit.jupiter.api.Test;

/** When a session is locked, when it is over, how long the password counts as given just now. */
class SessionTimesTest {
  private static final Instant EIGHT = Instant.parse("2026-03-02T08:00:00Z");

  private static Session begun() {
    return Session.begun("h", UUID.randomUUID(), "d", EIGHT);
  }

  private static Instant after(Duration time) {
    return EIGHT.plus(time);
  }

  @Test
  void isLockedAfterAQuarterOfAnHourWithoutUse() {
    assertFalse(begun().lockedAt(after(Duration.ofMinutes(15))));
    assertTrue(begun().lockedAt(after(Duration.ofMinutes(16))));
  }

  @Test
  void isOverAfterTwelveHoursHoweverItWasUsed() {
    Session used =
        Session.begun("h", UUID.randomUUID(), "d", EIGHT).usedAt(after(Duration.ofHours(12)));
    assertFalse(used.over(after(Duration.ofHours(12))));
    assertTrue(used.over(after(Duration.ofHours(12).plusSeconds(1))));
  }

  /** A clock set back does not make a session last longer. */
  @Test
  void isOverWhereTheClockWentBack() {
    assertTrue(begun().over(EIGHT.minus(Duration.ofHours(1))));
  }

  @Test
  void thePasswordCountsAsGivenForTenMinutes() {
    assertTrue(begun().freshAt(after(Duration.ofMinutes(9))));
    assertFalse(begun().freshAt(after(Duration.ofMinutes(10))));
    assertEquals(Duration.ofMinutes(10), Session.FRESH);
  }
}
