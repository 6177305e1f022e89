package kerfwright.app.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import kerfwright.app.Wiring;
import kerfwright.app.backup.BackupWarning;
import kerfwright.app.backup.Watch;
import kerfwright.app.chairside.ChairReports;
import kerfwright.app.chairside.ChairsidePages;
import kerfwright.app.chairside.EventReports;
import kerfwright.app.daypage.DayFeature;
import kerfwright.app.drawer.DrawerPages;
import kerfwright.app.drawer.ImportPages;
import kerfwright.app.drawer.ItemPages;
import kerfwright.app.kept.KeptPages;
import kerfwright.app.kept.KeptService;
import kerfwright.app.learner.LearnerPages;
import kerfwright.app.network.Network;
import kerfwright.app.reprocessing.LoadNotices;
import kerfwright.app.security.Access;
import kerfwright.app.setting.SettingPages;
import kerfwright.app.storage.Newest;
import kerfwright.app.storage.StorageFault;
import kerfwright.app.teaching.TeachFeature;
import kerfwright.app.template.Templates;
import kerfwright.app.today.CaseLink;
import kerfwright.app.today.ClockNotices;
import kerfwright.app.today.DrawerNotices;
import kerfwright.app.today.TodayPages;
import kerfwright.app.web.caseform.FilledForm;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.planner.casework.CutCase;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The web server: gate first, then the routes, each with the role that may call it. */
public final class WebServer {
  private static final Logger LOG = LoggerFactory.getLogger(WebServer.class);

  private final Templates templates;
  private final Assets assets = new Assets();
  private final DayFeature day;
  private final TodayPages today;
  private final CasePages cases;
  private final PlanPages plans;
  private final KeptPages kept;
  private final WhatIfPages whatIf;
  private final ReferencePages reference;
  private final DrawerPages drawer;
  private final ItemPages items;
  private final ImportPages lists;
  private final SettingPages settings;
  private final ChairsidePages chairside;
  private final StockPages around;
  private final InstrumentCyclePages round;
  private final LearnerPages learner;
  private final TeachFeature teach;
  private final PeopleFeature people;

  private WebServer(
      Wiring wiring, OpenPractice open, List<CutCase> examples, boolean demo, Entrance entrance) {
    PlanService service = new PlanService(wiring, open.service().drawer(), open.learning());
    this.templates =
        new Templates(
            open.settings(),
            new OpenWarning(entrance.doors(), new BackupWarning(open.backups(), open.watch())));
    this.people = new PeopleFeature(open, entrance, templates, Clock.systemDefaultZone());
    this.day =
        new DayFeature(
            open.days(),
            open.service(),
            open.loads().loads(),
            open.requests(),
            open.record().record(),
            open.settings(),
            new PlannedNeeds(wiring, service, open.keptCases()),
            open.keptCases(),
            templates,
            Clock.systemDefaultZone());
    this.today =
        new TodayPages(
            new TodayPages.Parts(
                open.service(),
                open.settings(),
                wiring.cases().handpieces(),
                examples.stream()
                    .map(one -> new CaseLink(one, FilledForm.of(one).query()))
                    .toList(),
                demo,
                day::nextVisits,
                List.of(
                    new ClockNotices(() -> Newest.time(open.database()), Clock.systemDefaultZone()),
                    new DrawerNotices(open.service().drawer()),
                    new LoadNotices(
                        open.loads().loads(), open.settings(), Clock.systemDefaultZone())),
                () -> open.record().record().end()),
            templates,
            Clock.systemDefaultZone());
    this.cases = new CasePages(wiring, open.settings(), templates);
    this.whatIf = new WhatIfPages(service, templates);
    KeptService kept =
        new KeptService(open.keptCases(), open.service()::newId, Clock.systemDefaultZone());
    this.plans = new PlanPages(service, cases, kept, templates, wiring.drawings());
    this.kept =
        new KeptPages(
            new KeptPages.Parts(
                kept, service.runs(), open.record().record(), open.runs(), wiring.drawings()),
            templates,
            Clock.systemDefaultZone());
    if (demo) {
      examples.forEach(one -> kept.keep(one, FilledForm.of(one).query()));
    }
    this.reference = new ReferencePages(service, templates);
    this.drawer = new DrawerPages(open.service(), templates, demo);
    Clock clock = Clock.systemDefaultZone();
    this.items = new ItemPages(open.service(), open.packages(), templates, clock);
    this.around = new StockPages(open, templates, clock);
    this.settings = new SettingPages(open.settings(), templates);
    this.lists = new ImportPages(open.service(), open.drafts(), templates);
    this.round = new InstrumentCyclePages(open, day::loadsChanged, templates, clock);
    this.learner =
        new LearnerPages(
            wiring,
            new LearnerPages.Parts(
                open.lessons(),
                open.service()::newId,
                clock,
                LearnerPages::networkAddress,
                assets::serve),
            templates);
    this.teach =
        new TeachFeature(
            new TeachFeature.Parts(
                service.teaching(),
                open.keptCases(),
                open.handouts(),
                open.service()::newId,
                wiring.drawings()),
            templates,
            clock);
    this.chairside =
        new ChairsidePages(
            new ChairsidePages.Parts(
                service.runs(),
                open.runs(),
                open.service().drawer(),
                new ChairReports(open.record()::log, new EventReports(open.runs(), open.service())),
                run -> KeptPages.uses(open.record().record(), run),
                open.settings(),
                open.service()::newId,
                Clock.systemUTC(),
                day::laidOut,
                wiring.drawings()),
            templates);
  }

