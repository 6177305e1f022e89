package kerfwright.app.learning;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;
import kerfwright.app.security.Role;
import kerfwright.app.template.Templates;
import kerfwright.practice.setting.Settings;

/** What was learned of the practice's own pace; whether plans use it; reset and taken back. */
public final class LearningPages {
  private final LearningDesk desk;
  private final Settings settings;
  private final Templates templates;
  private final Clock clock;

  public LearningPages(LearningDesk desk, Settings settings, Templates templates, Clock clock) {
    this.desk = desk;
    this.settings = settings;
    this.templates = templates;
    this.clock = clock;
  }

  public void routes(JavalinConfig config) {
    config.routes.get("/pace", call -> show(call, false, ""), Role.LOCAL);
    config.routes.get("/pace/reset", call -> show(call, true, ""), Role.LOCAL);
    config.routes.post("/pace/reset", this::reset, Role.LOCAL);
    config.routes.post("/pace/reset/back", this::back, Role.LOCAL);
    config.routes.post("/pace/use", this::use, Role.LOCAL);
  }

  private void show(Context call, boolean asking, String said) {
    Map<String, Object> values = new HashMap<>();
    values.put("known", desk.known());
    values.put("used", desk.used());
    values.put("since", desk.since().equals(Instant.EPOCH) ? null : desk.since());
    values.put("version", settings.read().version());
    values.put("asking", asking);
    values.put("said", said);
    templates.html(call, "learning/pace.jte", values);
  }

  private void reset(Context call) {
    Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
    written(call, LearningDesk.SINCE, now.toString());
  }

  private void back(Context call) {
    written(call, LearningDesk.SINCE, "");
  }

  private void use(Context call) {
    written(call, LearningDesk.USE, "no".equals(call.formParam("use")) ? "no" : "");
  }

  private void written(Context call, String name, String value) {
    String version = String.valueOf(call.formParam("version"));
    int seen = version.matches("\\d{1,9}") ? Integer.parseInt(version) : -1;
    if (settings.write(seen, Map.of(name, value))) {
      call.redirect("/pace", HttpStatus.SEE_OTHER);
      return;
    }
    call.status(HttpStatus.CONFLICT);
    show(call, false, "setting.changed-elsewhere");
  }
}
