package kerfwright.practice.people;

import java.time.Instant;
import java.util.UUID;
import kerfwright.quantity.Identified;

/**
 * What a program shows instead of a sign-in.
 *
 * @param id fixed
 * @param name what it is for
 * @param scope the one thing it opens
 * @param hash SHA-256 of the token
 * @param madeBy initials of who made it
 * @param made when
 * @param ends when it ends
 */
public record ProgramToken(
    UUID id, String name, Scope scope, String hash, String madeBy, Instant made, Instant ends) {

  /** What a token opens; nothing else. */
  public enum Scope implements Identified {
    /** Plans computed from a case. */
    PLAN,
    /** The list of what is to be ordered. */
    ORDER;
  }
}
