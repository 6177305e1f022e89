package kerfwright.app.signin;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.security.Footprint;
import kerfwright.app.security.Guard;
import kerfwright.app.security.SignInService;
import kerfwright.app.security.Signed;
import kerfwright.app.template.Templates;
import kerfwright.practice.people.Account;

/** In and out: sign-in, the password once more, sign-out. */
public record SignInPages(
    Guard guard, SignInService service, Footprint footprint, Templates templates)
    implements Feature {
  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/enter/{token}", this::enter, Access.OPEN);
    config.routes.get("/sign-in", call -> show(call, "", 0), Access.OPEN);
    config.routes.post("/sign-in", this::signIn, Access.OPEN);
    config.routes.get("/confirm", call -> confirm(call, "", 0), Access.SELF);
    config.routes.post("/confirm", this::confirmed, Access.SELF);
    config.routes.get("/sign-out", this::ask, Access.SELF);
    config.routes.post("/sign-out", this::signOut, Access.SELF);
  }

  @Override
  public List<String> pages() {
    return List.of("/confirm", "/sign-out");
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
    String half = Sent.text(call, "half");
    if (!half.isEmpty()) {
      code(call, half);
      return;
    }
    String initials = Sent.text(call, "initials").toUpperCase(Locale.ROOT);
    SignInService.Answer answer = service.signIn(initials, password(call), guard.address(call));
    if (answer.half() != null) {
      askForCode(call, answer, "");
      return;
    }
    if (answer.waitS() == 0) {
      footprint.signIn(answer.token() != null, initials, guard.address(call));
    }
    if (answer.token() == null) {
      refuse(call, answer);
      show(call, fault(answer, "signin.wrong"), answer.waitS());
      return;
    }
    guard.hold(call, answer.token());
    call.redirect(To.sent(call), HttpStatus.SEE_OTHER);
  }

  /** The second step: the password was right, the code is looked at. */
  private void code(Context call, String half) {
    Optional<String> initials = service.half(half).map(Account::initials);
    if (initials.isEmpty()) {
      call.status(HttpStatus.UNAUTHORIZED);
      show(call, "signin.code-late", 0);
      return;
    }
    SignInService.Answer answer = service.code(half, Sent.text(call, "code"), guard.address(call));
    if (answer.token() == null) {
      if (answer.waitS() == 0) {
        footprint.codeRefused(initials.get(), guard.address(call));
      }
      refuse(call, answer);
      askForCode(call, answer, fault(answer, "signin.app-code-wrong"));
      return;
    }
    footprint.signIn(true, initials.get(), guard.address(call));
    guard.hold(call, answer.token());
    call.redirect(To.sent(call), HttpStatus.SEE_OTHER);
  }

  private void askForCode(Context call, SignInService.Answer answer, String fault) {
    templates.html(
        call,
        "signin/sign-in-code.jte",
        Map.of(
            "half",
            String.valueOf(answer.half()),
            "to",
            To.sent(call),
            "fault",
            fault,
            "wait",
            answer.waitS()));
  }

  /** The key of why somebody was not let in: a pause, or what was wrong. */
  static String fault(SignInService.Answer answer, String wrong) {
    return answer.waitS() > 0 ? "signin.wait" : wrong;
  }

  static void refuse(Context call, SignInService.Answer answer) {
    if (answer.waitS() > 0) {
      call.header("Retry-After", Long.toString(answer.waitS()));
    }
    call.status(answer.waitS() > 0 ? HttpStatus.TOO_MANY_REQUESTS : HttpStatus.UNAUTHORIZED);
  }

  /** As it was typed: spaces belong to it. */
  static String password(Context call) {
    return Optional.ofNullable(call.formParam("password")).orElse("");
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
    Signed signed = Signed.needed(call);
    SignInService.Answer answer = service.confirm(signed, password(call), guard.address(call));
    if (answer.token() == null) {
      refuse(call, answer);
      confirm(call, fault(answer, "signin.wrong-password"), answer.waitS());
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
