package kerfwright.physics.cutting;

/** Guards of the constructors: a fault names quantity, value, unit and limit at once. */
final class Require {
  private Require() {}

  static void positive(String quantity, String unit, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          quantity + " must be above zero and finite, got " + value + " " + unit);
    }
  }

  static void notNegative(String quantity, String unit, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          quantity + " must be zero or more and finite, got " + value + " " + unit);
    }
  }
}
