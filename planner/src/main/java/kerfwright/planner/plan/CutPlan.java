package kerfwright.planner.plan;

import java.util.List;
import kerfwright.planner.casework.CutCase;
import kerfwright.quantity.Finding;
import org.jspecify.annotations.Nullable;

/**
 * The plan, or the refusal of one: then steps are empty and a finding of severity refuse says why
 * and what would help.
 *
 * @param cutCase the case asked for
 * @param seed seed of the samples
 * @param samples how many were drawn
 * @param steps what to do, in order
 * @param pulp heat at the pulp wall, or null where the plan is refused
 * @param totalTimeS time of all steps with changes of instrument
 * @param runnersUp the next best choices
 * @param findings refusals, warnings and notes about the whole plan
 * @param cautions the standing cautions that apply, always shown and printed
 */
public record CutPlan(
    CutCase cutCase,
    long seed,
    int samples,
    List<PlannedStep> steps,
    @Nullable PulpHeat pulp,
    Estimate totalTimeS,
    List<RunnerUp> runnersUp,
    List<Finding> findings,
    List<Finding> cautions) {
  public CutPlan {
    steps = List.copyOf(steps);
    runnersUp = List.copyOf(runnersUp);
    findings = List.copyOf(findings);
    cautions = List.copyOf(cautions);
  }

  public boolean refused() {
    return findings.stream().anyMatch(f -> f.severity() == Finding.Severity.REFUSE);
  }
}
