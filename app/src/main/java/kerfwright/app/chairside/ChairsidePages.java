package kerfwright.app.chairside;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.JavalinConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Remembered;
import kerfwright.app.form.Sent;
import kerfwright.app.input.BadInput;
import kerfwright.app.security.Access;
import kerfwright.app.security.Signed;
import kerfwright.app.storage.StoredDocument;
import kerfwright.app.storage.cases.CutRuns;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.plan.CutPlan;
import kerfwright.practice.chairside.CutRun;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.record.CutUse;
import kerfwright.practice.record.PlanStep;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.setting.Person;
import kerfwright.practice.setting.Settings;

/** The chair: cautions first, then one step a screen; entries and swaps come back as JSON. */
public final class ChairsidePages implements Feature {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String BY = "by";
  private static final Duration A_YEAR = Duration.ofDays(365);
  private static final int RECENT = 8;

  /**
   * What the chair works with.
   *
   * @param plans reads and plans the case
   * @param runs keeps runs
   * @param drawer the stock
   * @param reports takes log entries
   * @param uses what the record has of a run
   * @param settings people of the practice
   * @param ids fresh ids
   * @param clock the time
   * @param laidOut ids of the pieces that lie on the trays of a case
   */
  public record Parts(
      RunPlans plans,
      CutRuns runs,
      Drawer drawer,
      ChairReports reports,
      Function<CutRun, List<RecordEntry>> uses,
      Settings settings,
      Supplier<UUID> ids,
      Clock clock,
      Function<String, Set<UUID>> laidOut) {}

  private final Parts with;
  private final Templates templates;

  public ChairsidePages(Parts with, Templates templates) {
    this.with = with;
    this.templates = templates;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/chairside", this::start, Access.CASES);
    config.routes.post("/chairside", this::begin, Access.WORK);
    config.routes.get("/chairside/run/{id}", this::run, Access.CASES);
    config.routes.post("/chairside/run/{id}/swap", this::swap, Access.WORK);
    config.routes.post("/chairside/log", this::log, Access.WORK);
  }

  @Override
  public List<String> pages() {
    return List.of("/chairside");
  }

  /** The cautions of a plan, to be read before it is begun; without a case, the runs begun last. */
  private void start(Context call) {
    Map<String, List<String>> fields = call.queryParamMap();
    if (fields.isEmpty()) {
      templates.html(call, "chairside/runs.jte", Map.of("runs", with.runs().newest(RECENT)));
      return;
    }
    show(call, fields, String.valueOf(call.queryString()), "");
  }

  private void show(Context call, Map<String, List<String>> fields, String query, String fault) {
    try {
      CutPlan plan = with.plans().plan(with.plans().read(fields));
      templates.html(
          call,
          "chairside/start.jte",
          Map.of(
              "plan", plan,
              "handpieces", handpieces(plan),
              "asked", asked(call, plan),
              "query", query,
              "people", Sent.people(call, Person.all(with.settings().read())),
              "by", Signed.initials(call).orElse(Remembered.of(call, BY)),
              "fault", fault));
    } catch (BadInput bad) {
      call.redirect("/case?" + query);
    }
  }

  private ChairHandpieces handpieces(CutPlan plan) {
    CutCase c = plan.cutCase();
    return ChairHandpieces.of(c.handpieces(), with.drawer(), with.laidOut().apply(c.reference()));
  }

  private static String askedFor(Context call, String kind) {
    return Sent.text(call, "handpiece-" + kind);
  }

  private static Map<String, String> asked(Context call, CutPlan plan) {
    Map<String, String> asked = new HashMap<>();
    ChairHandpieces.kinds(plan).forEach(kind -> asked.put(kind, askedFor(call, kind)));
    return asked;
  }

