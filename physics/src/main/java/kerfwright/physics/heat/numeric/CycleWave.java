package kerfwright.physics.heat.numeric;

/**
 * How quantities ran through the last cycle of strokes, less their drift: written on top of a mean
 * while cycles are lumped.
 */
public final class CycleWave {
  private final double[] first;
  private final double[][] values;
  private final double[] highest;
  private double[] times = new double[64];
  private int kept;
  private double fromS;
  private double periodS;
  private boolean keeps;
  private boolean repeats;

  public CycleWave(int quantities) {
    first = new double[quantities];
    values = new double[quantities][times.length];
    highest = new double[quantities];
  }

  public void begin(double[] now, double atS) {
    kept = 0;
    keeps = true;
    fromS = atS;
    System.arraycopy(now, 0, first, 0, first.length);
  }

  public void keep(double[] now, double atS) {
    if (!keeps) {
      return;
    }
    if (kept == times.length) {
      times = java.util.Arrays.copyOf(times, 2 * kept);
      for (int q = 0; q < values.length; q++) {
        values[q] = java.util.Arrays.copyOf(values[q], 2 * kept);
      }
    }
    times[kept] = atS - fromS;
    for (int q = 0; q < values.length; q++) {
      values[q][kept] = now[q];
    }
    kept++;
  }

  /** The cycle ended where the mean is as given. */
  public void repeat(double[] meanNow, double atS, double lengthS) {
    for (int q = 0; q < values.length; q++) {
      double end = values[q][kept - 1];
      double drift = end - first[q];
      highest[q] = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < kept; i++) {
        values[q][i] += drift * (1 - times[i] / lengthS) - meanNow[q];
        highest[q] = Math.max(highest[q], values[q][i]);
      }
    }
    fromS = atS;
    periodS = lengthS;
    keeps = false;
    repeats = true;
  }

  public void stop() {
    repeats = false;
  }

  /** What the highest of a cycle is over its mean. */
  public double highest(int quantity) {
    return repeats ? highest[quantity] : 0;
  }

  /** What a quantity is over its mean at a time. */
  public double at(int quantity, double atS) {
    if (!repeats || quantity >= values.length) {
      return 0;
    }
    double[] value = values[quantity];
    double into = (atS - fromS) % periodS;
    int i = 0;
    while (i + 1 < kept && times[i] < into) {
      i++;
    }
    // a cycle begins as the one before ended
    double before = i == 0 ? 0 : times[i - 1];
    double left = i == 0 ? value[kept - 1] : value[i - 1];
    double share = Math.min(1, Math.max(0, (into - before) / (times[i] - before)));
    return left + share * (value[i] - left);
  }
}
