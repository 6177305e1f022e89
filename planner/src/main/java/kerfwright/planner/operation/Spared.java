package kerfwright.planner.operation;

import kerfwright.catalogue.operation.Formula;
import kerfwright.catalogue.operation.HeatTarget;
import kerfwright.catalogue.operation.Operation;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.quantity.Length;

/**
 * What an operation must leave.
 *
 * @param fromMm depth where it begins; infinite where nothing must stay
 * @param toMm depth where the layer that is spared ends
 * @param whole true where that layer must not be touched at all
 */
record Spared(double fromMm, double toMm, boolean whole) {
  private static final Spared NOTHING =
      new Spared(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, false);

  /**
   * The operation's own limit, or the case's where that asks for more. Dentine is left for a pulp
   * that lives; where that is the only reason, a dead one asks for nothing.
   */
  static Spared of(Operation operation, CutCase c, Depths depths, CaseQuantities names) {
    Formula spare = operation.spare();
    if (spare == null) {
      return NOTHING;
    }
    double least = names.value(spare);
    boolean whole = Double.isInfinite(least);
    int layer = layer(operation, depths, whole);
    boolean forPulp = operation.heat() == HeatTarget.PULP_WALL && !whole;
    if (layer < 0 || (forPulp && !c.pulp().protectsPulp() && c.keep() == null)) {
      return NOTHING;
    }
    Keep keep = c.keep();
    if (keep != null && !whole && depths.material(layer).is(keep.materialId())) {
      Length asked = keep.atLeast();
      whole = asked == null;
      least = asked == null ? least : Math.max(least, asked.millimetres());
    }
    double bottom = depths.bottom(layer);
    return new Spared(whole ? depths.top(layer) : bottom - least, bottom, whole);
  }

  /** The outermost layer it ends in where none of that may be touched, else the innermost. */
  private static int layer(Operation operation, Depths depths, boolean whole) {
    int found = -1;
    for (int i = 0; i < depths.layers().size() && !(whole && found >= 0); i++) {
      found = Depths.matches(depths.material(i), operation.toLayer()) ? i : found;
    }
    return found;
  }

  /** What is left of it below a depth; infinite where nothing must stay. */
  double leftBelow(double depthMm) {
    return Math.max(0, toMm - depthMm);
  }
}
