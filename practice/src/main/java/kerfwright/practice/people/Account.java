package kerfwright.practice.people;

import java.time.Instant;
import java.util.UUID;
import kerfwright.practice.setting.Person;
import org.jspecify.annotations.Nullable;

/**
 * Somebody who signs in.
 *
 * @param id fixed
 * @param version counts the changes
 * @param initials what they are called everywhere; nobody else has them
 * @param role what they may do
 * @param active false once they have left; they stay, because the record names them
 * @param password its hash
 * @param pin hash of the digits that switch people on a device, empty where there are none
 * @param codeUntil while the password is a code handed over by somebody else: when it ends
 */
public record Account(
    UUID id,
    int version,
    String initials,
    Role role,
    boolean active,
    String password,
    String pin,
    @Nullable Instant codeUntil) {
  public Account {
    if (!Person.initialsAreSound(initials)) {
      throw new IllegalArgumentException("Not initials: '" + initials + "'");
    }
  }

  /** True while they have not chosen a password of their own. */
  public boolean mustChoose() {
    return codeUntil != null;
  }

  /** With a password of their own and digits, or without. */
  public Account with(String newPassword, String newPin) {
    return new Account(id, version + 1, initials, role, active, newPassword, newPin, null);
  }

  /** With a code in place of the password. */
  public Account withCode(String hash, Instant until) {
    return new Account(id, version + 1, initials, role, active, hash, "", until);
  }

  /** With another role, or gone. */
  public Account as(Role newRole, boolean nowActive) {
    return new Account(id, version + 1, initials, newRole, nowActive, password, pin, codeUntil);
  }
}
