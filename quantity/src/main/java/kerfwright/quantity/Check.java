package kerfwright.quantity;

/** Guards of the constructors: a fault names quantity, value, unit and limit at once. */
public final class Check {
  private Check() {}

  public static void finite(String quantity, String unit, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(quantity + " must be finite, got " + value + " " + unit);
    }
  }

  public static void positive(String quantity, String unit, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          quantity + " must be above zero and finite, got " + value + " " + unit);
    }
  }

  public static void notNegative(String quantity, String unit, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          quantity + " must be zero or more and finite, got " + value + " " + unit);
    }
  }
}
