package kerfwright.physics.heat.field;

import kerfwright.quantity.Check;

/**
 * Where a temperature is read.
 *
 * @param rMm distance from the axis
 * @param zMm depth below the uncut top
 */
public record HeatProbe(double rMm, double zMm) {
  public HeatProbe {
    Check.notNegative("Radius of a probe", "mm", rMm);
    Check.notNegative("Depth of a probe", "mm", zMm);
  }

  /** On the axis, at a depth below the uncut top. */
  public static HeatProbe onAxis(double zMm) {
    return new HeatProbe(0, zMm);
  }
}
