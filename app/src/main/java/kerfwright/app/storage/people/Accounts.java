package kerfwright.app.storage.people;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;
import kerfwright.practice.people.Account;
import kerfwright.practice.people.Role;

/** Keeps the accounts. */
public final class Accounts {
  private final Sql sql;

  public Accounts(Database database) {
    this.sql = database.sql();
  }

  /** All, by initials, those who left too. */
  public List<Account> all() {
    return sql.list(Account.class, "SELECT * FROM person_account ORDER BY initials");
  }

  public Optional<Account> find(UUID id) {
    return sql.one(Account.class, "SELECT * FROM person_account WHERE id = ?", id);
  }

  /** Who has these initials. */
  public Optional<Account> named(String initials) {
    return sql.one(Account.class, "SELECT * FROM person_account WHERE initials = ?", initials);
  }

  /** False where somebody has these initials already. */
  public boolean add(Account account) {
    return sql.addOnce(row(account));
  }

  /** Adds an owner, and false where there is anybody: two who try at once are not both let in. */
  public boolean addFirst(Account account) {
    return sql.inTransaction(
        () -> {
          inLine();
          return all().isEmpty() && add(account);
        });
  }

  private static Row row(Account account) {
    return new Row("person_account")
        .with("id", account.id())
        .with("version", account.version())
        .with("initials", account.initials())
        .with("role", account.role())
        .with("active", account.active())
        .with("password", account.password())
        .with("pin", account.pin())
        .with("code_until_micros", account.codeUntil());
  }

  /**
   * Puts the next version in place; false where somebody changed it meanwhile, or where nobody with
   * the role of owner would be left.
   */
  public boolean change(Account next) {
    return sql.inTransaction(
        () -> {
          inLine();
          boolean ownerLeft =
              owns(next)
                  || all().stream().anyMatch(one -> owns(one) && !one.id().equals(next.id()));
          return ownerLeft && sql.next(row(next));
        });
  }

  private static boolean owns(Account account) {
    return account.role() == Role.OWNER && account.active();
  }

  /** One after the other, between processes too. */
  private void inLine() {
    sql.change("UPDATE practice_setting_version SET version = version");
  }
}
