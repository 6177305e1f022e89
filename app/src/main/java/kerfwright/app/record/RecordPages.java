package kerfwright.app.record;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.storage.cases.KeptCases;
import kerfwright.app.template.Templates;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.kept.KeptCaseQuery;
import kerfwright.practice.record.CanonicalText;
import kerfwright.practice.record.Chain;
import kerfwright.practice.record.CutRecord;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.record.RecordQuery;
import kerfwright.practice.reprocessing.Loads;

/** The record: searched both ways, an entry looked at, the chain verified. */
public final class RecordPages implements Feature {
  private final CutRecord record;
  private final KeptCases cases;
  private final Drawer drawer;
  private final Loads loads;
  private final Templates templates;
  private final Clock clock;
  private final Verification verification;

  public RecordPages(
      CutRecord record,
      KeptCases cases,
      Drawer drawer,
      Loads loads,
      Templates templates,
      Clock clock) {
    this.record = record;
    this.cases = cases;
    this.drawer = drawer;
    this.loads = loads;
    this.templates = templates;
    this.clock = clock;
    this.verification = new Verification(record, clock);
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/records", this::search, Access.CASES);
    config.routes.post("/records/verify", this::verify, Access.CASES);
    config.routes.get("/records/verify", this::verified, Access.CASES);
    config.routes.get("/records/{id}", this::entry, Access.CASES);
  }

  @Override
  public List<String> pages() {
    return List.of("/records", "/records/verify");
  }

  private void search(Context call) {
    RecordSearch search =
        RecordSearch.of(call::queryParam, templates.say(call), drawer, loads, clock.getZone());
    RecordQuery query = search.query();
    Map<String, Object> values = new HashMap<>();
    values.put("search", search);
    values.put(
        "found", query == null ? new Found(List.of(), Map.of(), null) : Found.of(record, query));
    values.put("entries", record.end().number());
    templates.html(call, "record/list.jte", values);
  }

  /** The entry an address names. */
  static RecordEntry known(CutRecord record, Context call) {
    return Sent.id(call.pathParam("id")).flatMap(record::find).orElseThrow(NotFoundResponse::new);
  }

  private void entry(Context call) {
    RecordEntry entry = known(record, call);
    String before =
        entry.number() == 1
            ? Chain.EMPTY.hash()
            : record.at(entry.number() - 1).map(RecordEntry::hash).orElse("");
    Map<String, Object> values = new HashMap<>();
    values.put("entry", entry);
    values.put("before", before);
    values.put(
        "cases", cases.list(KeptCaseQuery.of(entry.use().caseReference(), entry.use().tooth())));
    values.put("text", CanonicalText.of(entry));
    values.put("correction", record.correctionsOf(List.of(entry.id())).get(entry.id()));
    values.put("written", call.queryParam("written") != null);
    templates.html(call, "record/entry.jte", values);
  }

  private void verify(Context call) {
    verification.start();
    call.redirect("/records/verify", HttpStatus.SEE_OTHER);
  }

  private void verified(Context call) {
    Verification.Progress progress = verification.progress();
    if (progress.running()) {
      call.header("Refresh", "1");
    }
    templates.html(call, "record/verify.jte", Map.of("progress", progress));
  }
}
