package kerfwright.app.signin;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.security.OneTimeCodes;
import kerfwright.app.security.PasswordHash;
import kerfwright.app.security.Secrets;
import kerfwright.app.security.SignInService;
import kerfwright.app.security.Signed;
import kerfwright.app.storage.people.ProgramTokens;
import kerfwright.app.template.Templates;
import kerfwright.practice.people.Account;
import kerfwright.practice.people.ProgramToken;
import kerfwright.practice.people.Role;
import kerfwright.practice.setting.Person;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;
import kerfwright.practice.setting.StaffRole;
import kerfwright.quantity.Identified;

/** Who signs in and what they may do; tokens of programs. */
public final class PeoplePages implements Feature {
  private static final Duration CODE_HOLDS = Duration.ofHours(24);
  private static final int MOST_DAYS = 365;

  /**
   * What the pages work with.
   *
   * @param service people and their sessions
   * @param codes whom a code is asked of
   * @param tokens tokens of programs
   * @param settings the people of the practice
   * @param ids fresh ids
   * @param clock the time
   * @param pairing true where devices are made to trust the practice's authority
   * @param first true where the first owner can be made
   */
  public record Parts(
      SignInService service,
      OneTimeCodes codes,
      ProgramTokens tokens,
      Settings settings,
      Supplier<UUID> ids,
      Clock clock,
      boolean pairing,
      boolean first) {}

  /** Shown once: a code for somebody, or a token. */
  public record Shown(String whom, String secret, boolean token) {
    static final Shown NOTHING = new Shown("", "", false);
  }

  private final Parts with;
  private final Templates templates;

  public PeoplePages(Parts with, Templates templates) {
    this.with = with;
    this.templates = templates;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/people", call -> show(call, Shown.NOTHING, ""), Access.OWN);
    config.routes.post("/people/add", this::add, Access.OWN);
    config.routes.post("/people/{id}/role", this::role, Access.OWN);
    config.routes.post("/people/{id}/code", this::code, Access.OWN);
    config.routes.post("/people/{id}/no-code", this::endCodes, Access.OWN);
    config.routes.post("/people/named", this::name, Access.OWN);
    config.routes.post("/people/named/remove", this::removeName, Access.OWN);
    config.routes.post("/people/tap", this::tapMinutes, Access.OWN);
    config.routes.post("/people/token", this::makeToken, Access.OWN);
    config.routes.post("/people/token/{id}/end", this::endToken, Access.OWN);
  }

  @Override
  public List<String> pages() {
    return List.of("/people");
  }

  private void show(Context call, Shown shown, String fault) {
    Map<String, Object> values = new HashMap<>();
    SettingValues set = with.settings().read();
    values.put("people", with.service().accounts().all());
    values.put("asked", with.codes().on());
    values.put("set", set);
    values.put("tokens", with.tokens().all());
    values.put("own", Signed.initials(call).orElse(""));
    values.put("now", with.clock().instant());
    values.put("pairing", with.pairing());
    values.put("first", with.first());
    values.put("done", call.queryParam("done") != null);
    values.put("shown", shown);
    values.put("fault", fault);
    templates.html(call, "signin/people.jte", values);
  }

  private void refuse(Context call, String fault) {
    call.status(HttpStatus.UNPROCESSABLE_CONTENT);
    show(call, Shown.NOTHING, fault);
  }

  private void add(Context call) {
    String initials = Sent.text(call, "initials").toUpperCase(Locale.ROOT);
    Optional<Role> role = Identified.of(Role.class, Sent.text(call, "role"));
    if (Signed.in(call).isEmpty()) {
      refuse(call, "signin.owner-first");
    } else if (!Person.initialsAreSound(initials) || role.isEmpty()) {
      refuse(call, "setting.initials-needed");
    } else {
      String code = Secrets.code();
      Account account =
          new Account(
              with.ids().get(),
              1,
              initials,
              role.get(),
              true,
              PasswordHash.of(code),
              "",
              with.clock().instant().plus(CODE_HOLDS));
      if (!with.service().accounts().add(account)) {
        refuse(call, "signin.initials-taken");
        return;
      }
      NamedPeople.name(with.settings(), account);
      show(call, new Shown(initials, code, false), "");
    }
  }

