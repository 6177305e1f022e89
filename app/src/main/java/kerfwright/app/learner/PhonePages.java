package kerfwright.app.learner;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.SameSite;
import java.security.SecureRandom;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.practice.teaching.Alias;
import kerfwright.practice.teaching.ClassRoom;

/** What phones of a class see: the alias asked for, then one question at a time. */
record PhonePages(ClassRoom room, Templates templates, SecureRandom chance) {
  /** The cookie a phone is known by; it opens nothing else. */
  static final String COOKIE = "class";

  private static final int KEY_BYTES = 16;
  private static final int HOURS = 4 * 3600;

  void routes(JavalinConfig config) {
    config.routes.get("/class/{code}", call -> show(call, ""), Access.CLASS);
    config.routes.post("/class/{code}/join", this::join, Access.CLASS);
    config.routes.get("/class/{code}/now", this::now, Access.CLASS);
    config.routes.post("/class/{code}/answer", this::answer, Access.CLASS);
  }

  private void check(Context call) {
    if (!call.pathParam("code").equalsIgnoreCase(room.code())) {
      throw new NotFoundResponse();
    }
  }

  private Optional<String> alias(Context call) {
    return room.alias(call.cookie(COOKIE));
  }

  private void show(Context call, String fault) {
    check(call);
    Optional<String> alias = alias(call);
    if (alias.isEmpty()) {
      templates.html(call, "learner/join.jte", Map.of("code", room.code(), "fault", fault));
      return;
    }
    templates.html(call, "learner/phone.jte", values(alias.get()));
  }

  private Map<String, Object> values(String alias) {
    Map<String, Object> values = new HashMap<>();
    values.put("code", room.code());
    values.put("alias", alias);
    values.put("seen", room.look());
    values.put("answered", room.answered(alias).orElse(null));
    return values;
  }

  private void join(Context call) {
    check(call);
    Optional<String> alias = Alias.of(call.formParam("alias"));
    byte[] bytes = new byte[KEY_BYTES];
    chance.nextBytes(bytes);
    String key = HexFormat.of().formatHex(bytes);
    if (alias.isEmpty() || !room.join(key, alias.get())) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(call, alias.isEmpty() ? "learner.fault-alias" : "learner.fault-taken");
      return;
    }
    Cookie cookie = new Cookie(COOKIE, key, "/class/", HOURS);
    cookie.setHttpOnly(true);
    cookie.setSameSite(SameSite.STRICT);
    call.cookie(cookie);
    call.redirect("/class/" + room.code(), HttpStatus.SEE_OTHER);
  }

  /** The part that changes; nothing where the phone shows it already. */
  private void now(Context call) {
    check(call);
    String alias = alias(call).orElseThrow(NotFoundResponse::new);
    if (String.valueOf(room.look().step()).equals(call.queryParam("step"))) {
      call.status(HttpStatus.NO_CONTENT);
      return;
    }
    templates.html(call, "learner/now.jte", values(alias));
  }

  private void answer(Context call) {
    check(call);
    String number = Sent.text(call, "n");
    String option = Sent.text(call, "option");
    if (!number.matches("\\d{1,2}") || !option.matches("[0-3]")) {
      throw new NotFoundResponse();
    }
    ClassRoom.Taken taken =
        room.answer(call.cookie(COOKIE), Integer.parseInt(number), Integer.parseInt(option));
    if (taken == ClassRoom.Taken.STRANGER) {
      throw new NotFoundResponse();
    }
    call.redirect("/class/" + room.code(), HttpStatus.SEE_OTHER);
  }
}
