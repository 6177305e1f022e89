package kerfwright.planner.plan;

/**
 * Times of a step, never mixed.
 *
 * @param cutS the bur on the tooth
 * @param withPausesS the same with the pauses between contacts
 * @param chairS in the chair: with changing, looking and rinsing
 * @param chairPublished true where a published time stands for the chair; else it is an estimate of
 *     the project
 */
public record StepTimes(
    Estimate cutS, Estimate withPausesS, Estimate chairS, boolean chairPublished) {}
