package kerfwright.planner.choice;

import java.util.List;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.material.Material;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.Engagement;
import kerfwright.planner.operation.Work;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.tool.Instrument;

/**
 * One instrument in one handpiece at one operating point for one operation, with what it does and
 * what it costs.
 *
 * @param instrument the instrument
 * @param handpiece the handpiece
 * @param work the operation, laid through the layers
 * @param setRpm speed set; a turbine's free speed, as it is driven at full pedal
 * @param loadN load on the tip
 * @param stroke how it is led
 * @param underLoadRpm speed that holds
 * @param rimMPerS rim speed under load
 * @param contact how the head meets the layer
 * @param parts what each layer takes, the one with most of the work first
 * @param lives share of its life used, may exceed one
 * @param raM roughness left
 * @param damageM depth of damage left
 * @param slipM how far it goes too deep before the hand reacts
 * @param overlap how often the surface is gone over beyond once
 * @param leastS least time the trade gives it, however fast it cuts
 * @param cutS cutting time
 * @param pauseS pauses
 * @param riskS risk, as seconds
 * @param wearS wear, as seconds
 * @param ownPace the practice's own factor on the cutting time, 1 by the literature
 * @param ownWear its own factor on the lives used
 * @param literatureCutS cutting time by the literature
 * @param literaturePauseS pauses by the literature
 * @param resort why it is planned only where nothing fitting is clean
 */
public record Candidate(
    Instrument instrument,
    Handpiece handpiece,
    Work work,
    double setRpm,
    double loadN,
    Stroke stroke,
    double underLoadRpm,
    double rimMPerS,
    Engagement contact,
    List<PartCut> parts,
    double lives,
    double raM,
    double damageM,
    double slipM,
    double overlap,
    double leastS,
    double cutS,
    double pauseS,
    double riskS,
    double wearS,
    double ownPace,
    double ownWear,
    double literatureCutS,
    double literaturePauseS,
    LastResort resort) {
  public Candidate {
    parts = List.copyOf(parts);
  }

  /** The layer most of the work is in. */
  public Material material() {
    return parts.get(0).material();
  }

  /** Its index in the stack. */
  public int layer() {
    return parts.get(0).layer();
  }

  /** What the sharp working part does in that layer. */
  public CutResult cut() {
    return parts.get(0).cut();
  }

  /** Share of the whole rate that does not fall as the working part dulls. */
  public double steadyShare() {
    return steadyShare(parts);
  }

  /** The same of these layers, each for the time it takes. */
  public static double steadyShare(List<PartCut> parts) {
    double steady = 0;
    double all = 0;
    for (PartCut part : parts) {
      steady += part.sharpS() * part.cut().steadyShare();
      all += part.sharpS();
    }
    return steady / all;
  }

  public double volumeM3() {
    return parts.stream().mapToDouble(PartCut::volumeM3).sum();
  }

  public Purpose purpose() {
    return Purpose.of(work.operation().task());
  }

  /** Cutting time for the simulation of heat: never less than the literature's, seconds. */
  public double heatS() {
    return Math.max(cutS, literatureCutS);
  }

  /**
   * What it costs by the literature, seconds: settles speed and load of an instrument, so that a
   * practice's own pace never moves them.
   */
  public double literatureCostS() {
    return literatureCutS + literaturePauseS + riskS + wearS / ownWear;
  }

  /** What the choice costs in all, seconds. */
  public double costS() {
    return cutS + pauseS + riskS + wearS;
  }

  public String id() {
    return instrument.drawer().id();
  }
}
