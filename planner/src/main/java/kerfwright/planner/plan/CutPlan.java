package kerfwright.planner.plan;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kerfwright.catalogue.operation.WholeTime;
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
 * @param steps what to do with rotary instruments, in order
 * @param cues what to do between them
 * @param unfilled what no clean instrument can do
 * @param access where the chamber is aimed at, null where it is not
 * @param pulp heat at the pulp wall, null where the pulp is not to live or the plan is refused
 * @param root heat at the outer root surface, null where it is not the target
 * @param times of all steps and cues
 * @param branches how it goes on by what the first step tells; empty where that is known
 * @param runnersUp the next best choices
 * @param findings refusals, warnings and notes about the whole plan
 * @param cautions the standing cautions that apply, always shown and printed
 */
public record CutPlan(
    CutCase cutCase,
    long seed,
    int samples,
    List<PlannedStep> steps,
    List<Cue> cues,
    List<Unfilled> unfilled,
    @Nullable DepthFrom access,
    @Nullable PulpHeat pulp,
    @Nullable RootRise root,
    PlanTimes times,
    List<Branch> branches,
    List<RunnerUp> runnersUp,
    List<Finding> findings,
    List<Finding> cautions) {
  public CutPlan {
    steps = List.copyOf(steps);
    cues = List.copyOf(cues);
    unfilled = List.copyOf(unfilled);
    branches = List.copyOf(branches);
    runnersUp = List.copyOf(runnersUp);
    findings = List.copyOf(findings);
    cautions = List.copyOf(cautions);
  }

  /**
   * Times of a plan, never mixed.
   *
   * @param cutS burs on the tooth
   * @param withChangesS the same with pauses and changes of instrument
   * @param chairS in the chair, with looking and rinsing
   */
  public record PlanTimes(Estimate cutS, Estimate withChangesS, Estimate chairS) {
    public static final PlanTimes NONE =
        new PlanTimes(Estimate.exactly(0), Estimate.exactly(0), Estimate.exactly(0));
  }

  /** The same with other findings. */
  public CutPlan with(List<Finding> said) {
    return new CutPlan(
        cutCase, seed, samples, steps, cues, unfilled, access, pulp, root, times, branches,
        runnersUp, said, cautions);
  }

  /** The same going on in branches. */
  public CutPlan with(List<Branch> goingOn, List<Finding> said, List<Finding> minded) {
    return new CutPlan(
        cutCase, seed, samples, steps, cues, unfilled, access, pulp, root, times, goingOn,
        runnersUp, said, minded);
  }

  public boolean refused() {
    return findings.stream().anyMatch(f -> f.severity() == Finding.Severity.REFUSE);
  }

  /**
   * Whether the pulp is told of in three words alone: cut dry, the models foretell an unseen test
   * no better than the mean of the others does, so that a figure would promise too much.
   */
  public boolean pulpInWords() {
    return pulp != null && cutCase.dry();
  }

  /** Time of all steps with changes of instrument. */
  public Estimate totalTimeS() {
    return times.withChangesS();
  }

  /** What a procedure of this kind took as a whole where somebody published it. */
  public List<WholeTime> published() {
    return steps.isEmpty() ? List.of() : WholeTime.of(steps.get(0).operation().row().variant());
  }

  /** What all steps cut, mm3 by material. */
  public Map<String, Double> removedMm3() {
    Map<String, Double> removed = new TreeMap<>();
    for (PlannedStep step : steps) {
      step.operation().layers().forEach(l -> removed.merge(l.materialId(), l.mm3(), Double::sum));
    }
    return removed;
  }
}
