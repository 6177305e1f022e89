package kerfwright.app.kept;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kerfwright.app.chairside.QueryFields;
import kerfwright.app.chairside.RunPlans;
import kerfwright.app.drawing.strip.LayerStrip;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
import kerfwright.app.input.BadInput;
import kerfwright.app.plan.PlanDrawings;
import kerfwright.app.security.Access;
import kerfwright.app.storage.cases.CutRuns;
import kerfwright.app.template.Templates;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.planner.plan.CutPlan;
import kerfwright.practice.chairside.CutRun;
import kerfwright.practice.kept.KeptCase;
import kerfwright.practice.record.CutRecord;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.record.RecordQuery;
import org.jspecify.annotations.Nullable;

/** The kept cases: searched, and one of them with its plan, its runs and its changes. */
public final class KeptPages implements Feature {
  private static final int MOST_ENTRIES = 100;

  /**
   * What the pages work with.
   *
   * @param service the kept cases
   * @param plans reads and plans a case
   * @param record the uses
   * @param runs the runs at the chair
   */
  public record Parts(KeptService service, RunPlans plans, CutRecord record, CutRuns runs) {}

  private final Parts with;
  private final Templates templates;
  private final Clock clock;

  public KeptPages(Parts with, Templates templates, Clock clock) {
    this.with = with;
    this.templates = templates;
    this.clock = clock;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/cases", this::list, Access.CASES);
    config.routes.get("/cases/{id}", this::page, Access.CASES);
  }

  @Override
  public List<String> pages() {
    return Stream.concat(
            Stream.of("/cases"), with.service().newest().map(one -> "/cases/" + one.id()).stream())
        .toList();
  }

  private void list(Context call) {
    KeptSearch search = KeptSearch.of(call::queryParam, templates.say(call), clock.getZone());
    List<KeptCase> found = with.service().cases().list(search.query());
    templates.html(call, "kept/list.jte", Map.of("search", search, "found", found));
  }

  private void page(Context call) {
    KeptCase kept =
        Sent.id(call.pathParam("id"))
            .flatMap(with.service().cases()::find)
            .orElseThrow(NotFoundResponse::new);
    List<RecordEntry> uses = uses(with.record(), kept.reference(), kept.tooth());
    Map<String, Object> values = new HashMap<>();
    values.put("kept", kept);
    values.put("changes", KeptChange.of(with.service().cases().versions(kept.id())));
    values.put("uses", uses);
    List<CutRun> runs = with.runs().of(kept.reference(), kept.tooth());
    values.put("runs", runs);
    values.put(
        "events", runs.stream().flatMap(run -> with.runs().events(run.id()).stream()).toList());
    values.put("picture", picture(call, kept));
    values.put("today", LocalDate.now(clock));
    values.put("fields", QueryFields.of(kept.form()));
    values.put("copy", withoutReference(kept.form()));
    templates.html(call, "kept/case.jte", values);
  }

  /** What the record has of a run, corrections applied. */
  public static List<RecordEntry> uses(CutRecord record, CutRun run) {
    return uses(record, run.caseReference(), run.tooth()).stream()
        .filter(one -> one.use().step() != null && run.planName().equals(one.use().step().plan()))
        .toList();
  }

  private static List<RecordEntry> uses(CutRecord record, String reference, Tooth tooth) {
    return record.holding(
        record.list(new RecordQuery(reference, tooth, null, null, null, null, null, MOST_ENTRIES)));
  }

  /** The picture as it would be cut with the drawer of today; null where that is refused. */
  private @Nullable LayerStrip picture(Context call, KeptCase kept) {
    try {
      CutPlan plan = with.plans().plan(with.plans().read(QueryFields.of(kept.form())));
      return plan.refused()
          ? null
          : PlanDrawings.strip(templates.say(call), plan, LayerStrip.Place.PAGE);
    } catch (BadInput noLongerRead) {
      return null;
    }
  }

  private static String withoutReference(String form) {
    return form.replaceAll("(^|&)case=[^&]*", "").replaceAll("^&", "");
  }
}
