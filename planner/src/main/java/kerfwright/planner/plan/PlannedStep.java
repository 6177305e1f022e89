package kerfwright.planner.plan;

import java.util.List;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.physics.cutting.TurbineDrive;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Message;
import kerfwright.quantity.RotationalSpeed;
import org.jspecify.annotations.Nullable;

/**
 * One step: one operation with one instrument.
 *
 * @param order 1 for the first
 * @param layer index of the layer most of it is in, 0 outermost
 * @param materialId material of that layer
 * @param purpose what the step is for
 * @param operation what is done
 * @param instrument which physical instrument
 * @param handpiece in which handpiece
 * @param setSpeedRpm speed to set; a turbine's free speed, as it runs at full pedal
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
 * @param times how long it takes
 * @param lifeUsed share of the instrument's life the step uses (1 = one whole instrument)
 * @param reasons evidence for and against
 * @param cautions what to mind in this step
 * @param ownPace the practice's own factor on the time in contact, 1 by the literature
 */
public record PlannedStep(
    int order,
    int layer,
    String materialId,
    Purpose purpose,
    StepOperation operation,
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
    StepTimes times,
    Estimate lifeUsed,
    List<Reason> reasons,
    List<Finding> cautions,
    double ownPace) {
  public PlannedStep {
    reasons = List.copyOf(reasons);
    cautions = List.copyOf(cautions);
  }

  /** Time of the step, pauses included. */
  public Estimate timeS() {
    return times.withPausesS();
  }

  /** When to change to the next step, one sentence. */
  public Message changeCue() {
    return operation.endCue();
  }

  /** True where the speed cannot be set. */
  public boolean atFullPedal() {
    return handpiece.drive() instanceof TurbineDrive;
  }

  /** The instrument's greatest speed by its label. */
  public @Nullable Double maxRpm() {
    RotationalSpeed greatest = instrument.properties().maximumSpeed();
    return greatest == null ? null : greatest.rpm();
  }
}
