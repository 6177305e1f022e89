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
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.security.Footprint;
import kerfwright.app.security.Guard;
import kerfwright.app.security.SignInService;
import kerfwright.app.security.Signed;
import kerfwright.app.template.Templates;
import kerfwright.practice.people.Account;

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
    config.routes.get("/locked", call -> locked(call, ""), Access.OPEN);
    config.routes.post("/locked", this::unlock, Access.OPEN);
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

  private void locked(Context call, String fault) {
    Optional<Signed> device = guard.signed(call);
    if (device.isEmpty()) {
      call.redirect("/sign-in", HttpStatus.SEE_OTHER);
      return;
    }
    List<Account> people =
        service.accounts().all().stream()
            .filter(one -> one.active() && !one.pin().isEmpty())
            .toList();
    Map<String, Object> values = new HashMap<>();
    values.put("people", people);
    values.put("last", device.get().account());
    values.put("to", To.sent(call));
    values.put("fault", fault);
    templates.html(call, "signin/locked.jte", values);
  }

  private void unlock(Context call) {
    Optional<Signed> device = guard.signed(call);
    Optional<SignInService.Answer> answer =
        device.flatMap(
            one ->
                Sent.id(call.formParam("person"))
                    .map(person -> service.unlock(one, person, Sent.text(call, "pin"))));
    boolean let = answer.isPresent() && answer.get().token() != null;
    device
        .flatMap(any -> Sent.id(call.formParam("person")).flatMap(service.accounts()::find))
        .ifPresent(one -> footprint.signIn(let, one.initials(), guard.address(call)));
    if (!let) {
      call.status(HttpStatus.UNAUTHORIZED);
      locked(call, "signin.wrong-pin");
      return;
    }
    guard.hold(call, answer.orElseThrow().token());
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
