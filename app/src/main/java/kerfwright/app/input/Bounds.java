package kerfwright.app.input;

import java.math.BigDecimal;

/**
 * What a number may be: guards against slips of the pen such as a thickness in micrometres, not a
 * clinical limit.
 *
 * @param low least value
 * @param lowAllowed whether the least value itself is allowed
 * @param high greatest value
 * @param unit unit to name, may be empty
 */
public record Bounds(double low, boolean lowAllowed, double high, String unit) {
  public static Bounds above(double low, double high, String unit) {
    return new Bounds(low, false, high, unit);
  }

  public static Bounds from(double low, double high, String unit) {
    return new Bounds(low, true, high, unit);
  }

  boolean allow(double value) {
    return (lowAllowed ? value >= low : value > low) && value <= high;
  }

  public String expected() {
    String first = lowAllowed ? "a number from " : "a number above ";
    return first + plain(low) + " to " + plain(high) + (unit.isEmpty() ? "" : " " + unit);
  }

  private static String plain(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }
}
