package kerfwright.practice.drawer;

import java.time.Clock;
import java.util.UUID;
import java.util.random.RandomGenerator;

/**
 * Ids that sort by the time they were made: UUID version 7 of RFC 9562 (48 bits of milliseconds,
 * then 12 bits counting within the millisecond, then chance). Never two equal from one maker, and
 * always growing, even when the clock is set back: what sorts by id stands in the order it was
 * made.
 */
public final class TimeOrderedIds {
  private static final int PER_MILLISECOND = 1 << 12;

  private final Clock clock;
  private final RandomGenerator chance;
  private long millis = -1;
  private int count;

  public TimeOrderedIds(Clock clock, RandomGenerator chance) {
    this.clock = clock;
    this.chance = chance;
  }

  /** From now on no id is made that sorts before this one; an id of another kind says nothing. */
  public synchronized void after(UUID known) {
    long then = known.getMostSignificantBits() >>> 16;
    if (known.version() == 7 && then >= millis) {
      millis = then;
      count = PER_MILLISECOND - 1;
    }
  }

  public synchronized UUID next() {
    long now = clock.millis();
    if (now > millis) {
      millis = now;
      count = 0;
    } else if (++count == PER_MILLISECOND) {
      millis++;
      count = 0;
    }
    long high = millis << 16 | 0x7000L | count;
    long low = chance.nextLong() & 0x3FFF_FFFF_FFFF_FFFFL | 0x8000_0000_0000_0000L;
    return new UUID(high, low);
  }
}
