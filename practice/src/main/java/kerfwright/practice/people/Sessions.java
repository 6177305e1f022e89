package kerfwright.practice.people;

import java.time.Instant;
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

  /** Ends all of somebody, save one. */
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
