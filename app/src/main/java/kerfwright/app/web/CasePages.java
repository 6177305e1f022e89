package kerfwright.app.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseCatalogue;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.input.Node;
import kerfwright.app.template.Templates;
import kerfwright.catalogue.stack.UsualStack;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.planner.casework.Procedure;
import kerfwright.practice.setting.CaseSetting;
import kerfwright.practice.setting.Settings;
import kerfwright.quantity.Message;

/** The form of a new case; it works by plain links and buttons, script only makes it quicker. */
final class CasePages {
  private final Wiring wiring;
  private final Settings settings;
  private final Templates templates;

  CasePages(Wiring wiring, Settings settings, Templates templates) {
    this.wiring = wiring;
    this.settings = settings;
    this.templates = templates;
  }

  void form(Context call) {
    Map<String, List<String>> sent = call.queryParamMap();
    CaseForm form =
        sent.isEmpty()
            ? FilledForm.fresh(wiring.cases(), CaseSetting.of(settings.read()))
            : CaseForm.of(sent);
    List<Fault> faults = new ArrayList<>();
    CaseForm changed = changed(form, faults);
    if (call.header("HX-Request") != null) {
      // the plan beside the form follows the layers that were just exchanged
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

  private CaseForm changed(CaseForm form, List<Fault> faults) {
    String wanted = form.value("do");
    if (wanted.equals("add-layer")) {
      List<CaseForm.LayerRow> rows = new ArrayList<>(form.rows());
      rows.add(new CaseForm.LayerRow(rows.size(), "", "", "", ""));
      return form.withRows(rows);
    }
    if (wanted.startsWith("remove-layer-")) {
      List<CaseForm.LayerRow> rows = new ArrayList<>(form.rows());
      rows.removeIf(row -> wanted.equals("remove-layer-" + row.index()));
      return form.withRows(rows);
    }
    if (wanted.equals("usual-layers")) {
      return withUsualLayers(form, faults);
    }
    return form;
  }

  private CaseForm withUsualLayers(CaseForm form, List<Fault> faults) {
    CaseCatalogue catalogue = wiring.cases();
    Tooth tooth = null;
    if (TypedTooth.node(form) instanceof Node.Mapping typed) {
      for (var entry : typed.entries().entrySet()) {
        if (entry.getValue().value() instanceof Node.Scalar text) {
          tooth = catalogue.tooth(entry.getKey(), text.text()).orElse(null);
        }
      }
    }
    Procedure procedure = null;
    for (Procedure one : Procedure.all()) {
      if (one.id().equals(form.value("procedure"))) {
        procedure = one;
      }
    }
    if (tooth == null || procedure == null) {
      faults.add(new Fault("case", 0, "layers", Message.of("fault.tooth-and-procedure"), null));
      return form;
    }
    String restoration = form.value("restoration");
    if (!restoration.isEmpty()
        && catalogue.restorations().stream().noneMatch(one -> one.id().equals(restoration))) {
      return form;
    }
    UsualStack usual =
        catalogue
            .usualStack(tooth, procedure, restoration.isEmpty() ? null : restoration)
            .orElse(null);
    if (usual == null) {
      Message none = Message.of("fault.no-usual-stack");
      faults.add(new Fault("case", 0, "layers", none, null));
      return form;
    }
    for (int i = 0; i < usual.layers().size(); i++) {
      if (usual.layers().get(i).missing()) {
        Message note =
            Message.of(
                "fault.no-usual-thickness",
                Message.ofProse("stack.", usual.layers().get(i).note()));
        faults.add(new Fault("case", 0, "layers[" + i + "]", note, null));
      }
    }
    return form.withRows(FilledForm.rows(usual));
  }

  /** Renders the form again with what stands against it; nothing typed is lost. */
  void refused(Context call, CaseForm form, BadInput bad) {
    call.status(422);
    show(call, form, bad.faults());
  }
}
