package kerfwright.physics.heat.numeric;

/** Guards of the constructors: a fault names quantity, value, unit and limit at once. */
public final class Require {
  private Require() {}

  public static void finite(String quantity, String unit, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(quantity + " must be finite, got " + value + " " + unit);
    }
  }

  public static void positive(String quantity, String unit, double value) {
    finite(quantity, unit, value);
    if (!(value > 0)) {
      throw new IllegalArgumentException(
          quantity + " must be above zero, got " + value + " " + unit);
    }
  }

  public static void notNegative(String quantity, String unit, double value) {
    finite(quantity, unit, value);
    if (value < 0) {
      throw new IllegalArgumentException(
          quantity + " must be zero or more, got " + value + " " + unit);
    }
  }
}
