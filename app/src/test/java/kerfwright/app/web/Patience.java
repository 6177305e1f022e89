package kerfwright.app.web;

import java.time.Duration;
import java.util.function.Predicate;

/** Waits for what takes as long as the machine is busy; only what never comes is a failure. */
final class Patience {
  /** Long enough for the busiest machine. */
  static final Duration LONGEST = Duration.ofSeconds(Integer.getInteger("patience.s", 180));

  private static final long PAUSE_MS = 50;

  private Patience() {}

  interface Look<T> {
    T at() throws Exception;
  }

  /** Looks again and again until it is enough, and gives what was seen last. */
  static <T> T until(Look<T> look, Predicate<T> enough) throws Exception {
    long end = System.nanoTime() + LONGEST.toNanos();
    T seen = look.at();
    while (!enough.test(seen)) {
      if (System.nanoTime() > end) {
        throw new AssertionError("Not within " + LONGEST.toSeconds() + " s; last: " + seen);
      }
      Thread.sleep(PAUSE_MS);
      seen = look.at();
    }
    return seen;
  }
}
