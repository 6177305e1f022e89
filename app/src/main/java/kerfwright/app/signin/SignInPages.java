package kerfwright.app.signin;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.security.Footprint;
import kerfwright.app.security.Guard;
import kerfwright.app.security.SignInService;
import kerfwright.app.security.Signed;
import kerfwright.app.template.Templates;
import kerfwright.practice.people.Account;
import org.jspecify.annotations.Nullable;

/** In and out: sign-in, lock and switch, sign-out. */
public final class SignInPages {
  private final Guard guard;
  private final SignInService service;
  private final Footprint footprint;
  private final Templates templates;

  public SignInPages(Guard guard, SignInService service, Footprint footprint, Templates templates) {
    this.guard = guard;
    this.service = service;
    this.footprint = footprint;
    this.templates = templates;
  }

  public void routes(JavalinConfig config) {
    config.routes.get("/enter/{token}", this::enter, Access.OPEN);
    config.routes.get("/sign-in", call -> show(call, "", 0), Access.OPEN);
    config.routes.post("/sign-in", this::signIn, Access.OPEN);
    config.routes.get("/locked", call -> choose(call, "/locked", null, "", 0), Access.OPEN);
    config.routes.post("/locked", call -> goOn(call, "/locked"), Access.OPEN);
    config.routes.get("/switch", call -> choose(call, "/switch", null, "", 0), Access.SELF);
    config.routes.get(
        "/switch/{id}", call -> choose(call, "/switch", call.pathParam("id"), "", 0), Access.SELF);
    config.routes.post("/switch", call -> goOn(call, "/switch"), Access.SELF);
    config.routes.post("/lock", this::lock, Access.SELF);
    config.routes.get("/confirm", call -> confirm(call, "", 0), Access.SELF);
    config.routes.post("/confirm", this::confirmed, Access.SELF);
    config.routes.get("/sign-out", this::ask, Access.SELF);
    config.routes.post("/sign-out", this::signOut, Access.SELF);
  }

  private void enter(Context call) {
    if (!guard.enter(call, call.pathParam("token"))) {
      throw new ForbiddenResponse("start");
    }
    call.redirect("/", HttpStatus.SEE_OTHER);
  }

  private void show(Context call, String fault, long waitS) {
    if (guard.nobodySignsIn()) {
      call.redirect("/", HttpStatus.SEE_OTHER);
    } else if (!guard.hasPeople()) {
      call.redirect("/first", HttpStatus.SEE_OTHER);
    } else {
      templates.html(
          call,
          "signin/sign-in.jte",
          Map.of(
              "initials",
              Sent.text(call, "initials"),
              "to",
              To.sent(call),
              "fault",
              fault,
              "wait",
              waitS));
    }
  }

  private void signIn(Context call) {
    String initials = Sent.text(call, "initials").toUpperCase(Locale.ROOT);
    SignInService.Answer answer = service.signIn(initials, password(call), guard.address(call));
    if (answer.waitS() == 0) {
      footprint.signIn(answer.token() != null, initials, guard.address(call));
    }
    if (answer.token() == null) {
      refuse(call, answer);
      show(call, answer.waitS() > 0 ? "signin.wait" : "signin.wrong", answer.waitS());
      return;
    }
    guard.hold(call, answer.token());
    call.redirect(To.sent(call), HttpStatus.SEE_OTHER);
  }

  private static void refuse(Context call, SignInService.Answer answer) {
    if (answer.waitS() > 0) {
      call.header("Retry-After", Long.toString(answer.waitS()));
    }
    call.status(answer.waitS() > 0 ? HttpStatus.TOO_MANY_REQUESTS : HttpStatus.UNAUTHORIZED);
  }

  /** As it was typed: spaces belong to it. */
  static String password(Context call) {
    return Optional.ofNullable(call.formParam("password")).orElse("");
  }

