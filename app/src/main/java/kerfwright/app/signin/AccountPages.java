package kerfwright.app.signin;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.security.Guard;
import kerfwright.app.security.PasswordHash;
import kerfwright.app.security.PasswordRule;
import kerfwright.app.security.SignInService;
import kerfwright.app.security.Signed;
import kerfwright.app.template.Templates;
import kerfwright.practice.people.Account;
import kerfwright.practice.people.Role;
import kerfwright.practice.setting.Person;
import kerfwright.practice.setting.Settings;
import org.jspecify.annotations.Nullable;

/** One's own password and digits, and the first owner. */
public final class AccountPages implements Feature {
  private final Guard guard;
  private final SignInService service;
  private final Settings settings;
  private final @Nullable String firstCode;
  private final Supplier<UUID> ids;
  private final Templates templates;

  /**
   * @param firstCode what makes the first owner, null where nobody is to be made
   */
  public AccountPages(
      Guard guard,
      SignInService service,
      Settings settings,
      @Nullable String firstCode,
      Supplier<UUID> ids,
      Templates templates) {
    this.guard = guard;
    this.service = service;
    this.settings = settings;
    this.firstCode = firstCode;
    this.ids = ids;
    this.templates = templates;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/first", call -> first(call, ""), Access.OPEN);
    config.routes.post("/first", this::makeFirst, Access.OPEN);
    config.routes.get("/account", call -> account(call, "", 0, false), Access.SELF);
    config.routes.post("/account", this::choose, Access.SELF);
    config.routes.post("/account/pin", this::choosePin, Access.SELF);
  }

  private void first(Context call, String fault) {
    if (firstCode == null || guard.hasPeople()) {
      call.redirect("/", HttpStatus.SEE_OTHER);
      return;
    }
    templates.html(
        call, "signin/first.jte", Map.of("initials", Sent.text(call, "initials"), "fault", fault));
  }

  /** The code was printed where the program was started: whoever reads it may begin. */
  private void makeFirst(Context call) {
    String initials = Sent.text(call, "initials").toUpperCase(java.util.Locale.ROOT);
    String code = Sent.text(call, "code").toUpperCase(java.util.Locale.ROOT);
    String password = SignInPages.password(call);
    String pin = Sent.text(call, "pin");
    String fault = "";
    if (firstCode == null
        || guard.hasPeople()
        || !service.isCode(firstCode, code, guard.address(call))) {
      fault = "signin.wrong-code";
    } else if (!Person.initialsAreSound(initials)) {
      fault = "setting.initials-needed";
    } else {
      fault = fault(password, pin, initials).orElse("");
    }
    if (!fault.isEmpty()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      first(call, fault);
      return;
    }
    String pinHash = pin.isEmpty() ? "" : PasswordHash.of(pin);
    Account owner =
        new Account(
            ids.get(), 1, initials, Role.OWNER, true, PasswordHash.of(password), pinHash, null);
    if (!service.accounts().addFirst(owner)) {
      call.redirect("/sign-in", HttpStatus.SEE_OTHER);
      return;
    }
    NamedPeople.name(settings, owner);
    guard.hold(call, service.begin(owner).token());
    call.redirect("/people", HttpStatus.SEE_OTHER);
  }

  /** The key of what is wrong with a new password or digits. */
  private static Optional<String> fault(String password, String pin, String initials) {
    return PasswordRule.fault(password, initials).or(() -> pinFault(pin));
  }

  private static Optional<String> pinFault(String pin) {
    return pin.isEmpty() || PasswordRule.arePin(pin)
        ? Optional.empty()
        : Optional.of("signin.pin-rule");
  }

  private void account(Context call, String fault, long waitS, boolean done) {
    Account account = Signed.needed(call).account();
    Map<String, Object> values = new HashMap<>();
    values.put("account", account);
    values.put("asked", service.asksForCodes(account));
    values.put("fault", fault);
    values.put("wait", waitS);
    values.put("done", done || call.queryParam("done") != null);
    templates.html(call, "signin/account.jte", values);
  }

  /** Whoever was let in by a code chooses both at once, and has shown who they are. */
  private void choose(Context call) {
    Signed signed = Signed.needed(call);
    Account account = signed.account();
    String password = SignInPages.password(call);
    @Nullable String pin = account.mustChoose() ? Sent.text(call, "pin") : null;
    if (account.mustChoose() || held(call, signed)) {
      Optional<String> fault =
          fault(password, pin == null ? "" : pin, account.initials())
              .or(() -> unlessDone(service.choose(signed, password, pin)));
      end(call, fault, account.mustChoose() ? "/" : "/account?done=1");
    }
  }

  private void choosePin(Context call) {
    Signed signed = Signed.needed(call);
    String pin = Sent.text(call, "pin");
    if (!signed.account().mustChoose() && held(call, signed)) {
      Optional<String> fault = pinFault(pin).or(() -> unlessDone(service.choosePin(signed, pin)));
      end(call, fault, "/account?done=1");
    } else if (signed.account().mustChoose()) {
      call.redirect("/account", HttpStatus.SEE_OTHER);
    }
  }

  /** Whether the present password came with it; where not, that is told. */
  private boolean held(Context call, Signed signed) {
    String now = Optional.ofNullable(call.formParam("now")).orElse("");
    SignInService.Answer held = service.holds(signed, now, guard.address(call));
    boolean right = held.account() != null;
    if (!right) {
      call.status(
          held.waitS() > 0 ? HttpStatus.TOO_MANY_REQUESTS : HttpStatus.UNPROCESSABLE_CONTENT);
      account(call, SignInPages.fault(held, "signin.wrong-password"), held.waitS(), false);
    }
    return right;
  }

  private static Optional<String> unlessDone(boolean done) {
    return done ? Optional.empty() : Optional.of("setting.changed-elsewhere");
  }

  private void end(Context call, Optional<String> fault, String to) {
    if (fault.isPresent()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      account(call, fault.get(), 0, false);
    } else {
      call.redirect(to, HttpStatus.SEE_OTHER);
    }
  }
}
