package kerfwright.app.record;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.security.Signed;
import kerfwright.app.template.Templates;
import kerfwright.catalogue.material.Materials;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.record.CutUse;
import kerfwright.practice.record.Logged;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.record.RecordService;
import kerfwright.practice.record.UseReport;
import kerfwright.practice.setting.Person;
import kerfwright.practice.setting.Settings;
import org.jspecify.annotations.Nullable;

/** A use entered free, without a plan, and corrections. */
public final class EntryPages implements Feature {
  private final RecordService service;
  private final Drawer drawer;
  private final Settings settings;
  private final Templates templates;
  private final Clock clock;

  public EntryPages(
      RecordService service, Drawer drawer, Settings settings, Templates templates, Clock clock) {
    this.service = service;
    this.drawer = drawer;
    this.settings = settings;
    this.templates = templates;
    this.clock = clock;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/records/new", this::blank, Access.WORK);
    config.routes.post("/records/new", this::add, Access.WORK);
    config.routes.get("/records/{id}/correct", this::correction, Access.CORRECT);
    config.routes.post("/records/{id}/correct", this::correct, Access.CORRECT);
  }

  @Override
  public List<String> pages() {
    return List.of("/records/new");
  }

  private void show(Context call, EntryForm form, String fault, @Nullable RecordEntry wrong) {
    Map<String, Object> values = new HashMap<>();
    values.put("form", form);
    values.put("fault", fault);
    values.put("wrong", wrong);
    values.put("people", Sent.people(call, Person.all(settings.read())));
    values.put("materials", Materials.packaged().all());
    values.put("reason", Sent.text(call, "reason"));
    values.put("corrector", Signed.initials(call).orElse(Sent.text(call, "corrector")));
    values.put("struck", "yes".equals(call.formParam("struck")));
    templates.html(call, "record/form.jte", values);
  }

  private void blank(Context call) {
    String by = Sent.lastBy(call);
    EntryForm form = EntryForm.blank(service.newId(), by, clock.instant(), clock.getZone());
    String label = call.queryParam("instrument");
    if (label != null) {
      form.values().put("instrument", label);
    }
    show(call, form, "", null);
  }

  private void add(Context call) {
    EntryForm form = EntryForm.of(call::formParam);
    form.values().put("by", Sent.by(call));
    Map<String, String> wrong = new LinkedHashMap<>();
    Optional<UseReport> report =
        form.report(templates.say(call), drawer, clock.getZone(), null, wrong);
    if (report.isEmpty()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(call, form.with(wrong), "", null);
      return;
    }
    answer(call, service.log(report.get()), form, null);
  }

  private void answer(
      Context call, Logged logged, EntryForm form, @Nullable RecordEntry corrected) {
    RecordEntry entry = logged.entry();
    if (entry != null) {
      call.redirect("/records/" + entry.id() + "?written=1", HttpStatus.SEE_OTHER);
      return;
    }
    Logged.Refusal refusal = logged.refusal();
    call.status(HttpStatus.CONFLICT);
    show(
        call,
        form,
        refusal == null ? "" : RecordWords.refusal(templates.say(call), refusal),
        corrected);
  }

  private void correction(Context call) {
    RecordEntry entry = RecordPages.known(service.record(), call);
    show(
        call,
        EntryForm.of(entry, service.newId(), templates.say(call), clock.getZone()),
        "",
        entry);
  }

  private void correct(Context call) {
    RecordEntry entry = RecordPages.known(service.record(), call);
    EntryForm form = EntryForm.of(call::formParam);
    Map<String, String> wrong = new LinkedHashMap<>();
    String reason = Sent.text(call, "reason");
    String by = Sent.by(call, "corrector");
    // a correction says who corrects; who did what is corrected stays
    Signed.in(call).ifPresent(any -> form.values().put("by", entry.use().by()));
    boolean struck = "yes".equals(call.formParam("struck"));
    if (reason.isEmpty() || reason.length() > 400) {
      wrong.put("reason", "record.fault-reason");
    }
    if (!CutUse.areInitials(by)) {
      wrong.put("corrector", "record.fault-by");
    }
    UUID id = Sent.id(form.at("id")).orElse(null);
    Optional<UseReport> report =
        struck
            ? Optional.empty()
            : form.report(templates.say(call), drawer, clock.getZone(), entry, wrong);
    if (!wrong.isEmpty() || id == null) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(call, form.with(wrong), "", entry);
      return;
    }
    Logged logged =
        report.isPresent()
            ? service.correct(entry.id(), report.get(), by, reason)
            : service.strike(entry.id(), id, by, reason);
    answer(call, logged, form, entry);
  }
}
