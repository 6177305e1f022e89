package kerfwright.app.storage.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.practice.people.Account;
import kerfwright.practice.people.Accounts;
import kerfwright.practice.people.Role;
import kerfwright.quantity.Identified;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jspecify.annotations.Nullable;

/** The accounts in a database. */
public final class StoredAccounts implements Accounts {
  private static final String SELECT = "SELECT * FROM person_account ";

  private final Jdbi jdbi;

  public StoredAccounts(Database database) {
    this.jdbi = database.jdbi();
  }

  @Override
  public List<Account> all() {
    return jdbi.withHandle(StoredAccounts::all);
  }

  private static List<Account> all(Handle handle) {
    return handle
        .createQuery(SELECT + "ORDER BY initials")
        .map((row, context) -> account(row))
        .list();
  }

  @Override
  public Optional<Account> find(UUID id) {
    return one("id", id.toString());
  }

  @Override
  public Optional<Account> named(String initials) {
    return one("initials", initials);
  }

  private Optional<Account> one(String column, String value) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(SELECT + "WHERE " + column + " = :value")
                .bind("value", value)
                .map((row, context) -> account(row))
                .findOne());
  }

  @Override
  public boolean add(Account account) {
    return jdbi.inTransaction(handle -> insert(handle, account));
  }

  @Override
  public boolean addFirst(Account account) {
    return jdbi.inTransaction(
        handle -> {
          inLine(handle);
          return all(handle).isEmpty() && insert(handle, account);
        });
  }

  private static boolean insert(Handle handle, Account account) {
    return new Row("person_account")
        .with("id", account.id())
        .with("version", account.version())
        .with("initials", account.initials())
        .with("role", account.role().id())
        .with("active", account.active())
        .with("password", account.password())
        .with("pin", account.pin())
        .with("code_until_micros", account.codeUntil())
        .addOnce(handle);
  }

  @Override
  public boolean change(Account next) {
    return jdbi.inTransaction(
        handle -> {
          inLine(handle);
          boolean ownerLeft =
              next.role() == Role.OWNER && next.active()
                  || all(handle).stream()
                      .anyMatch(
                          one ->
                              one.role() == Role.OWNER
                                  && one.active()
                                  && !one.id().equals(next.id()));
          return ownerLeft
              && handle
                      .createUpdate(
                          "UPDATE person_account SET version = :version, role = :role, active ="
                              + " :active, password = :password, pin = :pin, code_until_micros ="
                              + " :until WHERE id = :id AND version = :before")
                      .bind("version", next.version())
                      .bind("role", next.role().id())
                      .bind("active", next.active() ? 1 : 0)
                      .bind("password", next.password())
                      .bind("pin", next.pin())
                      .bind("until", micros(next.codeUntil()))
                      .bind("id", next.id().toString())
                      .bind("before", next.version() - 1)
                      .execute()
                  == 1;
        });
  }

  /** One after the other, between processes too. */
  private static void inLine(Handle handle) {
    handle.execute("UPDATE practice_setting_version SET version = version");
  }

  static @Nullable Long micros(@Nullable Instant at) {
    return at == null ? null : Row.micros(at);
  }

  private static Account account(ResultSet row) throws SQLException {
    long until = row.getLong("code_until_micros");
    Instant codeUntil = row.wasNull() ? null : Row.instant(until);
    return new Account(
        UUID.fromString(row.getString("id")),
        row.getInt("version"),
        row.getString("initials"),
        Identified.of(Role.class, row.getString("role")).orElse(Role.READ_ONLY),
        row.getInt("active") == 1,
        row.getString("password"),
        row.getString("pin"),
        codeUntil);
  }
}
