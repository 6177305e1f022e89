package kerfwright.quantity;

/**
 * A speed along a path, zero or more.
 *
 * @param metresPerSecond metres per second
 */
public record Velocity(double metresPerSecond) implements Comparable<Velocity> {
  public Velocity {
    Check.notNegative("Velocity", "metresPerSecond", metresPerSecond);
  }

  @Override
  public int compareTo(Velocity other) {
    return Double.compare(metresPerSecond, other.metresPerSecond);
  }
}
