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
import kerfwright.app.storage.Row;
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
    new Row("passing_session")
        .with("hash", session.hash())
        .with("account", session.account())
        .with("device", session.device())
        .with("begun_micros", session.begun())
        .with("used_micros", session.used())
        .with("confirmed_micros", session.confirmed())
        .with("locked", session.locked())
        .with("by_tap", session.byTap())
        .with("wrong_pins", session.wrongPins())
        .add(handle);
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
    seat(device, account, tapUntil, Instant.EPOCH, "tap_until_micros");
  }

  @Override
  public void prove(String device, UUID account, Instant at) {
    seat(device, account, Instant.EPOCH, at, "proven_micros");
  }

  private void seat(String device, UUID account, Instant tapUntil, Instant proven, String set) {
    Row seat =
        new Row("passing_seat")
            .with("device", device)
            .with("account", account)
            .with("tap_until_micros", tapUntil)
            .with("proven_micros", proven);
    jdbi.useHandle(handle -> seat.addOrSet(handle, "device, account", set));
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
                              Row.instant(row.getColumn("tap_until_micros", Long.class)),
                              Row.instant(row.getColumn("proven_micros", Long.class))));
                      return seats;
                    }));
  }

  @Override
  public void half(String hash, UUID account, Instant until) {
    jdbi.useHandle(
        new Row("passing_half")
                .with("hash", hash)
                .with("account", account)
                .with("until_micros", until)
            ::add);
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
                              row.getInt("failures"), Row.instant(row.getLong("until_micros"))))
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
        Row.instant(row.getLong("begun_micros")),
        Row.instant(row.getLong("used_micros")),
        Row.instant(row.getLong("confirmed_micros")),
        row.getInt("locked") == 1,
        row.getInt("by_tap") == 1,
        row.getInt("wrong_pins"));
  }
}
