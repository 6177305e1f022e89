package kerfwright.app.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;

/** Tells the time of the demo practice's past days, moved on by hand. */
public final class DemoClock extends Clock {
  private final ZoneId zone;
  private Instant now;

  private DemoClock(Instant now, ZoneId zone) {
    this.now = now;
    this.zone = zone;
  }

  /** Three days before now. */
  public static DemoClock threeDaysBefore(Clock real) {
    return new DemoClock(real.instant().minus(Duration.ofDays(3)), real.getZone());
  }

  void at(Instant later) {
    now = later;
  }

  void pass(long minutes) {
    now = now.plus(Duration.ofMinutes(minutes));
  }

  @Override
  public Instant instant() {
    return now;
  }

  @Override
  public ZoneId getZone() {
    return zone;
  }

  @Override
  public Clock withZone(ZoneId other) {
    return new DemoClock(now, other);
  }
}