  /** Somebody of the practice by initials, and what they do; whether they sign in or not. */
  private void name(Context call) {
    String initials = Sent.text(call, "initials").toUpperCase(Locale.ROOT);
    Optional<StaffRole> does = Identified.of(StaffRole.class, Sent.text(call, "does"));
    if (does.isEmpty()) {
      refuse(call, "setting.role-needed");
    } else if (!Person.initialsAreSound(initials)) {
      refuse(call, "setting.initials-needed");
    } else {
      set(call, Person.PREFIX + initials, does.get().id());
    }
  }

  private void removeName(Context call) {
    String initials = Sent.text(call, "initials");
    if (Person.initialsAreSound(initials)) {
      set(call, Person.PREFIX + initials, "");
    } else {
      refuse(call, "setting.initials-needed");
    }
  }

  private void tapMinutes(Context call) {
    String minutes = Sent.text(call, "minutes");
    if (Switching.MINUTES.allows(minutes)) {
      set(call, Switching.MINUTES.name(), minutes);
    } else {
      refuse(call, "signin.tap-fault");
    }
  }

  private void set(Context call, String name, String value) {
    if (with.settings().write(Sent.version(call), Map.of(name, value))) {
      call.redirect("/people?done=1", HttpStatus.SEE_OTHER);
    } else {
      call.status(HttpStatus.CONFLICT);
      show(call, Shown.NOTHING, "setting.changed-elsewhere");
    }
  }

  private Account known(Context call) {
    return Sent.id(call.pathParam("id"))
        .flatMap(with.service().accounts()::find)
        .orElseThrow(NotFoundResponse::new);
  }

  /** Another role, or gone; whatever they have open ends. */
  private void role(Context call) {
    Account account = known(call);
    String chosen = Sent.text(call, "role");
    Account next =
        Identified.of(Role.class, chosen)
            .map(role -> account.as(role, true))
            .orElse(account.as(account.role(), false));
    change(call, account, next, Shown.NOTHING);
  }

  private void change(Context call, Account account, Account next, Shown shown) {
    if (account.version() != Sent.version(call) || !with.service().accounts().change(next)) {
      refuse(call, "signin.not-changed");
      return;
    }
    NamedPeople.name(with.settings(), next);
    if (!Signed.initials(call).equals(Optional.of(account.initials()))) {
      with.service().endAll(next);
    }
    if (shown.secret().isEmpty()) {
      call.redirect("/people", HttpStatus.SEE_OTHER);
    } else {
      show(call, shown, "");
    }
  }

  /** A code in place of a forgotten password. */
  private void code(Context call) {
    Account account = known(call);
    String code = Secrets.code();
    Account next = account.withCode(PasswordHash.of(code), with.clock().instant().plus(CODE_HOLDS));
    change(call, account, next, new Shown(account.initials(), code, false));
  }

  /** For whoever lost the phone and the recovery codes: they sign in by password alone again. */
  private void endCodes(Context call) {
    Account account = known(call);
    with.codes().end(account.id());
    if (!Signed.initials(call).equals(Optional.of(account.initials()))) {
      with.service().endAll(account);
    }
    call.redirect("/people?done=1", HttpStatus.SEE_OTHER);
  }

  private void makeToken(Context call) {
    String name = Sent.text(call, "name");
    String days = Sent.text(call, "days");
    Optional<ProgramToken.Scope> scope =
        Identified.of(ProgramToken.Scope.class, Sent.text(call, "scope"));
    if (name.isEmpty() || name.length() > 60 || scope.isEmpty() || !days.matches("[1-9]\\d{0,2}")) {
      refuse(call, "signin.token-fault");
      return;
    }
    String token = Secrets.token();
    var now = with.clock().instant();
    with.tokens()
        .add(
            new ProgramToken(
                with.ids().get(),
                name,
                scope.get(),
                Secrets.hash(token),
                Signed.initials(call).orElse("-"),
                now,
                now.plus(Duration.ofDays(Math.min(MOST_DAYS, Integer.parseInt(days))))));
    show(call, new Shown(name, token, true), "");
  }

  private void endToken(Context call) {
    Sent.id(call.pathParam("id")).ifPresent(with.tokens()::end);
    call.redirect("/people", HttpStatus.SEE_OTHER);
  }
}
