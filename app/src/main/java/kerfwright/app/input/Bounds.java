package kerfwright.app.input;

import java.math.BigDecimal;
import kerfwright.quantity.Message;

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

  /** What was expected, to be named among what is wrong. */
  public Message allowed() {
    if (unit.isEmpty()) {
      return Message.of(
          lowAllowed ? "fault.number-from" : "fault.number-above", plain(low), plain(high));
    }
    return Message.of(
        lowAllowed ? "fault.number-from-unit" : "fault.number-above-unit",
        plain(low),
        plain(high),
        unitWord());
  }

  /** Refuses what they do not allow. */
  public void check(String origin, double value) throws BadInput {
    if (!allow(value)) {
      throw new BadInput(origin, Message.of("fault.must-be", allowed(), plain(value)));
    }
  }

  private Object unitWord() {
    return unit.matches("[a-z]{4,}") ? Message.of("fault.unit-" + unit) : unit;
  }

  private static BigDecimal plain(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros();
  }
}
