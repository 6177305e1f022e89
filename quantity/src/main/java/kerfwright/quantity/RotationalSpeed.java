package kerfwright.quantity;

/**
 * A speed of rotation, zero or more.
 *
 * @param revolutionsPerSecond revolutions per second
 */
public record RotationalSpeed(double revolutionsPerSecond) implements Comparable<RotationalSpeed> {
  public RotationalSpeed {
    Check.notNegative("RotationalSpeed", "revolutionsPerSecond", revolutionsPerSecond);
  }

  public static RotationalSpeed ofRpm(double rpm) {
    return new RotationalSpeed(rpm / 60.0);
  }

  public double rpm() {
    return revolutionsPerSecond * 60.0;
  }

  public double radiansPerSecond() {
    return revolutionsPerSecond * 2.0 * Math.PI;
  }

  /** Speed of a point on the rim: pi D n (any machining handbook). */
  public Velocity rimSpeed(Length diameter) {
    return new Velocity(Math.PI * diameter.metres() * revolutionsPerSecond);
  }

  @Override
  public int compareTo(RotationalSpeed other) {
    return Double.compare(revolutionsPerSecond, other.revolutionsPerSecond);
  }
}
