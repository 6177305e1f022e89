package kerfwright.quantity;

/**
 * A difference of two temperatures; it may be negative.
 *
 * @param kelvins kelvins
 */
public record TemperatureDifference(double kelvins) implements Comparable<TemperatureDifference> {
  public TemperatureDifference {
    Check.finite("TemperatureDifference", "kelvins", kelvins);
  }

  public static TemperatureDifference ofKelvins(double kelvins) {
    return new TemperatureDifference(kelvins);
  }

  @Override
  public int compareTo(TemperatureDifference other) {
    return Double.compare(kelvins, other.kelvins);
  }
}
