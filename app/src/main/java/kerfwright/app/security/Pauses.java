package kerfwright.app.security;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import kerfwright.app.storage.people.Sessions;

/**
 * Pauses after wrong tries, each at one place alone: who at which address, or at which device.
 * Nobody is slowed by what somebody else tries elsewhere.
 */
final class Pauses {
  private static final int FREE_TRIES = 3;
  private static final Duration LONGEST = Duration.ofMinutes(1);
  private static final Duration FORGOTTEN = Duration.ofMinutes(15);

  private final Sessions sessions;

  Pauses(Sessions sessions) {
    this.sessions = sessions;
  }

  /** Counts the try before it is looked at; tells the seconds to wait where it is not. */
  long count(String place, Instant now) {
    Sessions.Wait before =
        sessions.change(
            place,
            wait -> {
              if (now.isBefore(wait.until())) {
                return wait;
              }
              int failures = now.isAfter(wait.until().plus(FORGOTTEN)) ? 1 : wait.failures() + 1;
              long seconds = failures < FREE_TRIES ? 0 : 1L << Math.min(failures - FREE_TRIES, 10);
              return new Sessions.Wait(
                  failures, now.plus(Math.min(seconds, LONGEST.toSeconds()), ChronoUnit.SECONDS));
            });
    return now.isBefore(before.until()) ? Duration.between(now, before.until()).toSeconds() + 1 : 0;
  }

  /** What was tried there was right. */
  void none(String place) {
    sessions.change(place, before -> Sessions.Wait.NONE);
  }
}
