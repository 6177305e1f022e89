package kerfwright.practice.people;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** Keeps sessions, and how long somebody must wait after wrong passwords. */
public interface Sessions {
  Optional<Session> find(String hash);

  void begin(Session session);

  /** Puts it in place of the one with that hash; false where that one is gone. */
  boolean replace(String hash, Session next);

  void end(String hash);

  /** Notes who was at a device, and until when a tap brings them back. */
  void leave(String device, UUID account, Instant tapUntil);

  /** Notes that somebody gave all that is asked of them at a device. */
  void prove(String device, UUID account, Instant at);

  /** Who was at that device. */
  Map<UUID, Seat> seats(String device);

  /**
   * Somebody who was at a device.
   *
   * @param tapUntil until when a tap brings them back
   * @param proven when they last gave all that is asked of them there
   */
  record Seat(Instant tapUntil, Instant proven) {
    public static final Seat NEVER = new Seat(Instant.EPOCH, Instant.EPOCH);
  }

  /** Notes that somebody's password was right, and that a code is still to come. */
  void half(String hash, UUID account, Instant until);

  /** Whose password was right, not before that time. */
  Optional<UUID> half(String hash, Instant now);

  void endHalf(String hash);

  /** Nobody comes back to that device by a tap; who was there stays known. */
  void noTaps(String device);

  /** Ends all of somebody, save one; no tap brings them back anywhere. */
  void endAll(UUID account, String save);

  /** Forgets what began before, and waits that are long over. */
  void tidy(Instant before);

  /** Counts one more try at digits there, and tells how many they are. */
  int countPin(String hash);

  /**
   * Changes the pause at a place, one process after the other, and tells what it was before; so
   * that tries at once count as so many.
   */
  Wait change(String place, UnaryOperator<Wait> change);

  /**
   * A pause after wrong passwords.
   *
   * @param failures in a row
   * @param until no password is looked at before
   */
  record Wait(int failures, Instant until) {
    public static final Wait NONE = new Wait(0, Instant.EPOCH);
  }
}
