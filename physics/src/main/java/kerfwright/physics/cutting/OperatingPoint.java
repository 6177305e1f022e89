package kerfwright.physics.cutting;

import kerfwright.quantity.Check;

/**
 * How the working part is run.
 *
 * @param loadN load of the hand on the contact
 * @param rimSpeedMPerS speed of the rim under that load
 * @param coolantMlPerMin water reaching the contact
 * @param sharpness 1 when new, towards 0 as grains or edges blunt
 * @param touchS how long one touch lasts until the head is lifted and rinsed or wiped clear;
 *     infinite where it is never lifted
 */
public record OperatingPoint(
    double loadN, double rimSpeedMPerS, double coolantMlPerMin, double sharpness, double touchS) {
  public OperatingPoint {
    Check.notNegative("Load", "N", loadN);
    Check.notNegative("Rim speed", "m/s", rimSpeedMPerS);
    Check.notNegative("Coolant", "mL/min", coolantMlPerMin);
    if (!(sharpness > 0 && sharpness <= 1)) {
      throw new IllegalArgumentException(
          "Sharpness must be above 0 and at most 1, got " + sharpness);
    }
    if (!(touchS > 0)) {
      throw new IllegalArgumentException("A touch must last above 0 s, got " + touchS + " s");
    }
  }

  /** A working part that is never lifted. */
  public OperatingPoint(
      double loadN, double rimSpeedMPerS, double coolantMlPerMin, double sharpness) {
    this(loadN, rimSpeedMPerS, coolantMlPerMin, sharpness, Double.POSITIVE_INFINITY);
  }
}
