package kerfwright.app.security;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import java.util.Optional;
import kerfwright.practice.people.Account;
import kerfwright.practice.people.Session;

/**
 * Who calls: found by the gate, never told by the call itself.
 *
 * @param account who
 * @param session on which device
 */
public record Signed(Account account, Session session) {
  private static final String ATTRIBUTE = "signed";

  /** Empty where nobody signs in: the invented practice, and one without people. */
  public static Optional<Signed> in(Context call) {
    return Optional.ofNullable(call.attribute(ATTRIBUTE));
  }

  /** Who calls a page that nobody has who is not signed in. */
  public static Signed needed(Context call) {
    return in(call).orElseThrow(() -> new ForbiddenResponse("role"));
  }

  /** Initials of who is signed in, empty where nobody is. */
  public static Optional<String> initials(Context call) {
    return in(call).map(one -> one.account().initials());
  }

  /** Whether who calls may do such things; everybody may where nobody signs in. */
  public static boolean may(Context call, Access access) {
    return in(call).map(one -> access.allows(one.account().role())).orElse(true);
  }

  void remember(Context call) {
    call.attribute(ATTRIBUTE, this);
  }
}
