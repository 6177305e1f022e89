package kerfwright.planner.plan;

/**
 * A computed figure with its spread: 5th, 50th and 95th percentile of the samples. The unit stands
 * in the name of the component that holds it.
 */
public record Estimate(double low, double typical, double high) {
  public Estimate {
    if (!(low <= typical && typical <= high)) {
      throw new IllegalArgumentException(
          "Estimate must be ordered, got " + low + ", " + typical + ", " + high);
    }
  }

  /** The sum, end by end. */
  public Estimate plus(Estimate other) {
    return new Estimate(low + other.low, typical + other.typical, high + other.high);
  }

  public static Estimate exactly(double value) {
    return new Estimate(value, value, value);
  }
}
