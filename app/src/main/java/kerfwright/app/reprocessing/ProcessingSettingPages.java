package kerfwright.app.reprocessing;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.practice.reprocessing.Cycle;
import kerfwright.practice.reprocessing.ProcessingStep;
import kerfwright.practice.reprocessing.ReprocessingSetting;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;
import kerfwright.practice.setting.StaffRole;
import kerfwright.quantity.Identified;

/** The practice's own times, sterilisers, shelf life, and who may release. */
public record ProcessingSettingPages(Settings settings, Templates templates) implements Feature {
  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/reprocessing/settings", call -> show(call, ""), Access.SET);
    config.routes.post("/reprocessing/settings", this::write, Access.SET);
  }

  @Override
  public List<String> pages() {
    return List.of("/reprocessing/settings");
  }

  private void show(Context call, String fault) {
    SettingValues set = settings.read();
    ReprocessingSetting own = ReprocessingSetting.of(set);
    Function<String, String> shown =
        name -> fault.isEmpty() ? kept(set, name) : Sent.text(call, name);
    templates.html(
        call,
        "reprocessing/settings.jte",
        Map.of(
            "set", set,
            "own", own,
            "shown", shown,
            "fault", fault.isEmpty() ? "" : templates.say(call).at(fault, Cycle.leastMinutes()),
            "done", call.queryParam("done") != null));
  }

  private static String kept(SettingValues set, String name) {
    boolean cycle = Stream.of(Cycle.values()).anyMatch(one -> one.setting().equals(name));
    return set.text(name, cycle ? set.text(ProcessingStep.CYCLE.setting(), "") : "");
  }

  private void write(Context call) {
    Map<String, String> changed = new LinkedHashMap<>();
    String fault = "";
    for (ProcessingStep step : ProcessingStep.timed()) {
      String minutes = Sent.text(call, step.setting());
      if (!minutes.matches("\\d{0,3}")) {
        fault = "reprocessing.fault-minutes";
      }
      changed.put(step.setting(), minutes);
    }
    for (Cycle cycle : Cycle.values()) {
      String minutes = Sent.text(call, cycle.setting());
      if (!minutes.matches("|\\d{1,3}")
          || !minutes.isEmpty() && Integer.parseInt(minutes) < Cycle.leastMinutes()) {
        fault = "reprocessing.fault-cycle-minutes";
      }
      changed.put(cycle.setting(), minutes);
    }
    // the form showed it as the time of every cycle without one of its own
    changed.put(ProcessingStep.CYCLE.setting(), "");
    String usual = Sent.text(call, ReprocessingSetting.USUAL_CYCLE);
    changed.put(ReprocessingSetting.USUAL_CYCLE, Cycle.byId(usual).map(Cycle::id).orElse(""));
    List<String> names =
        Stream.of(
                Sent.text(call, ReprocessingSetting.STERILISERS)
                    .toUpperCase(Locale.ROOT)
                    .split("[\\s,;]+"))
            .filter(one -> !one.isEmpty())
            .distinct()
            .toList();
    if (!names.stream().allMatch(ReprocessingSetting::isSteriliser)) {
      fault = "reprocessing.fault-sterilisers";
    }
    changed.put(ReprocessingSetting.STERILISERS, String.join(" ", names));
    String roles =
        call.formParams(ReprocessingSetting.RELEASE).stream()
            .filter(one -> Identified.of(StaffRole.class, one).isPresent())
            .collect(Collectors.joining(" "));
    if (roles.isEmpty()) {
      fault = "reprocessing.fault-roles";
    }
    changed.put(ReprocessingSetting.RELEASE, roles);
    String shelf = Sent.text(call, ReprocessingSetting.SHELF);
    if (!shelf.matches("|event|[1-9]\\d{0,3}")) {
      fault = "reprocessing.fault-shelf";
    }
    changed.put(ReprocessingSetting.SHELF, shelf);
    changed.put(
        ReprocessingSetting.WRAPPED_IN_S, Sent.text(call, ReprocessingSetting.WRAPPED_IN_S));
    if (fault.isEmpty() && settings.write(Sent.version(call), changed)) {
      call.redirect("/reprocessing/settings?done=1", HttpStatus.SEE_OTHER);
      return;
    }
    call.status(fault.isEmpty() ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
    show(call, fault.isEmpty() ? "setting.changed-elsewhere" : fault);
  }
}
