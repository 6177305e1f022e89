package kerfwright.app.web;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.feature.Feature;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Bounds;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Fields;
import kerfwright.app.input.Node;
import kerfwright.app.input.SourceText;
import kerfwright.app.input.TreeReader;
import kerfwright.app.kept.KeptService;
import kerfwright.app.plan.PlanJson;
import kerfwright.app.plan.PlanText;
import kerfwright.app.print.PlanCard;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.app.web.caseform.CaseForm;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.plan.CutPlan;
import kerfwright.practice.daylist.PieceCount;
import kerfwright.practice.daylist.PieceNeed;
import kerfwright.quantity.Message;

/** The plan of a case as page, fragment, card and JSON. */
final class PlanPages implements Feature {
  private final PlanService service;
  private final CasePages cases;
  private final Templates templates;
  private final KeptService kept;

  PlanPages(PlanService service, CasePages cases, KeptService kept, Templates templates) {
    this.kept = kept;
    this.service = service;
    this.cases = cases;
    this.templates = templates;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/plan", this::page, Access.SEE);
    config.routes.post("/plan", this::keep, Access.WORK);
    config.routes.get("/plan/preview", this::preview, Access.SEE);
    config.routes.get("/plan.json", this::json, Access.SEE);
    config.routes.get("/plan.pdf", this::pdf, Access.SEE);
    config.routes.get("/plan.txt", this::text, Access.SEE);
    config.routes.post("/api/plan", this::api, Access.PLAN_API);
  }

  @Override
  public List<String> pages() {
    return kept.newest().map(one -> List.of("/plan?" + one.form())).orElse(List.of());
  }

  private void page(Context call) {
    CaseForm form = CaseForm.of(call.queryParamMap());
    if (call.queryParamMap().isEmpty()) {
      call.redirect("/case");
      return;
    }
    try {
      CutPlan plan = service.plan(service.read(form.toNode()));
      Map<String, Object> values = new HashMap<>(Map.of("plan", plan, "form", form));
      values.put(
          "missing",
          plan.refused()
              ? Missing.of(templates.say(call), service, plan.cutCase())
              : List.<Missing>of());
      values.put("beside", PieceCount.of(List.of(PieceNeed.of(plan)), service.drawer()));
      values.put("kept", kept.of(plan.cutCase()).orElse(null));
      templates.html(call, "plan.jte", values);
    } catch (BadInput bad) {
      cases.refused(call, form, bad);
    }
  }

  /** Plans a case and keeps it; the plan's own address can be linked to and reloaded. */
  private void keep(Context call) {
    CaseForm form = CaseForm.of(call.formParamMap());
    try {
      kept.keep(service.plan(service.read(form.toNode())), form.query());
      call.redirect("/plan?" + form.query(), HttpStatus.SEE_OTHER);
    } catch (BadInput bad) {
      cases.refused(call, form, bad);
    }
  }

  /** The plan in short, beside the form; says calmly what is still missing. */
  private void preview(Context call) {
    CaseForm form = CaseForm.of(call.queryParamMap());
    PlanPreview preview;
    try {
      preview = PlanPreview.of(service.look(service.read(form.toNode())));
    } catch (BadInput bad) {
      preview = PlanPreview.of(templates.say(call), form, bad.faults());
    }
    templates.html(call, "preview.jte", Map.of("preview", preview, "form", form));
  }

  private void json(Context call) {
    try {
      CaseForm form = CaseForm.of(call.queryParamMap());
      CutPlan plan = service.plan(service.read(form.toNode()));
      json(call, plan);
    } catch (BadInput bad) {
      ApiFaults.answer(call, bad);
    }
  }

  /** The plan as text, for the chart. */
  private void text(Context call) {
    CaseForm form = CaseForm.of(call.queryParamMap());
    try {
      CutPlan plan = service.plan(service.read(form.toNode()));
      call.contentType("text/plain; charset=utf-8").result(PlanText.of(templates.say(call), plan));
    } catch (BadInput bad) {
      cases.refused(call, form, bad);
    }
  }

  private void pdf(Context call) {
    CaseForm form = CaseForm.of(call.queryParamMap());
    try {
      CutPlan plan = service.plan(service.read(form.toNode()));
      if (plan.refused()) {
        call.redirect("/plan?" + form.query());
        return;
      }
      String name = plan.cutCase().reference().replaceAll("[^A-Za-z0-9._-]", "-");
      call.contentType("application/pdf")
          .header("Content-Disposition", "inline; filename=\"cut-plan-" + name + ".pdf\"")
          .result(PlanCard.pdf(templates.say(call), plan));
    } catch (BadInput bad) {
      cases.refused(call, form, bad);
    }
  }

  /** The case file as JSON in, the plan as JSON out; {@code ?samples=} and {@code ?seed=}. */
  private void api(Context call) throws IOException {
    try {
      SourceText source = SourceText.of("request", new ByteArrayInputStream(call.bodyAsBytes()));
      CutCase cutCase = service.read(TreeReader.json(source));
      int samples = (int) whole(call, "samples", PlanService.SAMPLES, 100_000);
      long seed = whole(call, "seed", PlanService.SEED, 1_000_000_000_000L);
      json(call, service.plan(cutCase, samples, seed));
    } catch (BadInput bad) {
      ApiFaults.answer(call, bad);
    }
  }

  private static long whole(Context call, String name, long otherwise, long most) throws BadInput {
    String text = call.queryParam(name);
    if (text == null) {
      return otherwise;
    }
    Faults faults = new Faults("query");
    Node node = new Node.Scalar(text, Node.Scalar.Kind.TEXT, 0);
    Double value = Fields.number(name, node, Bounds.from(1, most, ""), faults);
    if (value != null && value != Math.rint(value)) {
      faults.add(0, name, Message.of("fault.whole", node.found()));
    }
    faults.throwIfAny();
    return value == null ? otherwise : value.longValue();
  }

  private static void json(Context call, CutPlan plan) {
    call.contentType("application/json; charset=utf-8").result(PlanJson.text(plan));
  }
}
