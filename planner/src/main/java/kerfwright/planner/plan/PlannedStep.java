package kerfwright.planner.plan;

import java.util.List;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Message;

/**
 * One step: one instrument through one stretch of one layer.
 *
 * @param order 1 for the first
 * @param layer index of the layer in the stack, 0 outermost
 * @param materialId material cut
 * @param purpose what the step is for
 * @param instrument which physical instrument
 * @param handpiece in which handpiece
 * @param setSpeedRpm speed to set
 * @param speedUnderLoadRpm speed that holds under the load
 * @param rimSpeedMPerS speed of the rim under load
 * @param loadN load on the tip
 * @param coolantMlPerMin water reaching the tip
 * @param stroke how it is led
 * @param cutSeconds length of one contact before lifting
 * @param pauseSeconds pause after it, water on
 * @param fromMm depth where the step starts, from the outer surface
 * @param toMm depth where it ends
 * @param removalMm3PerMin removal rate while cutting
 * @param powerW mechanical power at the contact
 * @param raUm roughness left
 * @param timeS time of the step, pauses included
 * @param lifeUsed share of the instrument's life the step uses (1 = one whole instrument)
 * @param changeCue when to change to the next instrument, one sentence
 * @param reasons evidence for and against
 * @param cautions what to mind in this step
 * @param ownPace the practice's own factor on the time in contact, 1 by the literature
 */
public record PlannedStep(
    int order,
    int layer,
    String materialId,
    Purpose purpose,
    DrawerInstrument instrument,
    Handpiece handpiece,
    double setSpeedRpm,
    Estimate speedUnderLoadRpm,
    Estimate rimSpeedMPerS,
    Estimate loadN,
    Estimate coolantMlPerMin,
    Stroke stroke,
    Estimate cutSeconds,
    Estimate pauseSeconds,
    Estimate fromMm,
    Estimate toMm,
    Estimate removalMm3PerMin,
    Estimate powerW,
    Estimate raUm,
    Estimate timeS,
    Estimate lifeUsed,
    Message changeCue,
    List<Reason> reasons,
    List<Finding> cautions,
    double ownPace) {
  public PlannedStep {
    reasons = List.copyOf(reasons);
    cautions = List.copyOf(cautions);
  }
}
