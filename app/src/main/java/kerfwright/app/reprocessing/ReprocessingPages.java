package kerfwright.app.reprocessing;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
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
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.LoadService;
import kerfwright.practice.reprocessing.ReprocessingSetting;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;

/** What waits for cleaning, what can be loaded, what runs. */
public record ReprocessingPages(
    DrawerService drawer, LoadService loads, Settings settings, Templates templates, Clock clock)
    implements Feature {
  private static final int RECENT = 12;

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

  /** Sterilisers out of service, and loads that wait for someone to read and decide. */
  @Override
  public List<Notice> notices(Say say) {
    Instant now = clock.instant();
    List<Notice> notices = new ArrayList<>();
    for (String name : ReprocessingSetting.of(settings.read()).sterilisers()) {
      loads
          .lock(name)
          .ifPresent(
              lock ->
                  notices.add(
                      new Notice(
                          true,
                          say.at("reprocessing.matter-locked", name, lock.load().name()),
                          "/reprocessing/load/" + lock.load().id(),
                          say.at("reprocessing.matter-locked-do"))));
    }
    for (Load load : loads.loads().running()) {
      if (!load.over().isAfter(now)) {
        notices.add(
            new Notice(
                true,
                say.at("reprocessing.matter", load.name()),
                "/reprocessing/load/" + load.id(),
                say.at("reprocessing.matter-do")));
      }
    }
    return notices;
  }

  private void show(Context call, List<Obstacle> obstacles) {
    SettingValues set = settings.read();
    ReprocessingSetting own = ReprocessingSetting.of(set);
    Instant now = clock.instant();
    templates.html(
        call,
        "reprocessing/overview.jte",
        Map.of(
            "waiting",
            Waiting.of(drawer.drawer(), loads.loads(), own, now, page(call)),
            "running",
            loads.loads().running(),
            "recent",
            loads.loads().newest(RECENT).stream()
                .filter(one -> one.state() != Load.State.RUNNING)
                .toList(),
            "own",
            own,
            "now",
            now,
            "obstacles",
            obstacles));
  }

  private static int page(Context call) {
    return Sent.whole(call.queryParam("used")).orElse(1) - 1;
  }

  private void move(Context call, InstrumentState to) {
    List<Pick> picks = Sent.picks(call);
    List<Obstacle> obstacles = picks.isEmpty() ? List.of() : drawer.move(picks, to, "").obstacles();
    if (obstacles.isEmpty()) {
      call.redirect("/reprocessing", HttpStatus.SEE_OTHER);
    } else {
      call.status(HttpStatus.CONFLICT);
      show(call, obstacles);
    }
  }
}