  /** A server ready to start. */
  static Javalin create(
      Wiring wiring, OpenPractice drawer, List<CutCase> examples, boolean demo, Entrance entrance) {
    WebServer server = new WebServer(wiring, drawer, examples, demo, entrance);
    return Javalin.create(
        config -> {
          config.startup.showJavalinBanner = false;
          config.startup.startupWatcherEnabled = false;
          config.jetty.port = entrance.port();
          server.people.gate().install(config);
          listen(config, entrance);
          config.routes.before(Caller::is);
          config.routes.beforeMatched(call -> refuseToWrite(call, drawer.watch()));
          server.routes(config);
          server.failures(config);
        });
  }

  private static void listen(JavalinConfig config, Entrance entrance) {
    Network network = entrance.network();
    if (network != null) {
      config.jetty.addConnector((server, http) -> network.secure(server, http, entrance.port()));
      network
          .fingerprint()
          .ifPresent(
              own ->
                  config.jetty.addConnector(
                      (server, http) -> Network.plain(server, http, entrance.plainPort())));
    }
  }

  /** Where the file is damaged or gone, nothing more is taken in; what only computes goes on. */
  private static void refuseToWrite(Context call, @Nullable Watch watch) {
    boolean reads =
        call.method() == HandlerType.GET
            || call.method() == HandlerType.HEAD
            || call.path().startsWith("/api/");
    if (watch != null && watch.stopped() && !reads) {
      throw new HttpResponseException(HttpStatus.SERVICE_UNAVAILABLE.getCode());
    }
  }

  private void routes(JavalinConfig config) {
    today.routes(config);
    day.routes(config);
    config.routes.get("/case", cases::form, Access.SEE);
    config.routes.get("/plan", plans::page, Access.SEE);
    config.routes.post("/plan", plans::keep, Access.WORK);
    config.routes.get("/plan/preview", plans::preview, Access.SEE);
    config.routes.get("/plan.json", plans::json, Access.SEE);
    config.routes.get("/plan.pdf", plans::pdf, Access.SEE);
    config.routes.get("/plan.txt", plans::text, Access.SEE);
    kept.routes(config);
    whatIf.routes(config);
    config.routes.post("/api/plan", plans::api, Access.PLAN_API);
    reference.routes(config);
    drawer.routes(config);
    items.routes(config);
    lists.routes(config);
    settings.routes(config);
    round.routes(config);
    chairside.routes(config);
    config.routes.get(
        "/chairside/worker.js", call -> assets.serve(call, "chair-worker.js"), Access.OPEN);
    around.routes(config);
    learner.routes(config);
    teach.routes(config);
    people.routes(config);
    config.routes.get("/static/arch.css", Assets::arch, Access.OPEN);
    config.routes.get("/static/{name}", assets::serve, Access.OPEN);
  }

  private void failures(JavalinConfig config) {
    config.routes.exception(
        HttpResponseException.class,
        (failure, call) -> problem(call, failure.getStatus(), failure.getMessage()));
    config.routes.exception(
        CancellationException.class, (gone, call) -> call.status(HttpStatus.SERVICE_UNAVAILABLE));
    config.routes.exception(
        Exception.class,
        (failure, call) -> {
          LOG.error("{} {} failed {}", call.method(), call.path(), Trace.of(failure));
          Optional<StorageFault> storage = StorageFault.of(failure);
          if (storage.isPresent()) {
            storageProblem(call, storage.get(), StorageFault.place(failure));
          } else {
            problem(call, 500, null);
          }
        });
    config.routes.error(404, "*", call -> problem(call, 404, null));
  }

  /** Said without asking the database for the language: it may be what is away. */
  private static void storageProblem(Context call, StorageFault fault, String place) {
    String accepted = call.header("Accept-Language");
    Say say = Say.in(Language.preferred(accepted == null ? "" : accepted));
    call.status(HttpStatus.SERVICE_UNAVAILABLE);
    call.html(
        Templates.render(
            say, "problem.jte", Map.of("status", 503, "words", fault.words(), "detail", place)));
  }

  private void problem(Context call, int status, @Nullable String detail) {
    String words =
        switch (status) {
          case 403 ->
              "start".equals(detail)
                  ? "signin.needs-address"
                  : "role".equals(detail) ? "signin.not-allowed" : "page.problem-403";
          case 404, 413, 500, 503 -> "page.problem-" + status;
          default -> "page.problem-other";
        };
    call.status(status);
    Say say = templates.say(call);
    String why = "signin.refused-" + detail;
    String told = detail == null ? "" : say.has(why) ? say.at(why) : detail;
    templates.html(call, "problem.jte", Map.of("status", status, "words", words, "detail", told));
  }
}
