package kerfwright.app.security;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.Set;
import kerfwright.app.storage.people.Trail;

/**
 * Writes into the trail, before the call is answered: what cannot be written down is not done. Of
 * what was sent only the case and ids are kept.
 */
public final class Footprint {
  /** What pages ask for by themselves, again and again. */
  private static final String ASKED_AGAIN = ".*/(board|progress|move|preview|panel)";

  private static final Set<Access> OF_CASES = Set.of(Access.CASES, Access.OWN, Access.ORDER_API);
  private static final int LONGEST = 120;

  private final Trail trail;
  private final Clock clock;

  public Footprint(Trail trail, Clock clock) {
    this.trail = trail;
    this.clock = clock;
  }

  /** Somebody is about to see or do something that is theirs to do. */
  void allowed(Context call, Access access, String who) {
    act(call, access).ifPresent(act -> add(who, act, what(call)));
  }

  private static Optional<Trail.Act> act(Context call, Access access) {
    boolean sees = call.method() == HandlerType.GET || call.method() == HandlerType.HEAD;
    String path = call.path();
    if (path.matches(".*\\.(csv|pdf|json|svg)|/backup/export")) {
      return Optional.of(Trail.Act.EXPORTED);
    }
    if (!sees) {
      return Optional.of(Trail.Act.CHANGED);
    }
    boolean plan = path.equals("/plan") || path.equals("/chairside");
    boolean ofCase = OF_CASES.contains(access) || plan && call.queryParam("case") != null;
    return ofCase && !path.matches(ASKED_AGAIN) ? Optional.of(Trail.Act.SAW) : Optional.empty();
  }

  void refused(Context call, String who) {
    add(who, Trail.Act.REFUSED, what(call));
  }

  /** Somebody signed in, or could not. */
  public void signIn(boolean let, String initials, String address) {
    String who = initials.matches("[\\p{Lu}\\p{N}]{1,4}") ? initials : "?";
    add(who, let ? Trail.Act.SIGNED_IN : Trail.Act.SIGN_IN_REFUSED, address);
  }

  /** The password was right and the code was not. */
  public void codeRefused(String initials, String address) {
    add(initials, Trail.Act.SIGN_IN_REFUSED, address + " code");
  }

  /** Somebody came back to a device by a tap. */
  public void tapped(String initials, String before, String address) {
    add(initials, Trail.Act.SWITCHED, address + " " + before);
  }

  private void add(String who, Trail.Act act, String what) {
    trail.add(new Trail.Entry(clock.instant().truncatedTo(ChronoUnit.MICROS), who, act, what));
  }

  private static String what(Context call) {
    String ofCase = call.queryParam("case");
    return (call.method() + " " + word(call.path()) + " " + word(ofCase == null ? "" : ofCase))
        .strip();
  }

  private static String word(String text) {
    String plain = text.replaceAll("[\\p{Cntrl}\\s]+", "_");
    return plain.substring(0, Math.min(LONGEST, plain.length()));
  }
}
