package kerfwright.planner.sequence;

import kerfwright.catalogue.operation.Formula;
import kerfwright.catalogue.operation.Operation;

/**
 * Going over a surface: T = passes A / (e v).
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>passes</td><td>-</td><td>at least two</td></tr>
 *   <tr><td>A</td><td>m2</td><td>surface</td></tr>
 *   <tr><td>e</td><td>m</td><td>width the head has on the work</td></tr>
 *   <tr><td>v</td><td>m/s</td><td>travel of the hand, 2 to 3 mm/s</td></tr>
 * </table>
 *
 * <p>Common practice; the row of the operation may tell both.
 *
 * @param passes how often the surface is gone over
 * @param travelMPerS travel of the hand
 */
record Sweep(double passes, double travelMPerS) {
  private static final double PASSES = 2;
  private static final double TRAVEL_MM_PER_S = 2.5;

  /** As the operation tells, else the usual one. */
  static Sweep of(Operation operation) {
    return new Sweep(
        told(operation, "passes", PASSES), told(operation, "travel", TRAVEL_MM_PER_S) * 1e-3);
  }

  private static double told(Operation operation, String name, double usual) {
    Formula formula = operation.geometry().terms().get(name);
    return formula == null ? usual : formula.value(other -> usual);
  }

  double secondsOver(double areaM2, double engagedM) {
    return passes * areaM2 / (engagedM * travelMPerS);
  }
}
