package kerfwright.app.storage.people;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;

/**
 * Keeps what an app makes somebody's codes from, and the codes that stand in for an app that is
 * lost. One process after the other: a code is taken once.
 */
public final class Authenticators {
  /**
   * What somebody's app makes codes from.
   *
   * @param secret shared with the app, Base32 (RFC 4648)
   * @param on false until a first code was given
   */
  public record Authenticator(String secret, boolean on) {}

  private final Sql sql;

  public Authenticators(Database database) {
    this.sql = database.sql();
  }

  public Optional<Authenticator> find(UUID account) {
    return sql.one(
        row -> new Authenticator(row.getString("secret"), row.getBoolean("switched_on")),
        "SELECT * FROM person_authenticator WHERE account = ?",
        account);
  }

  /** Whoever is asked for a code. */
  public Set<UUID> on() {
    return Set.copyOf(
        sql.list(UUID.class, "SELECT account FROM person_authenticator WHERE switched_on = 1"));
  }

  /** A new secret, not on yet; where one is on it stays, and false comes back. */
  public boolean begin(UUID account, String secret) {
    return sql.change(
            "INSERT INTO person_authenticator (account, secret, switched_on, last_step)"
                + " VALUES (?, ?, 0, 0) ON CONFLICT (account) DO UPDATE"
                + " SET secret = excluded.secret WHERE person_authenticator.switched_on = 0",
            account,
            secret)
        == 1;
  }

  /**
   * Switches that secret on, with the step of the first code and hashes of what stands in for a
   * code; false where it is on already, or another one began meanwhile.
   */
  public boolean switchOn(UUID account, String secret, long step, List<String> standIns) {
    return sql.inTransaction(
        () -> {
          boolean done =
              sql.change(
                      "UPDATE person_authenticator SET switched_on = 1, last_step = ?"
                          + " WHERE account = ? AND secret = ? AND switched_on = 0",
                      step,
                      account,
                      secret)
                  == 1;
          if (done) {
            for (String one : standIns) {
              sql.add(new Row("person_recovery").with("account", account).with("hash", one));
            }
          }
          return done;
        });
  }

  /** Takes the code of a step; false where that one, or a later one, was taken before. */
  public boolean take(UUID account, long step) {
    return sql.change(
            "UPDATE person_authenticator SET last_step = ?"
                + " WHERE account = ? AND switched_on = 1 AND last_step < ?",
            step,
            account,
            step)
        == 1;
  }

  /** Hashes of what stands in for a code and was not used. */
  public List<String> standIns(UUID account) {
    return sql.list(String.class, "SELECT hash FROM person_recovery WHERE account = ?", account);
  }

  /** Uses one up; false where somebody was quicker. */
  public boolean use(UUID account, String standIn) {
    String used = "DELETE FROM person_recovery WHERE account = ? AND hash = ?";
    return sql.change(used, account, standIn) == 1;
  }

  /** No code is asked for any more. */
  public void end(UUID account) {
    sql.useTransaction(
        () -> {
          sql.change("DELETE FROM person_recovery WHERE account = ?", account);
          sql.change("DELETE FROM person_authenticator WHERE account = ?", account);
        });
  }
}