  /** Who goes on: large buttons for people, then keys for the digits of the one chosen. */
  private void choose(
      Context call, String page, @Nullable String person, String fault, long waitS) {
    Optional<Signed> device = guard.signed(call);
    if (device.isEmpty()) {
      call.redirect("/sign-in", HttpStatus.SEE_OTHER);
      return;
    }
    List<SignInService.Seat> seats = service.seats(device.get());
    Optional<Account> chosen =
        Sent.id(person)
            .flatMap(
                id ->
                    seats.stream()
                        .map(SignInService.Seat::account)
                        .filter(one -> one.id().equals(id))
                        .findFirst());
    Map<String, Object> values = new HashMap<>();
    values.put("page", page);
    values.put("seats", seats);
    values.put("chosen", chosen.orElse(null));
    values.put("now", device.get().account());
    values.put("to", To.sent(call));
    values.put("fault", fault);
    values.put("wait", waitS);
    templates.html(call, "signin/switch.jte", values);
  }

  /** By a tap where that is enough, else by digits; without digits they are asked for. */
  private void goOn(Context call, String page) {
    Optional<Signed> device = guard.signed(call);
    Optional<UUID> person = Sent.id(call.formParam("person"));
    if (device.isEmpty() || person.isEmpty()) {
      choose(call, page, null, "", 0);
      return;
    }
    String pin = Sent.text(call, "pin");
    String before = device.get().account().initials();
    SignInService.Answer answer =
        pin.isEmpty()
            ? service.tap(device.get(), person.get())
            : service.unlock(device.get(), person.get(), pin);
    Account let = answer.account();
    if (let == null && pin.isEmpty()) {
      choose(call, page, person.get().toString(), "", 0);
      return;
    }
    if (let != null && pin.isEmpty()) {
      footprint.tapped(let.initials(), before, guard.address(call));
    } else {
      service
          .accounts()
          .find(person.get())
          .ifPresent(one -> footprint.signIn(let != null, one.initials(), guard.address(call)));
    }
    if (let == null) {
      refuse(call, answer);
      String fault = answer.waitS() > 0 ? "signin.wait" : "signin.wrong-pin";
      choose(call, page, person.get().toString(), fault, answer.waitS());
      return;
    }
    guard.hold(call, answer.token());
    call.redirect(To.sent(call), HttpStatus.SEE_OTHER);
  }

  private void lock(Context call) {
    Signed.in(call).ifPresent(service::lock);
    call.redirect("/locked?to=" + To.encoded(To.sent(call)), HttpStatus.SEE_OTHER);
  }

  private void confirm(Context call, String fault, long waitS) {
    templates.html(
        call,
        "signin/confirm.jte",
        Map.of(
            "initials",
            Signed.initials(call).orElse(""),
            "to",
            To.sent(call),
            "fault",
            fault,
            "wait",
            waitS));
  }

  private void confirmed(Context call) {
    Signed signed = Signed.in(call).orElseThrow(() -> new ForbiddenResponse("role"));
    SignInService.Answer answer = service.confirm(signed, password(call), guard.address(call));
    if (answer.token() == null) {
      refuse(call, answer);
      confirm(call, answer.waitS() > 0 ? "signin.wait" : "signin.wrong-password", answer.waitS());
      return;
    }
    guard.hold(call, answer.token());
    call.redirect(To.sent(call), HttpStatus.SEE_OTHER);
  }

  private void ask(Context call) {
    templates.html(
        call, "signin/sign-out.jte", Map.of("initials", Signed.initials(call).orElse("")));
  }

  /**
   * What this browser keeps is wiped; where entries of the chair still wait in it, those stay until
   * whoever made them signs in here again.
   */
  private void signOut(Context call) {
    Signed.in(call).ifPresent(service::signOut);
    guard.hold(call, null);
    boolean waiting = "1".equals(call.formParam("waiting"));
    call.header("Clear-Site-Data", waiting ? "\"cache\"" : "\"cache\", \"cookies\", \"storage\"");
    call.redirect("/sign-in", HttpStatus.SEE_OTHER);
  }
}
