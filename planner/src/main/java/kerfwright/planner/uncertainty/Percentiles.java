package kerfwright.planner.uncertainty;

import java.util.Arrays;
import kerfwright.planner.plan.Estimate;

/** 5th, 50th and 95th percentile of samples, linear between ranks. */
public final class Percentiles {
  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  private Percentiles() {}

  public static Estimate of(double[] samples) {
    double[] sorted = samples.clone();
    Arrays.sort(sorted);
    return new Estimate(at(sorted, LOW), at(sorted, 0.5), at(sorted, HIGH));
  }

  /**
   * Standard error of the ends from the number of samples, as a share of the width: the rank of a
   * percentile p among n samples has the standard deviation sqrt(n p (1 - p)).
   */
  public static double errorOfEnds(double[] samples, int independent) {
    double[] sorted = samples.clone();
    Arrays.sort(sorted);
    double ranks = Math.sqrt(LOW * HIGH / independent);
    double low = at(sorted, LOW + ranks) - at(sorted, LOW - ranks);
    double high = at(sorted, HIGH + ranks) - at(sorted, HIGH - ranks);
    double width = at(sorted, HIGH) - at(sorted, LOW);
    return width > 0 ? Math.max(low, high) / 2 / width : 0;
  }

  static double at(double[] sorted, double share) {
    double rank = Math.max(0, Math.min(1, share)) * (sorted.length - 1);
    int below = (int) Math.floor(rank);
    int above = Math.min(sorted.length - 1, below + 1);
    return sorted[below] + (rank - below) * (sorted[above] - sorted[below]);
  }
}
