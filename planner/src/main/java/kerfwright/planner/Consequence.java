package kerfwright.planner;

import java.util.List;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PulpBand;
import kerfwright.quantity.Finding;
import org.jspecify.annotations.Nullable;

/**
 * What own choices for the steps of a plan come to.
 *
 * @param steps step by step, in order
 * @param pulp heat at the pulp wall, null where no pulp is to live
 */
public record Consequence(List<Step> steps, @Nullable Pulp pulp) {
  public Consequence {
    steps = List.copyOf(steps);
  }

  /**
   * One step.
   *
   * @param order 1 for the first
   * @param planned what the plan does
   * @param choice what was chosen, null where the step is left as planned
   * @param done what the choice does; null where it cannot do the step at all
   * @param broken the rules it breaks, each with its reason and source
   */
  public record Step(
      int order,
      Candidate planned,
      @Nullable OwnChoice choice,
      @Nullable Candidate done,
      List<Finding> broken) {
    public Step {
      broken = List.copyOf(broken);
    }

    /** How many times what the plan's step costs. */
    public double costRatio() {
      return done == null ? Double.POSITIVE_INFINITY : done.costS() / planned.costS();
    }

    /** No rule broken and within the margin: as good as the plan's. */
    public boolean right() {
      return done != null
          && broken.isEmpty()
          && done.costS() <= WhatHappens.most(planned.costS()) * (1 + 1e-9);
    }
  }

  /**
   * Heat at the pulp wall over all steps, by the quick column moved to the plan's result.
   *
   * @param plannedK greatest rise of the plan
   * @param ownK greatest rise of the own choices
   * @param limitK the screening limit
   * @param dry true where a step is cut dry, so that words and no figures are told
   * @param tooHot why that is not allowed, or null
   */
  public record Pulp(
      Estimate plannedK, Estimate ownK, double limitK, boolean dry, @Nullable Finding tooHot) {
    /** How the own choices stand against the limit. */
    public PulpBand band() {
      return PulpBand.of(ownK, limitK);
    }
  }

  /** All steps right and the pulp kept cool. */
  public boolean right() {
    return steps.stream().allMatch(Step::right) && (pulp == null || pulp.tooHot() == null);
  }
}
