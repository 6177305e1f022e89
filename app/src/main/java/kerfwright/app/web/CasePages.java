package kerfwright.app.web;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.app.Wiring;
import kerfwright.app.feature.Feature;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.app.web.caseform.CaseChoices;
import kerfwright.app.web.caseform.CaseForm;
import kerfwright.app.web.caseform.FilledForm;
import kerfwright.app.web.caseform.FormFaults;
import kerfwright.app.web.caseform.FormFix;
import kerfwright.app.web.caseform.Prefill;
import kerfwright.practice.setting.CaseSetting;
import kerfwright.practice.setting.Settings;
import kerfwright.quantity.Message;

/** The form of a new case; it works by plain links and buttons, script only makes it quicker. */
final class CasePages implements Feature {
  private final Wiring wiring;
  private final Settings settings;
  private final Templates templates;
  private final Prefill prefill;

  CasePages(Wiring wiring, Settings settings, Templates templates) {
    this.wiring = wiring;
    this.settings = settings;
    this.templates = templates;
    this.prefill = new Prefill(wiring.cases());
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/case", this::form, Access.SEE);
  }

  @Override
  public List<String> pages() {
    return List.of("/case");
  }

  private void form(Context call) {
    Map<String, List<String>> sent = call.queryParamMap();
    CaseForm form =
        sent.isEmpty()
            ? FilledForm.fresh(wiring.cases(), CaseSetting.of(settings.read()))
            : CaseForm.of(sent);
    CaseForm changed = prefill.of(changed(form));
    boolean open = form.value("procedure").isEmpty() || form.tooth().isEmpty();
    List<Fault> faults =
        form.value("do").equals("usual-layers") && open
            ? List.of(new Fault("case", 0, "layers", Message.of("fault.tooth-and-procedure"), null))
            : List.of();
    if (call.header("HX-Request") != null) {
      // the plan beside the form follows what was just exchanged
      call.header("HX-Trigger-After-Settle", "layers-changed");
    }
    show(call, changed, faults);
  }

  private void show(Context call, CaseForm form, List<Fault> faults) {
    CaseChoices choices = CaseChoices.of(templates.say(call), wiring.cases());
    templates.html(
        call,
        "case.jte",
        Map.of(
            "form",
            form,
            "choices",
            choices,
            "faults",
            FormFaults.of(templates.say(call), form, faults)));
  }

  private static CaseForm changed(CaseForm form) {
    String wanted = form.value("do");
    if (wanted.equals("add-layer")) {
      List<CaseForm.LayerRow> rows = new ArrayList<>(form.rows());
      rows.add(new CaseForm.LayerRow(rows.size(), "", "", "", "", ""));
      return form.withRows(rows);
    }
    if (wanted.startsWith("remove-layer-")) {
      List<CaseForm.LayerRow> rows = new ArrayList<>(form.rows());
      rows.removeIf(row -> wanted.equals("remove-layer-" + row.index()));
      return form.withRows(rows);
    }
    if (wanted.equals("usual-layers")) {
      return form.withRows(List.of()).with("outline_length_mm", "").with("outline_width_mm", "");
    }
    return wanted.startsWith("fix-") ? FormFix.of(form, wanted.substring(4)) : form;
  }

  /** Renders the form again with what stands against it; nothing typed is lost. */
  void refused(Context call, CaseForm form, BadInput bad) {
    call.status(422);
    show(call, prefill.of(form), bad.faults());
  }
}
