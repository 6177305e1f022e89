package kerfwright.app.reprocessing;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.reprocessing.Cycle;
import kerfwright.practice.reprocessing.Indicator;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.LoadOutcome;
import kerfwright.practice.reprocessing.LoadRefusal;
import kerfwright.practice.reprocessing.LoadService;
import kerfwright.practice.reprocessing.NewLoad;
import kerfwright.practice.reprocessing.ReprocessingSetting;
import kerfwright.practice.setting.Person;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;
import kerfwright.quantity.Identified;

/**
 * One load: made, read, released, failed.
 *
 * @param changed told whenever a load was started or failed
 */
public record LoadPages(
    Drawer drawer,
    LoadService service,
    Settings settings,
    Templates templates,
    Clock clock,
    Runnable changed)
    implements Feature {
  private static final int MOST_WANTED = 200;

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/reprocessing/load/new", call -> form(call, List.of()), Access.WORK);
    config.routes.post("/reprocessing/load/new", this::start, Access.WORK);
    config.routes.post("/reprocessing/load/{id}/test", this::test, Access.WORK);
    config.routes.post("/reprocessing/load/{id}/return", this::returned, Access.WORK);
    config.routes.get(
        "/reprocessing/load/{id}", call -> show(call, known(call), List.of()), Access.CASES);
    config.routes.post("/reprocessing/load/{id}/read", this::read, Access.WORK);
    config.routes.post("/reprocessing/load/{id}/release", this::release, Access.WORK);
    config.routes.post("/reprocessing/load/{id}/pass", this::pass, Access.WORK);
    config.routes.get(
        "/reprocessing/load/{id}/fail", call -> ask(call, known(call), List.of()), Access.WORK);
    config.routes.post("/reprocessing/load/{id}/fail", this::fail, Access.WORK);
  }

  @Override
  public List<String> pages() {
    return Stream.concat(
            Stream.of("/reprocessing/load/new"),
            service.loads().newest(1).stream().map(one -> "/reprocessing/load/" + one.id()))
        .toList();
  }

  private Load known(Context call) {
    return Sent.id(call.pathParam("id"))
        .flatMap(service.loads()::find)
        .orElseThrow(NotFoundResponse::new);
  }

  private void form(Context call, List<LoadRefusal> refusals) {
    SettingValues set = settings.read();
    ReprocessingSetting own = ReprocessingSetting.of(set);
    boolean again = call.formParam("sent") != null;
    Waiting waiting = Waiting.of(drawer, service.loads(), own, clock.instant(), 0);
    Set<UUID> ticked = new HashSet<>();
    Map<UUID, String> sets = new HashMap<>();
    List<StockItem> wanted = wanted(call);
    Sent.picks(call).forEach(pick -> ticked.add(pick.item()));
    for (Waiting.InCleaning one : waiting.cleaning()) {
      UUID id = one.item().id();
      if (!again
          && (wanted.isEmpty()
              ? one.over()
              : wanted.stream().anyMatch(item -> item.id().equals(id)))) {
        ticked.add(id);
      }
      sets.put(id, Sent.text(call, "set-" + id));
    }
    Map<String, Object> values = new HashMap<>();
    values.put("waiting", waiting);
    values.put("own", own);
    values.put(
        "locked", own.sterilisers().stream().filter(one -> service.lock(one).isPresent()).toList());
    values.put("people", Sent.people(call, Person.all(set)));
    values.put("by", again ? Sent.by(call) : Sent.lastBy(call));
    values.put("steriliser", Sent.text(call, "steriliser"));
    values.put("cycle", again ? Sent.text(call, "cycle") : own.usual().id());
    values.put("ticked", ticked);
    values.put("sets", sets);
    values.put("refusals", refusals);
    values.put(
        "absent", wanted.stream().filter(one -> one.state() != InstrumentState.CLEANING).toList());
    templates.html(call, "reprocessing/new.jte", values);
  }

  /** What the plan of the day wants in it: labels with commas between, as far as they are known. */
  private List<StockItem> wanted(Context call) {
    return Stream.of(Objects.requireNonNullElse(call.queryParam("pieces"), "").split(","))
        .map(String::strip)
        .distinct()
        .limit(MOST_WANTED)
        .flatMap(label -> drawer.labelled(label).stream())
        .toList();
  }

  private void start(Context call) {
    Map<String, List<Pick>> bySet = new LinkedHashMap<>();
    for (Pick pick : Sent.picks(call)) {
      String set = Sent.text(call, "set-" + pick.item());
      String name = set.substring(0, Math.min(40, set.length()));
      // without a name each is a pouch of its own
      String key = name.isEmpty() ? pick.item().toString() : "=" + name;
      bySet.computeIfAbsent(key, any -> new ArrayList<>()).add(pick);
    }
    List<NewLoad.Packed> pouches = new ArrayList<>();
    bySet.forEach(
        (key, picks) ->
            pouches.add(new NewLoad.Packed(key.startsWith("=") ? key.substring(1) : "", picks)));
    Cycle cycle = Cycle.byId(Sent.text(call, "cycle")).orElse(Cycle.B134);
    LoadOutcome outcome =
        service.start(new NewLoad(Sent.text(call, "steriliser"), cycle, Sent.by(call), pouches));
    Load load = outcome.load();
    if (load != null) {
      changed.run();
      answer(call, outcome);
      return;
    }
    call.status(HttpStatus.UNPROCESSABLE_CONTENT);
    form(call, outcome.refusals());
  }

  private void show(Context call, Load load, List<LoadRefusal> refusals) {
    SettingValues set = settings.read();
    List<Person> releasers = ReprocessingSetting.of(set).releasers(set);
    templates.html(
        call,
        "reprocessing/load.jte",
        Map.of(
            "load", load,
            "now", clock.instant(),
            "people", Sent.people(call, Person.all(set)),
            "releasers", Sent.people(call, releasers),
            "by", Sent.lastBy(call),
            "refusals", refusals,
            "recall", service.recall(load),
            "lock", service.lock(load.steriliser()).filter(one -> one.failed().contains(load))));
  }

  private void answer(Context call, LoadOutcome outcome) {
    Load load = outcome.load();
    if (load != null) {
      call.redirect("/reprocessing/load/" + load.id(), HttpStatus.SEE_OTHER);
      return;
    }
    call.status(HttpStatus.CONFLICT);
    show(call, known(call), outcome.refusals());
  }

  private void read(Context call) {
    Load load = known(call);
    Map<Indicator, Indicator.Result> before = load.readings();
    Map<Indicator, Indicator.Result> read = new EnumMap<>(Indicator.class);
    for (Indicator indicator : Indicator.values()) {
      Identified.of(
              Indicator.Result.class, Sent.text(call, indicator.id()).toLowerCase(Locale.ROOT))
          .filter(result -> result != before.get(indicator))
          .ifPresent(result -> read.put(indicator, result));
    }
    answer(call, service.read(load.id(), Sent.version(call), read, Sent.by(call)));
  }

  private void release(Context call) {
    answer(call, service.release(known(call).id(), Sent.version(call), Sent.by(call)));
  }

  /**
   * Everything read with every load has passed, and the load is released, by one person at once.
   */
  private void pass(Context call) {
    Load load = known(call);
    Map<Indicator, Indicator.Result> read = new EnumMap<>(Indicator.class);
    for (Indicator one : Indicator.values()) {
      if (one.everyLoad() && load.readings().get(one) != Indicator.Result.PASSED) {
        read.put(one, Indicator.Result.PASSED);
      }
    }
    int version = Sent.version(call);
    if (!read.isEmpty()) {
      LoadOutcome outcome = service.read(load.id(), version, read, Sent.by(call));
      Load now = outcome.load();
      if (now == null) {
        answer(call, outcome);
        return;
      }
      version = now.version();
    }
    answer(call, service.release(load.id(), version, Sent.by(call)));
  }

  /** Tests the empty chamber of a steriliser that is out of service. */
  private void test(Context call) {
    Load failed = known(call);
    NewLoad run = new NewLoad(failed.steriliser(), failed.cycle(), Sent.by(call), List.of());
    answer(call, service.start(run));
  }

  private void returned(Context call) {
    String note = Sent.text(call, "note");
    LoadOutcome outcome =
        service.returnToService(
            known(call).id(), Sent.by(call), note.substring(0, Math.min(200, note.length())));
    changed.run();
    answer(call, outcome);
  }

  private void ask(Context call, Load load, List<LoadRefusal> refusals) {
    templates.html(
        call,
        "reprocessing/fail.jte",
        Map.of(
            "load", load,
            "recall", service.recall(load),
            "people", Sent.people(call, Person.all(settings.read())),
            "by", Sent.lastBy(call),
            "reason", Sent.text(call, "reason"),
            "refusals", refusals));
  }

  private void fail(Context call) {
    Load load = known(call);
    String reason = Sent.text(call, "reason");
    LoadOutcome outcome =
        service.fail(load.id(), Sent.by(call), reason.substring(0, Math.min(200, reason.length())));
    if (outcome.load() == null) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      ask(call, load, outcome.refusals());
      return;
    }
    changed.run();
    answer(call, outcome);
  }
}
