package kerfwright.physics.heat.numeric;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * Places mesh lines along one axis: every break point gets a line, and between them the lines lie
 * so that each cell takes an equal share of the wanted density of cells.
 */
public final class Spacing {
  private static final int SAMPLES = 64;

  private Spacing() {}

  /**
   * Lines of {@code cells} cells over rising break points.
   *
   * @param breaks where a line must lie, the two ends among them, rising
   * @param cells cells in all, at least one for each interval between break points
   * @param density wanted cells per length, any scale, above zero
   */
  public static double[] lines(double[] breaks, int cells, DoubleUnaryOperator density) {
    int pieces = breaks.length - 1;
    if (cells < pieces) {
      throw new IllegalArgumentException(
          "The mesh needs at least " + pieces + " cells along this axis, got " + cells);
    }
    double[] weight = new double[pieces];
    for (int p = 0; p < pieces; p++) {
      weight[p] = cumulative(breaks[p], breaks[p + 1], density)[SAMPLES];
    }
    int[] share = shares(weight, cells);
    double[] lines = new double[cells + 1];
    int at = 0;
    lines[0] = breaks[0];
    for (int p = 0; p < pieces; p++) {
      double from = breaks[p];
      double width = breaks[p + 1] - from;
      double[] sum = cumulative(from, breaks[p + 1], density);
      int sample = 0;
      for (int c = 1; c < share[p]; c++) {
        double wanted = sum[SAMPLES] * c / share[p];
        while (sum[sample + 1] < wanted) {
          sample++;
        }
        double part = (wanted - sum[sample]) / (sum[sample + 1] - sum[sample]);
        lines[at + c] = from + width * (sample + part) / SAMPLES;
      }
      at += share[p];
      lines[at] = breaks[p + 1];
    }
    return lines;
  }

  /** Running sum of the density by the midpoint rule. */
  private static double[] cumulative(double from, double to, DoubleUnaryOperator density) {
    double[] sum = new double[SAMPLES + 1];
    double width = (to - from) / SAMPLES;
    for (int s = 0; s < SAMPLES; s++) {
      sum[s + 1] = sum[s] + width * density.applyAsDouble(from + (s + 0.5) * width);
    }
    return sum;
  }

  /** Whole cells for each piece, at least one, by largest remainder. */
  public static int[] shares(double[] weight, int cells) {
    double total = Arrays.stream(weight).sum();
    int[] share = new int[weight.length];
    double[] wanted = new double[weight.length];
    int given = 0;
    for (int p = 0; p < weight.length; p++) {
      wanted[p] = weight[p] / total * cells;
      share[p] = Math.max(1, (int) Math.floor(wanted[p] + 1e-9));
      given += share[p];
    }
    while (given != cells) {
      int best = -1;
      for (int p = 0; p < weight.length; p++) {
        boolean better =
            given < cells
                ? best < 0 || wanted[p] - share[p] > wanted[best] - share[best]
                : share[p] > 1 && (best < 0 || wanted[p] - share[p] < wanted[best] - share[best]);
        if (better) {
          best = p;
        }
      }
      share[best] += given < cells ? 1 : -1;
      given += given < cells ? 1 : -1;
    }
    return share;
  }

  /** Sorted break points without near-duplicates. */
  public static double[] breaks(double end, double... inner) {
    double[] all = Arrays.copyOf(inner, inner.length + 2);
    all[inner.length] = 0;
    all[inner.length + 1] = end;
    Arrays.sort(all);
    double[] kept = new double[all.length];
    int count = 0;
    for (double value : all) {
      if (value < 0 || value > end) {
        continue;
      }
      if (count > 0 && value - kept[count - 1] < 1e-6 * end) {
        if (value == end) {
          kept[count - 1] = end;
        }
        continue;
      }
      kept[count++] = value;
    }
    return Arrays.copyOf(kept, count);
  }
}
