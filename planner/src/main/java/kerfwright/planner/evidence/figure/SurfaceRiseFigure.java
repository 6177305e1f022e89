package kerfwright.planner.evidence.figure;

import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.heat.MovingHeatSource;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.physics.material.Substance;
import kerfwright.planner.heat.CutHeat;
import kerfwright.planner.heat.HeatInputs;

/**
 * Greatest rise of the surface, K, as a camera sees it: the hot spot under the instrument, moving
 * with the hand, on top of the opening's mean rise.
 */
record SurfaceRiseFigure(LayeredColumn column) implements Figure {
  @Override
  public double of(Trial trial, String unit) {
    ToothUnderTest tooth = ToothUnderTest.of(trial);
    return tooth.wall().floorPeakK(column, tooth.cuts(), tooth.inputs()) + spotK(trial, tooth);
  }

  private static double spotK(Trial trial, ToothUnderTest tooth) {
    HeatInputs inputs = tooth.inputs();
    CutHeat cut = tooth.cuts().get(0);
    double entering = inputs.enteringW(cut, inputs.wettedShare(cut, tooth.wall().flowMlPerMin()));
    Engagement contact = trial.contact();
    Substance surface = trial.cover();
    return MovingHeatSource.peakRiseK(
        entering / contact.areaM2(),
        Math.sqrt(contact.areaM2() / Math.PI),
        inputs.handMPerS(),
        surface.conductivityWPerMK(),
        surface.conductivityWPerMK() / (surface.densityKgPerM3() * surface.specificHeatJPerKgK()));
  }
}
