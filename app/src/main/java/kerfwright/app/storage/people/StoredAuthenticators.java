package kerfwright.app.storage.people;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.practice.people.Authenticators;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** What apps make codes from, in a database. */
public final class StoredAuthenticators implements Authenticators {
  private final Jdbi jdbi;

  public StoredAuthenticators(Database database) {
    this.jdbi = database.jdbi();
  }

  @Override
  public Optional<Authenticator> find(UUID account) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT * FROM person_authenticator WHERE account = :account")
                .bind("account", account.toString())
                .map(
                    (row, context) ->
                        new Authenticator(row.getString("secret"), row.getInt("switched_on") == 1))
                .findOne());
  }

  @Override
  public Set<UUID> on() {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT account FROM person_authenticator WHERE switched_on = 1")
                .map((row, context) -> UUID.fromString(row.getString("account")))
                .set());
  }

  @Override
  public boolean begin(UUID account, String secret) {
    return jdbi.withHandle(
        handle ->
            handle
                    .createUpdate(
                        "INSERT INTO person_authenticator (account, secret, switched_on, last_step)"
                            + " VALUES (:account, :secret, 0, 0) ON CONFLICT (account) DO UPDATE"
                            + " SET secret = :secret WHERE person_authenticator.switched_on = 0")
                    .bind("account", account.toString())
                    .bind("secret", secret)
                    .execute()
                == 1);
  }

  @Override
  public boolean switchOn(UUID account, String secret, long step, List<String> standIns) {
    return jdbi.inTransaction(
        handle -> {
          boolean done =
              handle
                      .createUpdate(
                          "UPDATE person_authenticator SET switched_on = 1, last_step = :step"
                              + " WHERE account = :account AND secret = :secret"
                              + " AND switched_on = 0")
                      .bind("account", account.toString())
                      .bind("secret", secret)
                      .bind("step", step)
                      .execute()
                  == 1;
          if (done) {
            for (String one : standIns) {
              handle
                  .createUpdate(
                      "INSERT INTO person_recovery (account, hash) VALUES (:account, :hash)")
                  .bind("account", account.toString())
                  .bind("hash", one)
                  .execute();
            }
          }
          return done;
        });
  }

  @Override
  public boolean take(UUID account, long step) {
    return jdbi.withHandle(
        handle ->
            handle
                    .createUpdate(
                        "UPDATE person_authenticator SET last_step = :step WHERE account ="
                            + " :account AND switched_on = 1 AND last_step < :step")
                    .bind("account", account.toString())
                    .bind("step", step)
                    .execute()
                == 1);
  }

  @Override
  public List<String> standIns(UUID account) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT hash FROM person_recovery WHERE account = :account")
                .bind("account", account.toString())
                .mapTo(String.class)
                .list());
  }

  @Override
  public boolean use(UUID account, String standIn) {
    return jdbi.withHandle(
        handle ->
            handle
                    .createUpdate(
                        "DELETE FROM person_recovery WHERE account = :account AND hash = :hash")
                    .bind("account", account.toString())
                    .bind("hash", standIn)
                    .execute()
                == 1);
  }

  @Override
  public void end(UUID account) {
    jdbi.useTransaction(
        handle -> {
          delete(handle, "person_recovery", account);
          delete(handle, "person_authenticator", account);
        });
  }

  private static void delete(Handle handle, String table, UUID account) {
    handle
        .createUpdate("DELETE FROM " + table + " WHERE account = :account")
        .bind("account", account.toString())
        .execute();
  }
}
