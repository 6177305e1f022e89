package kerfwright.physics.cutting;

/**
 * How the working part is run.
 *
 * @param loadN load of the hand on the contact
 * @param rimSpeedMPerS speed of the rim under that load
 * @param coolantMlPerMin water reaching the contact
 * @param sharpness 1 when new, towards 0 as grains or edges blunt
 */
public record OperatingPoint(
    double loadN, double rimSpeedMPerS, double coolantMlPerMin, double sharpness) {
  public OperatingPoint {
    Require.notNegative("Load", "N", loadN);
    Require.notNegative("Rim speed", "m/s", rimSpeedMPerS);
    Require.notNegative("Coolant", "mL/min", coolantMlPerMin);
    if (!(sharpness > 0 && sharpness <= 1)) {
      throw new IllegalArgumentException(
          "Sharpness must be above 0 and at most 1, got " + sharpness);
    }
  }
}
