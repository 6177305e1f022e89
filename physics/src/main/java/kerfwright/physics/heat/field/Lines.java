package kerfwright.physics.heat.field;

/**
 * The inner loops of the sweeps, kept apart so that the compiler turns each into vector code. Along
 * z the loops run across neighbouring columns; along r four rows go side by side, because a single
 * row would wait for itself at every step.
 */
public final class Lines {
  private Lines() {}

  /** First row of an elimination: x = (g + source) inv. */
  static void first(double[] x, double[] g, double source, double inv, int from, int to) {
    for (int i = from; i < to; i++) {
      x[i] = (g[i] + source) * inv;
    }
  }

  /** Next row of an elimination: x = g inv + link x_before. */
  static void eliminate(
      double[] x, double[] g, double[] before, double inv, double link, int from, int to) {
    for (int i = from; i < to; i++) {
      x[i] = g[i] * inv + link * before[i];
    }
  }

  static void add(double[] x, double value, int from, int to) {
    for (int i = from; i < to; i++) {
      x[i] += value;
    }
  }

  /** Substitution x += link x_before, and reflection g = 2 x - g. */
  static void substituteReflecting(
      double[] x, double[] g, double[] before, double link, int from, int to) {
    for (int i = from; i < to; i++) {
      double value = x[i] + link * before[i];
      x[i] = value;
      g[i] = value + value - g[i];
    }
  }

  /** Substitution x += link x_before, and g = x. */
  static void substituteCopying(
      double[] x, double[] g, double[] before, double link, int from, int to) {
    for (int i = from; i < to; i++) {
      double value = x[i] + link * before[i];
      x[i] = value;
      g[i] = value;
    }
  }

  static void reflect(double[] x, double[] g, int from, int to) {
    for (int i = from; i < to; i++) {
      g[i] = x[i] + x[i] - g[i];
    }
  }

  /** g = t + ratio (g - t). */
  static void rescale(double[] t, double[] g, double ratio) {
    for (int i = 0; i < t.length; i++) {
      g[i] = t[i] + ratio * (g[i] - t[i]);
    }
  }

  /** Solves one row along r; g = 2 x - g at the end. */
  static void row(double[] x, double[] g, RadialFactors f, int from) {
    double[] inv = f.inv;
    double[] before = f.before;
    double[] after = f.after;
    int last = inv.length - 1;
    double value = g[from] * inv[from] + f.source[from];
    x[from] = value;
    for (int i = from + 1; i <= last; i++) {
      value = g[i] * inv[i] + before[i] * value + f.source[i];
      x[i] = value;
    }
    g[last] = value + value - g[last];
    for (int i = last - 1; i >= from; i--) {
      value = x[i] + after[i] * value;
      x[i] = value;
      g[i] = value + value - g[i];
    }
  }

  /** Solves four rows along r that share their factors; g = 2 x - g at the end. */
  static void fourRows(
      double[] x0,
      double[] x1,
      double[] x2,
      double[] x3,
      double[] g0,
      double[] g1,
      double[] g2,
      double[] g3,
      RadialFactors f,
      int from) {
    double[] inv = f.inv;
    double[] before = f.before;
    double[] after = f.after;
    int last = inv.length - 1;
    double start = f.source[from];
    double w = inv[from];
    double v0 = g0[from] * w + start;
    double v1 = g1[from] * w + start;
    double v2 = g2[from] * w + start;
    double v3 = g3[from] * w + start;
    x0[from] = v0;
    x1[from] = v1;
    x2[from] = v2;
    x3[from] = v3;
    for (int i = from + 1; i <= last; i++) {
      double a = inv[i];
      double b = before[i];
      v0 = g0[i] * a + b * v0;
      v1 = g1[i] * a + b * v1;
      v2 = g2[i] * a + b * v2;
      v3 = g3[i] * a + b * v3;
      x0[i] = v0;
      x1[i] = v1;
      x2[i] = v2;
      x3[i] = v3;
    }
    double end = last > from ? f.source[last] : 0;
    v0 += end;
    v1 += end;
    v2 += end;
    v3 += end;
    x0[last] = v0;
    x1[last] = v1;
    x2[last] = v2;
    x3[last] = v3;
    g0[last] = v0 + v0 - g0[last];
    g1[last] = v1 + v1 - g1[last];
    g2[last] = v2 + v2 - g2[last];
    g3[last] = v3 + v3 - g3[last];
    for (int i = last - 1; i >= from; i--) {
      double c = after[i];
      v0 = x0[i] + c * v0;
      v1 = x1[i] + c * v1;
      v2 = x2[i] + c * v2;
      v3 = x3[i] + c * v3;
      x0[i] = v0;
      x1[i] = v1;
      x2[i] = v2;
      x3[i] = v3;
      g0[i] = v0 + v0 - g0[i];
      g1[i] = v1 + v1 - g1[i];
      g2[i] = v2 + v2 - g2[i];
      g3[i] = v3 + v3 - g3[i];
    }
  }
}
