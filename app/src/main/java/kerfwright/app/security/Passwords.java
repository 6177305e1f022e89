package kerfwright.app.security;

import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import kerfwright.app.storage.people.Accounts;
import kerfwright.practice.people.Account;

/** Finds out whether a password is somebody's. */
final class Passwords {
  private final Accounts accounts;
  private final Clock clock;

  Passwords(Accounts accounts, Clock clock) {
    this.accounts = accounts;
    this.clock = clock;
  }

  /** Where wrong tries are counted: for that person at that address. */
  static String place(String initials, String address) {
    return Secrets.hash(initials + " " + address);
  }

  Optional<Account> whose(String initials, String password) {
    Optional<Account> named =
        accounts.named(initials).filter(Account::active).filter(this::handedCodeHolds);
    // a code is read off a screen: its letters may be typed small
    boolean handed = named.map(Account::mustChoose).orElse(false);
    String given = handed ? password.strip().toUpperCase(Locale.ROOT) : password;
    boolean right = PasswordHash.holds(named.map(Account::password).orElse(""), given);
    return right ? named : Optional.empty();
  }

  /** False once a code that somebody else handed over has ended. */
  boolean handedCodeHolds(Account account) {
    return account.codeUntil() == null || clock.instant().isBefore(account.codeUntil());
  }
}
