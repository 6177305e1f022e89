package kerfwright.app.storage.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import kerfwright.app.storage.Database;
import kerfwright.practice.people.Session;
import kerfwright.practice.people.Sessions;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** Sessions and pauses in a database: every process on it knows them. */
public final class StoredSessions implements Sessions {
  private final Jdbi jdbi;

  public StoredSessions(Database database) {
    this.jdbi = database.jdbi();
  }

  @Override
  public Optional<Session> find(String hash) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT * FROM passing_session WHERE hash = :hash")
                .bind("hash", hash)
                .map((row, context) -> session(row))
                .findOne());
  }

  @Override
  public void begin(Session session) {
    jdbi.useHandle(handle -> insert(handle, session));
  }

  private static void insert(Handle handle, Session session) {
    handle
        .createUpdate(
            "INSERT INTO passing_session (hash, account, device, begun_micros, used_micros,"
                + " confirmed_micros, locked, by_tap, wrong_pins) VALUES (:hash, :account,"
                + " :device, :begun, :used, :confirmed, :locked, :tap, :pins)")
        .bind("hash", session.hash())
        .bind("account", session.account().toString())
        .bind("device", session.device())
        .bind("tap", session.byTap() ? 1 : 0)
        .bind("begun", StoredAccounts.micros(session.begun()))
        .bind("used", StoredAccounts.micros(session.used()))
        .bind("confirmed", StoredAccounts.micros(session.confirmed()))
        .bind("locked", session.locked() ? 1 : 0)
        .bind("pins", session.wrongPins())
        .execute();
  }

  @Override
  public boolean replace(String hash, Session next) {
    return jdbi.inTransaction(
        handle -> {
          boolean there = delete(handle, hash) == 1;
          if (there) {
            insert(handle, next);
          }
          return there;
        });
  }

  @Override
  public void end(String hash) {
    jdbi.useHandle(handle -> delete(handle, hash));
  }

  private static int delete(Handle handle, String hash) {
    return handle
        .createUpdate("DELETE FROM passing_session WHERE hash = :hash")
        .bind("hash", hash)
        .execute();
  }

  @Override
  public void leave(String device, UUID account, Instant tapUntil) {
    jdbi.useHandle(
        handle ->
            handle
                .createUpdate(
                    "INSERT INTO passing_seat (device, account, tap_until_micros) VALUES (:device,"
                        + " :account, :until) ON CONFLICT (device, account) DO UPDATE SET"
                        + " tap_until_micros = :until")
                .bind("device", device)
                .bind("account", account.toString())
                .bind("until", StoredAccounts.micros(tapUntil))
                .execute());
  }

  @Override
  public void prove(String device, UUID account, Instant at) {
    jdbi.useHandle(
        handle ->
            handle
                .createUpdate(
                    "INSERT INTO passing_seat (device, account, tap_until_micros, proven_micros)"
                        + " VALUES (:device, :account, 0, :at) ON CONFLICT (device, account) DO"
                        + " UPDATE SET proven_micros = :at")
                .bind("device", device)
                .bind("account", account.toString())
                .bind("at", StoredAccounts.micros(at))
                .execute());
  }

  @Override
  public Map<UUID, Seat> seats(String device) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT * FROM passing_seat WHERE device = :device")
                .bind("device", device)
                .reduceRows(
                    new HashMap<>(),
                    (seats, row) -> {
                      seats.put(
                          UUID.fromString(row.getColumn("account", String.class)),
                          new Seat(
                              StoredAccounts.instant(row.getColumn("tap_until_micros", Long.class)),
                              StoredAccounts.instant(row.getColumn("proven_micros", Long.class))));
                      return seats;
                    }));
  }

  @Override
  public void half(String hash, UUID account, Instant until) {
    jdbi.useHandle(
        handle ->
            handle
                .createUpdate(
                    "INSERT INTO passing_half (hash, account, until_micros)"
                        + " VALUES (:hash, :account, :until)")
                .bind("hash", hash)
                .bind("account", account.toString())
                .bind("until", StoredAccounts.micros(until))
                .execute());
  }

  @Override
  public Optional<UUID> half(String hash, Instant now) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(
                    "SELECT account FROM passing_half WHERE hash = :hash AND until_micros > :now")
                .bind("hash", hash)
                .bind("now", StoredAccounts.micros(now))
                .map((row, context) -> UUID.fromString(row.getString("account")))
                .findOne());
  }

  @Override
  public void endHalf(String hash) {
    jdbi.useHandle(
        handle ->
            handle
                .createUpdate("DELETE FROM passing_half WHERE hash = :hash")
                .bind("hash", hash)
                .execute());
  }

  @Override
  public void noTaps(String device) {
    jdbi.useHandle(
        handle ->
            handle
                .createUpdate("UPDATE passing_seat SET tap_until_micros = 0 WHERE device = :device")
                .bind("device", device)
                .execute());
  }

  @Override
  public void endAll(UUID account, String save) {
    jdbi.useTransaction(
        handle -> {
          handle
              .createUpdate("DELETE FROM passing_half WHERE account = :account")
              .bind("account", account.toString())
              .execute();
          handle
              .createUpdate("DELETE FROM passing_seat WHERE account = :account")
              .bind("account", account.toString())
              .execute();
          handle
              .createUpdate(
                  "DELETE FROM passing_session WHERE account = :account AND hash <> :save")
              .bind("account", account.toString())
              .bind("save", save)
              .execute();
        });
  }

  @Override
  public void tidy(Instant before) {
    jdbi.useHandle(
        handle -> {
          Long micros = StoredAccounts.micros(before);
          handle
              .createUpdate("DELETE FROM passing_session WHERE begun_micros < :before")
              .bind("before", micros)
              .execute();
          handle.execute(
              "DELETE FROM passing_seat WHERE device NOT IN (SELECT device FROM passing_session)");
          handle
              .createUpdate("DELETE FROM passing_half WHERE until_micros < :before")
              .bind("before", micros)
              .execute();
          handle
              .createUpdate("DELETE FROM passing_wait WHERE until_micros < :before")
              .bind("before", micros)
              .execute();
        });
  }

  @Override
  public int countPin(String hash) {
    return jdbi.inTransaction(
        handle -> {
          handle
              .createUpdate(
                  "UPDATE passing_session SET wrong_pins = wrong_pins + 1 WHERE hash = :hash")
              .bind("hash", hash)
              .execute();
          return handle
              .createQuery("SELECT wrong_pins FROM passing_session WHERE hash = :hash")
              .bind("hash", hash)
              .mapTo(Integer.class)
              .findOne()
              .orElse(Integer.MAX_VALUE);
        });
  }

  @Override
  public Wait change(String place, UnaryOperator<Wait> change) {
    return jdbi.inTransaction(
        handle -> {
          // takes the row, so that others wait for it
          handle
              .createUpdate(
                  "INSERT INTO passing_wait (place, failures, until_micros) VALUES (:place, 0, 0)"
                      + " ON CONFLICT (place) DO UPDATE SET failures = passing_wait.failures")
              .bind("place", place)
              .execute();
          Wait before =
              handle
                  .createQuery("SELECT * FROM passing_wait WHERE place = :place")
                  .bind("place", place)
                  .map(
                      (row, context) ->
                          new Wait(
                              row.getInt("failures"),
                              StoredAccounts.instant(row.getLong("until_micros"))))
                  .one();
          Wait after = change.apply(before);
          handle
              .createUpdate(
                  "UPDATE passing_wait SET failures = :failures, until_micros = :until"
                      + " WHERE place = :place")
              .bind("place", place)
              .bind("failures", after.failures())
              .bind("until", StoredAccounts.micros(after.until()))
              .execute();
          return before;
        });
  }

  private static Session session(ResultSet row) throws SQLException {
    return new Session(
        row.getString("hash"),
        UUID.fromString(row.getString("account")),
        row.getString("device"),
        StoredAccounts.instant(row.getLong("begun_micros")),
        StoredAccounts.instant(row.getLong("used_micros")),
        StoredAccounts.instant(row.getLong("confirmed_micros")),
        row.getInt("locked") == 1,
        row.getInt("by_tap") == 1,
        row.getInt("wrong_pins"));
  }
}
