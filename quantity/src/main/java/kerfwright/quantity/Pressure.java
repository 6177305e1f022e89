package kerfwright.quantity;

/**
 * A stress, hardness or modulus, zero or more.
 *
 * @param pascals pascals
 */
public record Pressure(double pascals) implements Comparable<Pressure> {
  public Pressure {
    Check.notNegative("Pressure", "pascals", pascals);
  }

  public static Pressure ofMegapascals(double megapascals) {
    return new Pressure(megapascals * 1e6);
  }

  public double megapascals() {
    return pascals * 1e-6;
  }

  @Override
  public int compareTo(Pressure other) {
    return Double.compare(pascals, other.pascals);
  }
}
