package kerfwright.app.storage;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** Stands still until it is moved on, but for a millisecond at each look. */
final class HandClock extends Clock {
  private Instant now = Instant.parse("2026-03-02T08:00:00Z");

  @Override
  public synchronized Instant instant() {
    now = now.plusMillis(1);
    return now;
  }

  synchronized void pass(Duration time) {
    now = now.plus(time);
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return this;
  }
}
