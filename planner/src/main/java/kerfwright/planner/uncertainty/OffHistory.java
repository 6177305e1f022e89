package kerfwright.planner.uncertainty;

import kerfwright.planner.heat.WallHistory;

/**
 * A history of the pulp wall that ends up some kelvin off what was computed: its largest change is
 * moved by them, and every other in proportion, so that it still begins at zero.
 */
final class OffHistory {
  private static final double HARDLY_K = 0.05;

  private OffHistory() {}

  static WallHistory of(WallHistory computed, double kelvin) {
    double[] rise = computed.riseK().clone();
    double largest = 0;
    for (double one : rise) {
      largest = Math.max(largest, Math.abs(one));
    }
    for (int i = 0; i < rise.length; i++) {
      // where the wall hardly changes it goes off evenly over the time
      double share = largest > HARDLY_K ? Math.abs(rise[i]) / largest : (i + 1.0) / rise.length;
      rise[i] += kelvin * share;
    }
    return new WallHistory(computed.timesS(), rise, computed.bodyC());
  }
}
