package kerfwright.quantity;

/**
 * A power, zero or more.
 *
 * @param watts watts
 */
public record Power(double watts) implements Comparable<Power> {
  public Power {
    Check.finite("Power", "watts", watts);
    Check.notNegative("Power", "watts", watts);
  }

  public static Power ofWatts(double watts) {
    return new Power(watts);
  }

  @Override
  public int compareTo(Power other) {
    return Double.compare(watts, other.watts);
  }
}
