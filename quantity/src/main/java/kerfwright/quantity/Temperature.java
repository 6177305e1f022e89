package kerfwright.quantity;

/**
 * A temperature on the absolute scale; not a difference.
 *
 * @param kelvins kelvins above absolute zero
 */
public record Temperature(double kelvins) implements Comparable<Temperature> {
  public Temperature {
    Check.notNegative("Temperature", "kelvins", kelvins);
  }

  private static final double ICE_POINT_K = 273.15;

  public static Temperature ofCelsius(double celsius) {
    return new Temperature(celsius + ICE_POINT_K);
  }

  public double celsius() {
    return kelvins - ICE_POINT_K;
  }

  public TemperatureDifference minus(Temperature other) {
    return new TemperatureDifference(kelvins - other.kelvins);
  }

  public Temperature plus(TemperatureDifference difference) {
    return new Temperature(kelvins + difference.kelvins());
  }

  @Override
  public int compareTo(Temperature other) {
    return Double.compare(kelvins, other.kelvins);
  }
}
