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
import kerfwright.app.feature.Feature;
import kerfwright.app.feature.Notice;
import kerfwright.app.kept.KeptPages;
import kerfwright.app.kept.KeptService;
import kerfwright.app.learner.LearnerPages;
import kerfwright.app.network.Network;
import kerfwright.app.setting.SettingPages;
import kerfwright.app.storage.Newest;
import kerfwright.app.storage.StorageFault;
import kerfwright.app.teaching.TeachFeature;
import kerfwright.app.template.Templates;
import kerfwright.app.today.CaseLink;
import kerfwright.app.today.ClockNotices;
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
  private final PeopleFeature people;
  private final List<Feature> features;

  WebServer(
      Wiring wiring, OpenPractice open, List<CutCase> examples, boolean demo, Entrance entrance) {
    Clock clock = open.clock();
    PlanService service = new PlanService(wiring, open.service().drawer(), open.learning());
    this.templates =
        new Templates(
            open.settings(),
            new OpenWarning(entrance.doors(), new BackupWarning(open.backups(), open.watch())));
    this.people = new PeopleFeature(open, entrance, templates, clock);
    Assets assets = new Assets();
    DayFeature day =
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
            clock);
    KeptService kept = new KeptService(open.keptCases(), open.service()::newId, clock);
    if (demo) {
      examples.forEach(one -> kept.keep(one, FilledForm.of(one).query()));
    }
    TodayPages today =
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
                this::notices,
                () -> open.record().record().end(),
                new ClockNotices(() -> Newest.time(open.database()), clock)),
            templates,
            clock);
    CasePages cases = new CasePages(wiring, open.settings(), templates);
    this.features =
        List.of(
            today,
            day,
            cases,
            new PlanPages(service, cases, kept, templates),
            new KeptPages(
                new KeptPages.Parts(kept, service.runs(), open.record().record(), open.runs()),
                templates,
                clock),
            new WhatIfPages(service, templates),
            new ReferencePages(service, templates),
            new DrawerPages(open.service(), templates, demo),
            new ItemPages(open.service(), open.packages(), templates, clock),
            new ImportPages(open.service(), open.drafts(), templates),
            new SettingPages(open.settings(), templates),
            InstrumentCyclePages.of(open, day::loadsChanged, templates, clock),
            new ChairsidePages(
                new ChairsidePages.Parts(
                    service.runs(),
                    open.runs(),
                    open.service().drawer(),
                    new ChairReports(
                        open.record()::log, new EventReports(open.runs()::add, open.service())),
                    run -> KeptPages.uses(open.record().record(), run),
                    open.settings(),
                    open.service()::newId,
                    clock,
                    day::laidOut),
                templates),
            StockPages.of(open, templates, clock),
            new LearnerPages(
                wiring,
                new LearnerPages.Parts(
                    open.lessons(),
                    open.service()::newId,
                    clock,
                    LearnerPages::networkAddress,
                    assets::serve),
                templates),
            TeachFeature.of(
                new TeachFeature.Parts(
                    service, open.keptCases(), open.handouts(), open.service()::newId),
                templates,
                clock),
            people,
            assets);
  }

  private List<Notice> notices(Say say) {
    return features.stream().flatMap(one -> one.notices(say).stream()).toList();
  }

  /** Addresses of pages as they are now, of every feature. */
  List<String> pages() {
    return features.stream().flatMap(one -> one.pages().stream()).toList();
  }

  /** A server ready to start. */
  Javalin create(OpenPractice open, Entrance entrance) {
    return Javalin.create(
        config -> {
          config.startup.showJavalinBanner = false;
          config.startup.startupWatcherEnabled = false;
          config.jetty.port = entrance.port();
          people.gate().install(config);
          listen(config, entrance);
          config.routes.before(Caller::is);
          config.routes.beforeMatched(call -> refuseToWrite(call, open.watch()));
          features.forEach(one -> one.routes(config));
          failures(config);
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
