package kerfwright.app.security;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import io.javalin.http.UnauthorizedResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import kerfwright.app.storage.people.ProgramTokens;
import kerfwright.practice.people.ProgramToken;
import kerfwright.practice.people.Session;
import org.jspecify.annotations.Nullable;

/** Finds out who calls, and stops whoever may not. */
public final class Guard {
  private static final String SESSION = "kerfwright";
  private static final String START = "kerfwright-start";
  private static final Duration A_YEAR = Duration.ofDays(365);
  private static final String BEARER = "Bearer ";

  private final Doors doors;
  private final SignInService service;
  private final ProgramTokens tokens;
  private final Footprint footprint;
  private final Clock clock;
  private volatile boolean people;

  public Guard(
      Doors doors, SignInService service, ProgramTokens tokens, Footprint footprint, Clock clock) {
    this.doors = doors;
    this.service = service;
    this.tokens = tokens;
    this.footprint = footprint;
    this.clock = clock;
  }

  public Doors doors() {
    return doors;
  }

  /** Where a call comes from; a proxy on this machine says it last in its header. */
  public String address(Context call) {
    String told = call.header("X-Forwarded-For");
    if (doors.kind() != Doors.Kind.PROXY || told == null) {
      return call.ip();
    }
    return told.substring(told.lastIndexOf(',') + 1).strip();
  }

  /** True where people sign in; once somebody does, it stays so. */
  public boolean hasPeople() {
    people = people || !service.accounts().all().isEmpty();
    return people;
  }

  /** True where whoever comes in need not say who they are. */
  public boolean nobodySignsIn() {
    return doors.kind() == Doors.Kind.OPEN || doors.kind() == Doors.Kind.HERE && !hasPeople();
  }

  void let(Context call, Access access) {
    if (access == Access.OPEN) {
      signed(call).filter(one -> !service.locked(one)).ifPresent(one -> one.remember(call));
    } else if (doors.kind() == Doors.Kind.OPEN) {
      // the invented practice: whoever sits at this machine
    } else if (call.header("Authorization") != null) {
      program(call, access);
    } else if (nobodySignsIn()) {
      printedAddress(call);
    } else {
      person(call, access);
    }
  }

  private static void printedAddressNeeded() {
    throw new ForbiddenResponse("start");
  }

  private void printedAddress(Context call) {
    String held = call.cookie(START);
    String token = doors.startToken();
    if (held == null || token == null || !Secrets.same(held, token)) {
      printedAddressNeeded();
    }
  }

  /** A program shows its token; it opens what it is for, until it ends. */
  private void program(Context call, Access access) {
    String given = String.valueOf(call.header("Authorization"));
    Optional<ProgramToken> token =
        given.startsWith(BEARER)
            ? tokens
                .find(Secrets.hash(given.substring(BEARER.length()).strip()))
                .filter(one -> clock.instant().isBefore(one.ends()))
            : Optional.empty();
    if (token.isEmpty()) {
      call.header("WWW-Authenticate", "Bearer");
      throw new UnauthorizedResponse("token");
    }
    if (!access.scope().equals(Optional.of(token.get().scope()))) {
      throw new ForbiddenResponse("token-use");
    }
    footprint.allowed(call, access, "token " + token.get().name());
  }

  private void person(Context call, Access access) {
    Optional<Signed> found = signed(call);
    if (found.isEmpty()) {
      turnAway(call, "/sign-in");
      return;
    }
    Signed signed = found.get();
    if (service.locked(signed)) {
      turnAway(call, "/locked");
      return;
    }
    signed.remember(call);
    if (signed.account().mustChoose() && access != Access.SELF) {
      turnAway(call, "/account");
    } else if (!access.allows(signed.account().role())) {
      footprint.refused(call, signed.account().initials());
      throw new ForbiddenResponse("role");
    } else if (access.asksForThePin() && signed.session().byTap()) {
      turnAway(call, "/switch/" + signed.account().id());
    } else if (access.asksForThePassword() && !service.fresh(signed)) {
      turnAway(call, "/confirm");
    } else {
      footprint.allowed(call, access, signed.account().initials());
    }
  }

  /** Who holds the session of this call, locked or not; empty where nobody does. */
  public Optional<Signed> signed(Context call) {
    String token = call.cookie(doors.cookie(SESSION));
    return token == null ? Optional.empty() : service.who(token);
  }

  /** Leads a page to where it can go on; tells a script that it may not. */
  private static void turnAway(Context call, String to) {
    String mode = call.header("Sec-Fetch-Mode");
    boolean page = mode == null || mode.equals("navigate");
    boolean asks = call.method() == HandlerType.GET || call.method() == HandlerType.HEAD;
    String query = call.queryString();
    String here = call.path() + (query == null ? "" : "?" + query);
    String there =
        to + (asks && page ? "?to=" + URLEncoder.encode(here, StandardCharsets.UTF_8) : "");
    if (call.header("HX-Request") != null) {
      call.header("HX-Redirect", to);
      throw new UnauthorizedResponse("signed-out");
    }
    String type = call.contentType();
    if (!page || type != null && type.startsWith("application/json")) {
      throw new UnauthorizedResponse("signed-out");
    }
    call.redirect(there, HttpStatus.SEE_OTHER);
    call.skipRemainingHandlers();
  }

  /** Whoever followed the printed address is known by it from now on. */
  public boolean enter(Context call, String given) {
    String token = doors.startToken();
    boolean right = token != null && Secrets.same(token, given);
    if (right) {
      call.cookie(cookie(START, given, A_YEAR));
    }
    return right;
  }

  /** What the device holds from now on; null takes it away. */
  public void hold(Context call, @Nullable String token) {
    Duration howLong = token == null ? Duration.ZERO : Session.LONGEST;
    call.cookie(cookie(doors.cookie(SESSION), token == null ? "" : token, howLong));
  }

  private Cookie cookie(String name, String value, Duration howLong) {
    Cookie cookie = new Cookie(name, value, "/", (int) howLong.toSeconds());
    cookie.setHttpOnly(true);
    cookie.setSecure(doors.secure());
    cookie.setSameSite(SameSite.STRICT);
    return cookie;
  }
}
