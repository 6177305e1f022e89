package kerfwright.planner.evidence;

import kerfwright.physics.heat.LayeredColumn;

/** Greatest rise of the surface under the instrument, averaged over the opening, K. */
record SurfaceRiseFigure(LayeredColumn column) implements Figure {
  @Override
  public double of(Trial trial, String unit) {
    ToothUnderTest tooth = ToothUnderTest.of(trial);
    return tooth.wall().floorPeakK(column, tooth.cuts(), tooth.inputs());
  }
}
