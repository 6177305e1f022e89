package kerfwright.planner;

import java.util.List;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.plan.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * What a plan becomes with one change, and what it was, from the same samples.
 *
 * @param before the plan as it is
 * @param after with the change; null where it is not allowed
 * @param refusal why it is not allowed, or null
 * @param refusedStep the step it is not allowed in, 0 where it is not one step's
 */
public record Varied(
    Figures before, @Nullable Figures after, @Nullable Exclusion refusal, int refusedStep) {
  /**
   * The figures that are compared.
   *
   * @param cut what the step does
   * @param stepTimeS time of the step
   * @param totalTimeS time of all steps with changes
   * @param peakRiseK greatest rise at the pulp wall
   * @param raUm roughness the step leaves
   * @param lifeUsed share of a life the step uses
   * @param rise rise at the pulp wall by the quick column, not moved to the axisymmetric result
   */
  public record Figures(
      Candidate cut,
      Estimate stepTimeS,
      Estimate totalTimeS,
      Estimate peakRiseK,
      Estimate raUm,
      Estimate lifeUsed,
      Rise rise) {}

  /** Rise at the pulp wall against time; lists of the same length. */
  public record Rise(List<Double> timesS, List<Double> riseK) {
    public Rise {
      timesS = List.copyOf(timesS);
      riseK = List.copyOf(riseK);
    }
  }
}
