package kerfwright.planner.evidence.figure;

import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.planner.heat.WallHistory;

/**
 * Change of temperature at the pulp wall, K: the greatest rise or the greatest fall, whichever is
 * larger, from the start of the cut to a minute after it. A bench study reports the same.
 *
 * @param column works out one history after the other
 */
record PulpRiseFigure(LayeredColumn column) implements Figure {
  private static final double EVERY_S = 1;

  @Override
  public double of(Trial trial, String unit) {
    ToothUnderTest tooth = ToothUnderTest.of(trial);
    return largest(tooth.wall().quick(column, tooth.cuts(), tooth.inputs(), EVERY_S));
  }

  static double largest(WallHistory history) {
    double largest = 0;
    for (double rise : history.riseK()) {
      largest = Math.abs(rise) > Math.abs(largest) ? rise : largest;
    }
    return largest;
  }
}
