package kerfwright.quantity;

/**
 * A length, zero or more.
 *
 * @param metres metres
 */
public record Length(double metres) implements Comparable<Length> {
  public Length {
    Check.notNegative("Length", "metres", metres);
  }

  public static Length ofMillimetres(double millimetres) {
    return new Length(millimetres * 1e-3);
  }

  public static Length ofMicrometres(double micrometres) {
    return new Length(micrometres * 1e-6);
  }

  public double millimetres() {
    return metres * 1e3;
  }

  public double micrometres() {
    return metres * 1e6;
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(metres, other.metres);
  }
}
