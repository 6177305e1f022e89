package kerfwright.practice.people;

import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import java.util.UUID;

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
  public enum Scope {
    /** Plans computed from a case. */
    PLAN("plan"),
    /** The list of what is to be ordered. */
    ORDER("order");

    private final String id;

    Scope(String id) {
      this.id = id;
    }

    public String id() {
      return id;
    }

    public static Optional<Scope> byId(String id) {
      return Arrays.stream(values()).filter(one -> one.id.equals(id)).findFirst();
    }
  }
}
