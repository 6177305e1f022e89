package kerfwright.quantity;

/**
 * A force, zero or more; its direction is told by where it stands.
 *
 * @param newtons newtons
 */
public record Force(double newtons) implements Comparable<Force> {
  public Force {
    Check.finite("Force", "newtons", newtons);
    Check.notNegative("Force", "newtons", newtons);
  }

  public static Force ofNewtons(double newtons) {
    return new Force(newtons);
  }

  @Override
  public int compareTo(Force other) {
    return Double.compare(newtons, other.newtons);
  }
}
