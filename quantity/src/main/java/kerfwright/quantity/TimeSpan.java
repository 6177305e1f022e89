package kerfwright.quantity;

/**
 * A length of time, zero or more.
 *
 * @param seconds seconds
 */
public record TimeSpan(double seconds) implements Comparable<TimeSpan> {
  public TimeSpan {
    Check.finite("TimeSpan", "seconds", seconds);
    Check.notNegative("TimeSpan", "seconds", seconds);
  }

  public static TimeSpan ofSeconds(double seconds) {
    return new TimeSpan(seconds);
  }

  public double minutes() {
    return seconds / 60.0;
  }

  @Override
  public int compareTo(TimeSpan other) {
    return Double.compare(seconds, other.seconds);
  }
}
