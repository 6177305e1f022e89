package kerfwright.practice.people;

import java.time.Duration;
import java.time.Instant;
import java.util.UUID;

/**
 * A device somebody is signed in on.
 *
 * @param hash SHA-256 of the token the device holds; the token itself is kept nowhere
 * @param account who
 * @param device the device, from one password to the next, whoever goes on at it
 * @param begun when somebody last gave a password on this device
 * @param used when it was last used, to the minute
 * @param confirmed when this person last gave the password here
 * @param locked true until digits or a password are given
 * @param byTap true where this person came back by a tap, without digits
 * @param wrongPins wrong digits since
 */
public record Session(
    String hash,
    UUID account,
    String device,
    Instant begun,
    Instant used,
    Instant confirmed,
    boolean locked,
    boolean byTap,
    int wrongPins) {
  /** Without a touch for so long, the screen is locked. */
  public static final Duration IDLE = Duration.ofMinutes(15);

  /** After so long the password is asked for again, whatever happened. */
  public static final Duration LONGEST = Duration.ofHours(12);

  /** For so long after the password was given, what only the owner may do goes on. */
  public static final Duration FRESH = Duration.ofMinutes(10);

  /** So many wrong digits end it. */
  public static final int MOST_WRONG_PINS = 5;

  /** Begun by a password, on a device known by that name. */
  public static Session begun(String hash, UUID account, String device, Instant now) {
    return new Session(hash, account, device, now, now, now, false, false, 0);
  }

  /** Used again. */
  public Session usedAt(Instant now) {
    return new Session(hash, account, device, begun, now, confirmed, false, byTap, wrongPins);
  }

  /** The password was given once more, under another token; it lasts no longer for that. */
  public Session confirmedAt(String newHash, Instant now) {
    return new Session(newHash, account, device, begun, now, now, false, false, 0);
  }

  /** Closed until digits or a password are given. */
  public Session asLocked() {
    return new Session(hash, account, device, begun, used, Instant.EPOCH, true, byTap, wrongPins);
  }

  /** Somebody goes on at the same device, under another token. */
  public Session goneOnBy(UUID next, String newHash, Instant now, boolean tapped) {
    return new Session(newHash, next, device, begun, now, Instant.EPOCH, false, tapped, 0);
  }

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
