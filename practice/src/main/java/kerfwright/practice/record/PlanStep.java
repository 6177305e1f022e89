package kerfwright.practice.record;

/**
 * The step of a plan that was carried out.
 *
 * @param plan names the plan, without spaces
 * @param order its step, 1 for the first
 */
public record PlanStep(String plan, int order) {
  public PlanStep {
    if (!plan.matches("[\\p{L}\\p{N}._/#:-]{1,80}") || order < 1 || order > 999) {
      throw new IllegalArgumentException("Not a step of a plan: '" + plan + "' " + order);
    }
  }
}
