package kerfwright.app.web;

import java.util.List;
import kerfwright.app.input.Fault;
import kerfwright.app.web.caseform.CaseForm;
import kerfwright.app.web.caseform.FormFaults;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.CutPlan;
import org.jspecify.annotations.Nullable;

/**
 * What stands beside the form while it is filled in.
 *
 * @param plan the plan, or null while the form does not give one
 * @param wanted fields still empty, in words
 * @param faults what was typed wrongly
 */
public record PlanPreview(@Nullable CutPlan plan, List<String> wanted, FormFaults faults) {
  static PlanPreview of(CutPlan plan) {
    return new PlanPreview(plan, List.of(), FormFaults.nothing());
  }

  static PlanPreview of(Say say, CaseForm form, List<Fault> faults) {
    List<String> wanted =
        faults.stream()
            .filter(Fault::missing)
            .map(fault -> words(say, fault.field()))
            .distinct()
            .toList();
    // nobody is scolded for what is not filled in yet, unless the plan was asked for
    boolean asked = form.chosen("asked", "1");
    List<Fault> wrong = faults.stream().filter(fault -> asked || !fault.missing()).toList();
    return new PlanPreview(null, wanted, FormFaults.of(say, form, wrong));
  }

  private static String words(Say say, String field) {
    if (field.startsWith("layers[")) {
      return say.at("case.wanted-layer", layerNumber(field));
    }
    return switch (field) {
      case "coolant_ml_per_min" -> say.at("case.wanted-water");
      case "outline.length_mm", "outline.diameter_mm" -> say.at("case.wanted-outline-length");
      case "outline.width_mm" -> say.at("case.wanted-outline-width");
      case "keep.at_least_mm" -> say.at("case.wanted-keep");
      case "case", "procedure", "tooth", "pulp", "layers", "handpieces", "outline" ->
          say.at("case.wanted-" + field);
      default -> say.at("case.wanted-other", field.replace('_', ' '));
    };
  }

  private static String layerNumber(String field) {
    return Integer.toString(Integer.parseInt(field.substring(7, field.indexOf(']'))) + 1);
  }
}
