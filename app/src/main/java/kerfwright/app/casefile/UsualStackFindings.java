package kerfwright.app.casefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.UsualValues;
import kerfwright.planner.plan.CutPlan;
import kerfwright.quantity.Finding;

/**
 * Puts what the catalogue says of a filled-in stack, such as figures from memory, into the plan.
 */
public final class UsualStackFindings {
  private UsualStackFindings() {}

  public static CutPlan addTo(CutPlan plan) {
    CutCase cutCase = plan.cutCase();
    if (!cutCase.stackFilledIn()) {
      return plan;
    }
    Set<String> told =
        plan.findings().stream().map(Finding::code).collect(Collectors.toUnmodifiableSet());
    List<Finding> findings = new ArrayList<>(plan.findings());
    new UsualValues(cutCase.procedure(), cutCase.tooth())
        .stack(cutCase.restoration(), cutCase.lesion()).stream()
            .flatMap(stack -> stack.findings().stream())
            .filter(finding -> !told.contains(finding.code()))
            .forEach(findings::add);
    return plan.with(findings);
  }
}
