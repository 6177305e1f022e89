package kerfwright.quantity;

/**
 * A speed along a path, zero or more.
 *
 * @param metresPerSecond metres per second
 */
public record Velocity(double metresPerSecond) implements Comparable<Velocity> {
  public Velocity {
    Check.finite("Velocity", "metresPerSecond", metresPerSecond);
    Check.notNegative("Velocity", "metresPerSecond", metresPerSecond);
  }

  public static Velocity ofMillimetresPerSecond(double millimetresPerSecond) {
    return new Velocity(millimetresPerSecond * 1e-3);
  }

  public double millimetresPerSecond() {
    return metresPerSecond * 1e3;
  }

  @Override
  public int compareTo(Velocity other) {
    return Double.compare(metresPerSecond, other.metresPerSecond);
  }
}
