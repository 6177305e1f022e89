package kerfwright.quantity;

/** Guards of the constructors: a fault names quantity, value, unit and limit at once. */
final class Check {
  private Check() {}

  static void finite(String quantity, String unit, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(quantity + " must be finite, got " + value + " " + unit);
    }
  }

  static void notNegative(String quantity, String unit, double value) {
    if (value < 0) {
      throw new IllegalArgumentException(
          quantity + " must be zero or more, got " + value + " " + unit);
    }
  }
}
