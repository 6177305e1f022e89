package kerfwright.planner.uncertainty;

import java.util.Arrays;
import kerfwright.planner.plan.Estimate;

/** 5th, 50th and 95th percentile of samples, linear between ranks. */
public final class Percentiles {
  private Percentiles() {}

  public static Estimate of(double[] samples) {
    double[] sorted = samples.clone();
    Arrays.sort(sorted);
    return new Estimate(at(sorted, 0.05), at(sorted, 0.5), at(sorted, 0.95));
  }

  static double at(double[] sorted, double share) {
    double rank = share * (sorted.length - 1);
    int below = (int) Math.floor(rank);
    int above = Math.min(sorted.length - 1, below + 1);
    return sorted[below] + (rank - below) * (sorted[above] - sorted[below]);
  }
}
