package kerfwright.app.reprocessing;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.feature.Feature;
import kerfwright.app.feature.Notice;
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Obstacle;
import kerfwright.practice.drawer.Outcome;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.reprocessing.LoadService;
import kerfwright.practice.reprocessing.ReprocessingSetting;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;

/** What waits for cleaning, what can be loaded, what runs. */
public final class ReprocessingPages implements Feature {
  private static final int RECENT = 12;

  private final DrawerService drawer;
  private final LoadService loads;
  private final Settings settings;
  private final Templates templates;
  private final Clock clock;

  public ReprocessingPages(
      DrawerService drawer,
      LoadService loads,
      Settings settings,
      Templates templates,
      Clock clock) {
    this.drawer = drawer;
    this.loads = loads;
    this.settings = settings;
    this.templates = templates;
    this.clock = clock;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/reprocessing", call -> show(call, List.of()), Access.SEE);
    config.routes.post(
        "/reprocessing/clean", call -> move(call, InstrumentState.CLEANING), Access.WORK);
    config.routes.post(
        "/reprocessing/discard", call -> move(call, InstrumentState.WITHDRAWN), Access.WORK);
  }

  @Override
  public List<String> pages() {
    return List.of("/reprocessing");
  }

  @Override
  public List<Notice> notices(Say say) {
    return new LoadNotices(loads.loads(), settings, clock).of(say);
  }

  private void show(Context call, List<Obstacle> obstacles) {
    SettingValues set = settings.read();
    ReprocessingSetting own = ReprocessingSetting.of(set);
    Instant now = clock.instant();
    Map<String, Object> values = new HashMap<>();
    values.put("waiting", Waiting.of(drawer.drawer(), loads.loads(), own, now, page(call)));
    values.put("running", loads.loads().running());
    values.put(
        "recent",
        loads.loads().newest(RECENT).stream()
            .filter(one -> one.state() != kerfwright.practice.reprocessing.Load.State.RUNNING)
            .toList());
    values.put("own", own);
    values.put("now", now);
    values.put("obstacles", obstacles);
    templates.html(call, "reprocessing/overview.jte", values);
  }

  private static int page(Context call) {
    String sent = call.queryParam("used");
    return sent != null && sent.matches("\\d{1,6}") ? Integer.parseInt(sent) - 1 : 0;
  }

  private void move(Context call, InstrumentState to) {
    List<Pick> picks = Sent.picks(call);
    if (picks.isEmpty()) {
      call.redirect("/reprocessing", HttpStatus.SEE_OTHER);
      return;
    }
    Outcome outcome = drawer.move(picks, to, "");
    if (outcome.done()) {
      call.redirect("/reprocessing", HttpStatus.SEE_OTHER);
      return;
    }
    call.status(HttpStatus.CONFLICT);
    show(call, outcome.obstacles());
  }
}
