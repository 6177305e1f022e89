package kerfwright.practice.people;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Keeps the accounts. */
public interface Accounts {
  /** All, by initials, those who left too. */
  List<Account> all();

  Optional<Account> find(UUID id);

  /** Who has these initials. */
  Optional<Account> named(String initials);

  /** False where somebody has these initials already. */
  boolean add(Account account);

  /** Adds an owner, and false where there is anybody: two who try at once are not both let in. */
  boolean addFirst(Account account);

  /**
   * Puts the next version in place; false where somebody changed it meanwhile, or where nobody with
   * the role of owner would be left.
   */
  boolean change(Account next);
}
