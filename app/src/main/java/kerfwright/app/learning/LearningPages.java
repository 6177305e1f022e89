package kerfwright.app.learning;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import kerfwright.app.feature.Feature;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.planner.uncertainty.SlotCut;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.learning.OwnCut;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;

/**
 * The practice's own cuts: how to measure them, what they narrow, what was learned at the chair;
 * whether plans use it; reset and taken back.
 */
public final class LearningPages implements Feature {
  private final LearningService service;
  private final Drawer drawer;
  private final Settings settings;
  private final Templates templates;
  private final Clock clock;

  public LearningPages(
      LearningService service, Drawer drawer, Settings settings, Templates templates, Clock clock) {
    this.service = service;
    this.drawer = drawer;
    this.settings = settings;
    this.templates = templates;
    this.clock = clock;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/pace", call -> show(call, "", "", OwnCutForm.fresh()), Access.SEE);
    config.routes.get(
        "/pace/reset", call -> show(call, "reset", "", OwnCutForm.fresh()), Access.SEE);
    config.routes.post("/pace/reset", this::reset, Access.SET);
    config.routes.post("/pace/reset/back", this::back, Access.SET);
    config.routes.post("/pace/use", this::use, Access.SET);
    config.routes.post("/pace/cut", this::cut, Access.SET);
    config.routes.get(
        "/pace/cut/remove/{number}",
        call -> show(call, "remove " + number(call), "", OwnCutForm.fresh()),
        Access.SEE);
    config.routes.post("/pace/cut/remove/{number}", this::remove, Access.SET);
  }

  @Override
  public List<String> pages() {
    return List.of("/pace", "/pace/reset");
  }

  private void show(Context call, String asking, String said, OwnCutForm form) {
    SettingValues set = settings.read();
    Map<String, Object> values = new HashMap<>();
    values.put("known", service.known());
    values.put("used", service.used());
    values.put("since", service.since().equals(Instant.EPOCH) ? null : service.since());
    values.put("version", set.version());
    values.put("asking", asking);
    values.put("said", said);
    values.put("form", form);
    values.put("measured", measured(set));
    templates.html(call, "learning/pace.jte", values);
  }

  /** Every measured cut in words of its own. */
  private List<Measured> measured(SettingValues set) {
    List<Measured> all = new ArrayList<>();
    service
        .ownCuts()
        .all(set)
        .forEach(
            (number, cut) ->
                all.add(
                    new Measured(
                        number,
                        cut,
                        drawer.find(cut.item()).map(StockItem::label).orElse("-"),
                        service.ownCuts().models(cut).map(SlotCut::stallN).orElse(Double.NaN))));
    return all;
  }

  /**
   * A measured cut as the page shows it.
   *
   * @param number its number
   * @param cut what was measured
   * @param label the instrument
   * @param stallN the load at which the models let it stall
   */
  public record Measured(int number, OwnCut cut, String label, double stallN) {}

  private void cut(Context call) {
    Map<String, String> typed = new HashMap<>();
    for (String field : OwnCutForm.FIELDS) {
      typed.put(field, Objects.requireNonNullElse(call.formParam(field), ""));
    }
    OwnCutForm.Read read = OwnCutForm.read(typed, drawer);
    if (read.cut() == null) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(call, "", "pace.cut-wrong", read.form());
    } else if (service.ownCuts().keep(version(call), read.cut())) {
      call.redirect("/pace#narrowed", HttpStatus.SEE_OTHER);
    } else {
      call.status(HttpStatus.CONFLICT);
      show(call, "", "setting.changed-elsewhere", read.form());
    }
  }

  private void remove(Context call) {
    if (service.ownCuts().forget(version(call), number(call))) {
      call.redirect("/pace", HttpStatus.SEE_OTHER);
      return;
    }
    call.status(HttpStatus.CONFLICT);
    show(call, "", "setting.changed-elsewhere", OwnCutForm.fresh());
  }

  private static int number(Context call) {
    String number = call.pathParam("number");
    return number.matches("\\d{1,6}") ? Integer.parseInt(number) : 0;
  }

  private static int version(Context call) {
    String version = String.valueOf(call.formParam("version"));
    return version.matches("\\d{1,9}") ? Integer.parseInt(version) : -1;
  }

  private void reset(Context call) {
    Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
    written(call, LearningService.SINCE, now.toString());
  }

  private void back(Context call) {
    written(call, LearningService.SINCE, "");
  }

  private void use(Context call) {
    written(call, LearningService.USE, "no".equals(call.formParam("use")) ? "no" : "");
  }

  private void written(Context call, String name, String value) {
    if (settings.write(version(call), Map.of(name, value))) {
      call.redirect("/pace", HttpStatus.SEE_OTHER);
      return;
    }
    call.status(HttpStatus.CONFLICT);
    show(call, "", "setting.changed-elsewhere", OwnCutForm.fresh());
  }
}
