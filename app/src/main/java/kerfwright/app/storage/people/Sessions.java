package kerfwright.app.storage.people;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;
import kerfwright.practice.people.Session;

/**
 * Keeps sessions, and how long somebody must wait after wrong passwords: every process on the
 * database knows them.
 */
public final class Sessions {
  private final Sql sql;

  public Sessions(Database database) {
    this.sql = database.sql();
  }

  public Optional<Session> find(String hash) {
    return sql.one(Session.class, "SELECT * FROM passing_session WHERE hash = ?", hash);
  }

  public void begin(Session session) {
    sql.add(
        new Row("passing_session")
            .with("hash", session.hash())
            .with("account", session.account())
            .with("device", session.device())
            .with("begun_micros", session.begun())
            .with("used_micros", session.used())
            .with("confirmed_micros", session.confirmed())
            .with("locked", session.locked())
            .with("by_tap", session.byTap())
            .with("wrong_pins", session.wrongPins()));
  }

  /** Puts it in place of the one with that hash; false where that one is gone. */
  public boolean replace(String hash, Session next) {
    return sql.inTransaction(
        () -> {
          boolean there = end(hash);
          if (there) {
            begin(next);
          }
          return there;
        });
  }

  /** False where it was gone before. */
  public boolean end(String hash) {
    return sql.change("DELETE FROM passing_session WHERE hash = ?", hash) == 1;
  }

  /** Notes who was at a device, and until when a tap brings them back. */
  public void leave(String device, UUID account, Instant tapUntil) {
    seat(device, account, tapUntil, Instant.EPOCH, "tap_until_micros");
  }

  /** Notes that somebody gave all that is asked of them at a device. */
  public void prove(String device, UUID account, Instant at) {
    seat(device, account, Instant.EPOCH, at, "proven_micros");
  }

  private void seat(String device, UUID account, Instant tapUntil, Instant proven, String set) {
    sql.addOrSet(
        new Row("passing_seat")
            .with("device", device)
            .with("account", account)
            .with("tap_until_micros", tapUntil)
            .with("proven_micros", proven),
        "device, account",
        set);
  }

  /** Who was at that device. */
  public Map<UUID, Seat> seats(String device) {
    return sql.map(
        row -> Row.id(row, "account"),
        row -> new Seat(Row.time(row, "tap_until_micros"), Row.time(row, "proven_micros")),
        "SELECT * FROM passing_seat WHERE device = ?",
        device);
  }

  /**
   * Somebody who was at a device.
   *
   * @param tapUntil until when a tap brings them back
   * @param proven when they last gave all that is asked of them there
   */
  public record Seat(Instant tapUntil, Instant proven) {
    public static final Seat NEVER = new Seat(Instant.EPOCH, Instant.EPOCH);
  }

  /** Notes that somebody's password was right, and that a code is still to come. */
  public void half(String hash, UUID account, Instant until) {
    sql.add(
        new Row("passing_half")
            .with("hash", hash)
            .with("account", account)
            .with("until_micros", until));
  }

  /** Whose password was right, not before that time. */
  public Optional<UUID> half(String hash, Instant now) {
    return sql.one(
        UUID.class,
        "SELECT account FROM passing_half WHERE hash = ? AND until_micros > ?",
        hash,
        now);
  }

  public void endHalf(String hash) {
    sql.change("DELETE FROM passing_half WHERE hash = ?", hash);
  }

  /** Nobody comes back to that device by a tap; who was there stays known. */
  public void noTaps(String device) {
    sql.change("UPDATE passing_seat SET tap_until_micros = 0 WHERE device = ?", device);
  }

  /** Ends all of somebody, save one; no tap brings them back anywhere. */
  public void endAll(UUID account, String save) {
    sql.useTransaction(
        () -> {
          sql.change("DELETE FROM passing_half WHERE account = ?", account);
          sql.change("DELETE FROM passing_seat WHERE account = ?", account);
          sql.change("DELETE FROM passing_session WHERE account = ? AND hash <> ?", account, save);
        });
  }

  /** Forgets what began before, and waits that are long over. */
  public void tidy(Instant before) {
    sql.change("DELETE FROM passing_session WHERE begun_micros < ?", before);
    sql.change("DELETE FROM passing_seat WHERE device NOT IN (SELECT device FROM passing_session)");
    sql.change("DELETE FROM passing_half WHERE until_micros < ?", before);
    sql.change("DELETE FROM passing_wait WHERE until_micros < ?", before);
  }

  /** Counts one more try at digits there, and tells how many they are. */
  public int countPin(String hash) {
    return sql.inTransaction(
        () -> {
          sql.change("UPDATE passing_session SET wrong_pins = wrong_pins + 1 WHERE hash = ?", hash);
          return sql.one(
                  Integer.class, "SELECT wrong_pins FROM passing_session WHERE hash = ?", hash)
              .orElse(Integer.MAX_VALUE);
        });
  }

  /**
   * Changes the pause at a place, one process after the other, and tells what it was before; so
   * that tries at once count as so many.
   */
  public Wait change(String place, UnaryOperator<Wait> change) {
    return sql.inTransaction(
        () -> {
          // takes the row, so that others wait for it
          sql.change(
              "INSERT INTO passing_wait (place, failures, until_micros) VALUES (?, 0, 0)"
                  + " ON CONFLICT (place) DO UPDATE SET failures = passing_wait.failures",
              place);
          Wait before =
              sql.one(Wait.class, "SELECT * FROM passing_wait WHERE place = ?", place)
                  .orElseThrow();
          Wait after = change.apply(before);
          sql.change(
              "UPDATE passing_wait SET failures = ?, until_micros = ? WHERE place = ?",
              after.failures(),
              after.until(),
              place);
          return before;
        });
  }

  /**
   * A pause after wrong passwords.
   *
   * @param failures in a row
   * @param until no password is looked at before
   */
  public record Wait(int failures, Instant until) {
    public static final Wait NONE = new Wait(0, Instant.EPOCH);
  }
}
