package kerfwright.app.learning;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
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
public record LearningPages(
    LearningService service, Drawer drawer, Settings settings, Templates templates, Clock clock)
    implements Feature {
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
    return service.ownCuts().all(set).entrySet().stream()
        .map(one -> measured(one.getKey(), one.getValue()))
        .toList();
  }

  private Measured measured(int number, OwnCut cut) {
    return new Measured(
        number,
        cut,
        drawer.find(cut.item()).map(StockItem::label).orElse("-"),
        service.ownCuts().models(cut).map(SlotCut::stallN).orElse(Double.NaN));
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
    OwnCutForm.FIELDS.forEach(field -> typed.put(field, Sent.text(call, field)));
    OwnCutForm form = OwnCutForm.read(typed, drawer);
    if (form.cut() == null) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(call, "", "pace.cut-wrong", form);
      return;
    }
    boolean kept = service.ownCuts().keep(Sent.version(call), form.cut());
    written(call, kept, "/pace#narrowed", form);
  }

  private void remove(Context call) {
    boolean gone = service.ownCuts().forget(Sent.version(call), number(call));
    written(call, gone, "/pace", OwnCutForm.fresh());
  }

  private static int number(Context call) {
    String number = call.pathParam("number");
    return number.matches("\\d{1,6}") ? Integer.parseInt(number) : 0;
  }

  private void reset(Context call) {
    Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
    set(call, LearningService.SINCE, now.toString());
  }

  private void back(Context call) {
    set(call, LearningService.SINCE, "");
  }

  private void use(Context call) {
    set(call, LearningService.USE, "no".equals(call.formParam("use")) ? "no" : "");
  }

  private void set(Context call, String name, String value) {
    boolean done = settings.write(Sent.version(call), Map.of(name, value));
    written(call, done, "/pace", OwnCutForm.fresh());
  }

  /** On to the page; or what was typed stays, where somebody else changed a setting meanwhile. */
  private void written(Context call, boolean done, String to, OwnCutForm form) {
    if (done) {
      call.redirect(to, HttpStatus.SEE_OTHER);
      return;
    }
    call.status(HttpStatus.CONFLICT);
    show(call, "", "setting.changed-elsewhere", form);
  }
}