  private void begin(Context call) {
    String query = Sent.text(call, "query");
    Map<String, List<String>> fields = QueryFields.of(query);
    String by = Signed.initials(call).orElse(Sent.text(call, BY).toUpperCase(Locale.ROOT));
    String fault =
        !CutUse.areInitials(by)
            ? "chairside.initials-needed"
            : Sent.text(call, "read").isEmpty() ? "chairside.cautions-not-read" : "";
    if (!fault.isEmpty()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(call, fields, query, fault);
      return;
    }
    CutPlan plan;
    try {
      plan = with.plans().plan(with.plans().read(fields));
    } catch (BadInput bad) {
      call.redirect("/case?" + query);
      return;
    }
    if (plan.refused()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(call, fields, query, "");
      return;
    }
    if (Signed.in(call).isEmpty()) {
      Remembered.keep(call, BY, by, A_YEAR);
    }
    Say say = templates.say(call);
    ObjectNode sheet =
        new RunSheet(say, ChairStock.of(with.drawer(), Set.of()))
            .json(plan, query, handpieces(plan).json(kind -> askedFor(call, kind)));
    CutRun run =
        new CutRun(
            with.ids().get(),
            1,
            plan.cutCase().reference(),
            plan.cutCase().tooth(),
            with.clock().instant().truncatedTo(ChronoUnit.MICROS),
            by,
            StoredDocument.SHEET.text(sheet));
    with.runs().begin(run);
    call.redirect("/chairside/run/" + run.id(), HttpStatus.SEE_OTHER);
  }

  private void run(Context call) {
    CutRun run = known(call);
    templates.html(
        call,
        "chairside/stage.jte",
        Map.of(
            "run", run,
            "people", Sent.people(call, Person.all(with.settings().read())),
            "signed", Signed.initials(call).orElse(""),
            "done", done(run),
            "events", with.runs().events(run.id())));
  }

  /** The steps the record has, for a device that did not log them. */
  private String done(CutRun run) {
    ArrayNode all = JSON.createArrayNode();
    for (RecordEntry entry : with.uses().apply(run)) {
      PlanStep step = entry.use().step();
      if (step != null) {
        Double seconds = entry.use().cut().totalSeconds();
        all.addObject()
            .put("order", step.order())
            .put("entry", entry.id().toString())
            .put("item", String.valueOf(entry.use().instrument().id()))
            .put("handpiece", handpiece(entry.use()))
            .put("spentMs", seconds == null ? 0 : Math.round(seconds * 1000));
      }
    }
    return all.toString();
  }

  /** As the sheet names it: a piece given off a lot by its lot. */
  private static String handpiece(CutUse use) {
    CutUse.Piece piece = use.handpiece();
    UUID lot = piece == null ? null : piece.used().pieceOf();
    return piece == null ? "" : (lot == null ? piece.used().id() : lot).toString();
  }

  /** Plans the rest with another instrument in a step; the client keeps what it has done. */
  private void swap(Context call) {
    CutRun run = known(call);
    Say say = templates.say(call);
    Swap swap = Swap.of(json(call));
    try {
      ObjectNode answer = new SwapService(with, say).answer(run, swap);
      call.contentType("application/json; charset=utf-8").result(answer.toString());
    } catch (BadInput bad) {
      throw new BadRequestResponse();
    }
  }

  private void log(Context call) {
    JsonNode sent = json(call);
    if (!(sent instanceof ArrayNode) || sent.size() > ChairReports.MOST) {
      throw new BadRequestResponse();
    }
    ArrayNode answers = with.reports().take(sent, Signed.initials(call), templates.say(call));
    call.contentType("application/json; charset=utf-8").result(answers.toString());
  }

  private CutRun known(Context call) {
    try {
      return with.runs()
          .find(UUID.fromString(call.pathParam("id")))
          .orElseThrow(NotFoundResponse::new);
    } catch (IllegalArgumentException none) {
      throw new NotFoundResponse();
    }
  }

  private static JsonNode json(Context call) {
    try {
      return JSON.readTree(call.body());
    } catch (JsonProcessingException unreadable) {
      throw new BadRequestResponse();
    }
  }
}
