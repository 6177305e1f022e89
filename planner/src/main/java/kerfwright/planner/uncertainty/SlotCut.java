package kerfwright.planner.uncertainty;

import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.material.Material;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.physics.material.Substance;
import kerfwright.physics.wear.Sharpness;
import kerfwright.planner.tool.Instrument;
import kerfwright.quantity.Torque;

/**
 * A slot cut edgewise into a block, as wide as the head: what the models say it takes. The same
 * cut, measured, tells how far a practice lies off them.
 *
 * @param instrument what cuts
 * @param handpiece what drives it, at its free speed
 * @param material the block
 * @param loadN load across the instrument
 * @param waterMlPerMin water
 * @param engagedMm length of the head in the block
 */
public record SlotCut(
    Instrument instrument,
    Handpiece handpiece,
    Material material,
    double loadN,
    double waterMlPerMin,
    double engagedMm) {
  /** Radial depth of one pass, as the planner takes it (project setting). */
  private static final double PASS_M = 50e-6;

  /** Time to a depth; infinite where the handpiece stalls under the load. */
  public double seconds(double depthMm) {
    double diameterM = instrument.properties().headDiameter().metres();
    Substance work = material.typical();
    Engagement contact = new Engagement(diameterM, engagedMm * 1e-3, PASS_M);
    double ratio = instrument.part().forceRatio(work, contact, loadN);
    double rpm =
        handpiece
            .drive()
            .speedUnder(new Torque(ratio * loadN * diameterM / 2), handpiece.drive().freeSpeed())
            .rpm();
    if (rpm <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    double rim = Math.PI * diameterM * rpm / 60;
    CutResult cut =
        instrument
            .part()
            .cut(
                work,
                contact,
                new OperatingPoint(loadN, rim, waterMlPerMin, instrument.part().sharpness()));
    double volume = diameterM * engagedMm * 1e-3 * depthMm * 1e-3;
    double lives = volume * instrument.part().livesPerM3(work, rim);
    double blunting =
        instrument.part().meanOver(Math.min(lives, Sharpness.LIFE_END), cut.steadyShare());
    return volume / (cut.removalM3PerS() * blunting);
  }

  /** The load at which the models let the handpiece stall, N; infinite where none is needed. */
  public double stallN() {
    double armM = instrument.properties().headDiameter().metres() / 2;
    double ratio =
        instrument
            .part()
            .forceRatio(
                material.typical(), new Engagement(2 * armM, engagedMm * 1e-3, PASS_M), loadN);
    return handpiece.drive().stallTorque().newtonMetres() / (ratio * armM);
  }
}
