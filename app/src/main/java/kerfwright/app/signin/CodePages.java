package kerfwright.app.signin;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
import kerfwright.app.label.QrDrawing;
import kerfwright.app.security.Access;
import kerfwright.app.security.Guard;
import kerfwright.app.security.OneTimeCodes;
import kerfwright.app.security.SignInService;
import kerfwright.app.security.Signed;
import kerfwright.app.template.Templates;
import kerfwright.practice.people.Account;

/** Switches the code of an app at sign-in on and off, each for themselves. */
public final class CodePages implements Feature {
  private final Guard guard;
  private final SignInService service;
  private final OneTimeCodes codes;
  private final Templates templates;

  public CodePages(Guard guard, SignInService service, OneTimeCodes codes, Templates templates) {
    this.guard = guard;
    this.service = service;
    this.codes = codes;
    this.templates = templates;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/account/code", call -> show(call, "", 0, List.of()), Access.SELF_AGAIN);
    config.routes.post("/account/code/begin", this::begin, Access.SELF_AGAIN);
    config.routes.post("/account/code/on", this::switchOn, Access.SELF_AGAIN);
    config.routes.post("/account/code/off", this::switchOff, Access.SELF_AGAIN);
  }

  private void show(Context call, String fault, long waitS, List<String> standIns) {
    Account account = Signed.needed(call).account();
    String secret = codes.begun(account.id()).orElse("");
    String label = templates.say(call).at("signin.app-code-qr", account.initials());
    Map<String, Object> values = new HashMap<>();
    values.put("on", codes.on(account.id()));
    values.put("left", codes.standInsLeft(account.id()));
    values.put("secret", secret.replaceAll("(.{4})(?=.)", "$1 "));
    String address = OneTimeCodes.address(secret, account.initials());
    values.put("address", address);
    values.put("qr", secret.isEmpty() ? "" : QrDrawing.of(address, label));
    values.put("standIns", standIns);
    values.put("fault", fault);
    values.put("wait", waitS);
    templates.html(call, "signin/code.jte", values);
  }

  private void begin(Context call) {
    codes.begin(Signed.needed(call).account().id());
    call.redirect("/account/code", HttpStatus.SEE_OTHER);
  }

  /** A first code shows that the app has the secret; the recovery codes are shown this once. */
  private void switchOn(Context call) {
    List<String> standIns = service.askForCodes(Signed.needed(call), Sent.text(call, "code"));
    if (standIns.isEmpty()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
    }
    show(call, standIns.isEmpty() ? "signin.app-code-wrong" : "", 0, standIns);
  }

  /** The password was given just now; the code is the other half of who they are. */
  private void switchOff(Context call) {
    SignInService.Answer answer =
        service.askForNoCodes(Signed.needed(call), Sent.text(call, "code"), guard.address(call));
    if (answer.account() != null) {
      call.redirect("/account/code", HttpStatus.SEE_OTHER);
      return;
    }
    call.status(
        answer.waitS() > 0 ? HttpStatus.TOO_MANY_REQUESTS : HttpStatus.UNPROCESSABLE_CONTENT);
    show(call, SignInPages.fault(answer, "signin.app-code-wrong"), answer.waitS(), List.of());
  }
}
