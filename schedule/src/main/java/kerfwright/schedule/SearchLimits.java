package kerfwright.schedule;

/**
 * How long and how to search.
 *
 * @param seconds wall time for the whole plan
 * @param threads search threads; with 1 and an unlimited time the plan depends on the seed alone
 * @param seed seed of every random choice
 */
public record SearchLimits(double seconds, int threads, int seed) {
  public SearchLimits {
    if (!(seconds > 0)) {
      throw new IllegalArgumentException("seconds must be above 0, got " + seconds);
    }
    if (threads < 1) {
      throw new IllegalArgumentException("threads must be 1 or more, got " + threads);
    }
  }

  public static SearchLimits ofSeconds(double seconds) {
    return new SearchLimits(seconds, 2, 1);
  }
}
