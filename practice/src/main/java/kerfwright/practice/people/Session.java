package kerfwright.practice.people;

import java.time.Duration;
import java.time.Instant;
import java.util.UUID;

/**
 * A device somebody is signed in on.
 *
 * @param hash SHA-256 of the token the device holds; the token itself is kept nowhere
 * @param account who
 * @param begun when somebody last gave a password on this device
 * @param used when it was last used, to the minute
 * @param confirmed when this person last gave the password here
 * @param locked true until digits or a password are given
 * @param wrongPins wrong digits since
 */
public record Session(
    String hash,
    UUID account,
    Instant begun,
    Instant used,
    Instant confirmed,
    boolean locked,
    int wrongPins) {
  /** Without a touch for so long, the screen is locked. */
  public static final Duration IDLE = Duration.ofMinutes(15);

  /** After so long the password is asked for again, whatever happened. */
  public static final Duration LONGEST = Duration.ofHours(12);

  /** For so long after the password was given, what only the owner may do goes on. */
  public static final Duration FRESH = Duration.ofMinutes(10);

  /** So many wrong digits end it. */
  public static final int MOST_WRONG_PINS = 5;

  public boolean over(Instant now) {
    return now.isAfter(begun.plus(LONGEST)) || now.isBefore(begun.minus(IDLE));
  }

  public boolean lockedAt(Instant now) {
    return locked || now.isAfter(used.plus(IDLE));
  }

  public boolean freshAt(Instant now) {
    return now.isBefore(confirmed.plus(FRESH));
  }
}
