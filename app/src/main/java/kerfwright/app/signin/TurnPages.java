package kerfwright.app.signin;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.security.Footprint;
import kerfwright.app.security.Guard;
import kerfwright.app.security.SignInService;
import kerfwright.app.security.Signed;
import kerfwright.app.security.Turns;
import kerfwright.app.template.Templates;
import kerfwright.practice.people.Account;
import org.jspecify.annotations.Nullable;

/** Taking turns at a device, and the lock. */
public final class TurnPages implements Feature {
  private final Guard guard;
  private final SignInService service;
  private final Footprint footprint;
  private final Templates templates;

  public TurnPages(Guard guard, SignInService service, Footprint footprint, Templates templates) {
    this.guard = guard;
    this.service = service;
    this.footprint = footprint;
    this.templates = templates;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/locked", call -> choose(call, "/locked", null, "", 0), Access.OPEN);
    config.routes.post("/locked", call -> goOn(call, "/locked"), Access.OPEN);
    config.routes.get("/switch", call -> choose(call, "/switch", null, "", 0), Access.SELF);
    config.routes.get(
        "/switch/{id}", call -> choose(call, "/switch", call.pathParam("id"), "", 0), Access.SELF);
    config.routes.post("/switch", call -> goOn(call, "/switch"), Access.SELF);
    config.routes.post("/lock", this::lock, Access.SELF);
  }

  /** Who goes on: large buttons for people, then keys for the digits of the one chosen. */
  private void choose(
      Context call, String page, @Nullable String person, String fault, long waitS) {
    Optional<Signed> device = guard.signed(call);
    if (device.isEmpty()) {
      call.redirect("/sign-in", HttpStatus.SEE_OTHER);
      return;
    }
    List<Turns.Seat> seats = service.turns().seats(device.get());
    Optional<Turns.Seat> chosen =
        Sent.id(person)
            .flatMap(id -> seats.stream().filter(one -> one.account().id().equals(id)).findFirst());
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

  /**
   * By a tap where that is enough, else by digits or by all that is asked of them; without either
   * those are asked for.
   */
  private void goOn(Context call, String page) {
    Optional<Signed> device = guard.signed(call);
    Optional<UUID> person = Sent.id(call.formParam("person"));
    if (device.isEmpty() || person.isEmpty()) {
      choose(call, page, null, "", 0);
      return;
    }
    String password = SignInPages.password(call);
    String pin = Sent.text(call, "pin");
    if (!password.isEmpty()) {
      String code = Sent.text(call, "code");
      let(
          call,
          page,
          person.get(),
          service.turns().arrive(device.get(), person.get(), password, code, guard.address(call)),
          "signin.wrong-whole");
    } else if (!pin.isEmpty() && !service.turns().askedForAll(device.get(), person.get())) {
      let(
          call,
          page,
          person.get(),
          service.turns().unlock(device.get(), person.get(), pin),
          "signin.wrong-pin");
    } else {
      tap(call, page, device.get(), person.get());
    }
  }

  private void tap(Context call, String page, Signed device, UUID person) {
    SignInService.Answer answer = service.turns().tap(device, person);
    Account let = answer.account();
    if (let == null) {
      choose(call, page, person.toString(), "", 0);
      return;
    }
    footprint.tapped(let.initials(), device.account().initials(), guard.address(call));
    guard.hold(call, answer.token());
    call.redirect(To.sent(call), HttpStatus.SEE_OTHER);
  }

  private void let(
      Context call, String page, UUID person, SignInService.Answer answer, String wrong) {
    boolean let = answer.token() != null;
    service
        .accounts()
        .find(person)
        .ifPresent(one -> footprint.signIn(let, one.initials(), guard.address(call)));
    if (!let) {
      SignInPages.refuse(call, answer);
      choose(call, page, person.toString(), SignInPages.fault(answer, wrong), answer.waitS());
      return;
    }
    guard.hold(call, answer.token());
    call.redirect(To.sent(call), HttpStatus.SEE_OTHER);
  }

  private void lock(Context call) {
    Signed.in(call).ifPresent(service.turns()::lock);
    call.redirect("/locked?to=" + To.encoded(To.sent(call)), HttpStatus.SEE_OTHER);
  }
}
