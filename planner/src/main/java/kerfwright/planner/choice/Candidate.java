package kerfwright.planner.choice;

import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.Engagement;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.tool.Instrument;

/**
 * One instrument in one handpiece at one operating point through one stretch, with what it does and
 * what it costs.
 *
 * @param instrument the instrument
 * @param handpiece the handpiece
 * @param segment the stretch
 * @param setRpm speed set
 * @param loadN load on the tip
 * @param stroke how it is led
 * @param underLoadRpm speed that holds
 * @param rimMPerS rim speed under load
 * @param contact how the head meets the layer
 * @param cut what the sharp working part does
 * @param meanRemovalM3PerS removal rate on average over the stretch, as it blunts
 * @param lives share of its life used, may exceed one
 * @param raM roughness left
 * @param damageM depth of damage left
 * @param slipM how far it goes too deep before the hand reacts
 * @param cutS cutting time
 * @param pauseS pauses
 * @param riskS risk, as seconds
 * @param wearS wear, as seconds
 * @param ownPace the practice's own factor on the cutting time, 1 by the literature
 * @param ownWear its own factor on the lives used
 * @param literatureCutS cutting time by the literature
 * @param literaturePauseS pauses by the literature
 */
public record Candidate(
    Instrument instrument,
    Handpiece handpiece,
    Segment segment,
    double setRpm,
    double loadN,
    Stroke stroke,
    double underLoadRpm,
    double rimMPerS,
    Engagement contact,
    CutResult cut,
    double meanRemovalM3PerS,
    double lives,
    double raM,
    double damageM,
    double slipM,
    double cutS,
    double pauseS,
    double riskS,
    double wearS,
    double ownPace,
    double ownWear,
    double literatureCutS,
    double literaturePauseS) {
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
