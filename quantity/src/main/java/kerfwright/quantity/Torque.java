package kerfwright.quantity;

/**
 * A torque about the axis of the instrument, zero or more.
 *
 * @param newtonMetres newton metres
 */
public record Torque(double newtonMetres) implements Comparable<Torque> {
  public Torque {
    Check.notNegative("Torque", "newtonMetres", newtonMetres);
  }

  public static Torque ofNewtonMillimetres(double newtonMillimetres) {
    return new Torque(newtonMillimetres * 1e-3);
  }

  public double newtonMillimetres() {
    return newtonMetres * 1e3;
  }

  @Override
  public int compareTo(Torque other) {
    return Double.compare(newtonMetres, other.newtonMetres);
  }
}
