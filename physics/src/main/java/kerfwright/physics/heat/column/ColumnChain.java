package kerfwright.physics.heat.column;

import java.util.Arrays;

/**
 * A chain of nodes that conduct to their neighbours: mass dT/dt = link (T_next - T) + link
 * (T_previous - T) - loss T + source. Steps are implicit with half the step in the matrix, so a
 * full step is Crank-Nicolson and a half step backward Euler with the same factors.
 */
final class ColumnChain {
  private static final int KEPT = 12;

  double[] t = new double[0];
  double[] mass = new double[0];
  double[] link = new double[0];
  double[] loss = new double[0];
  double[] source = new double[0];
  private double[] inv = new double[0];
  private double[] back = new double[0];

  /** Factors of the last few lengths of step, which strokes and pauses bring again and again. */
  private final double[] keptTau = new double[KEPT];

  private final double[][] keptInv = new double[KEPT][0];
  private final double[][] keptBack = new double[KEPT][0];
  private int nextKept;
  private double[] work = new double[0];
  int first;
  int last;
  private double tau;

  void size(int nodes) {
    if (t.length < nodes) {
      t = new double[nodes];
      mass = new double[nodes];
      link = new double[nodes];
      loss = new double[nodes];
      source = new double[nodes];
      work = new double[nodes];
      for (int i = 0; i < KEPT; i++) {
        keptInv[i] = new double[nodes];
        keptBack[i] = new double[nodes];
      }
    }
    forget();
  }

  /** What lies below the first two nodes changed: no factors hold any more. */
  void forget() {
    Arrays.fill(keptTau, Double.NaN);
  }

  double halfStepS() {
    return tau;
  }

  /**
   * Factors for half a time step; link[last] joins the last node to zero outside. Between two calls
   * only the first two nodes and the link between them may change, and the first may move on: the
   * nodes below are eliminated first, so their factors stay.
   */
  void factor(double halfStepS) {
    tau = halfStepS;
    for (int i = 0; i < KEPT; i++) {
      if (keptTau[i] == tau) {
        inv = keptInv[i];
        back = keptBack[i];
        factorTop();
        return;
      }
    }
    keptTau[nextKept] = tau;
    inv = keptInv[nextKept];
    back = keptBack[nextKept];
    nextKept = (nextKept + 1) % KEPT;
    for (int j = last; j >= first; j--) {
      factorAt(j);
    }
  }

  /** The same with the length of step as it is. */
  void factorTop() {
    if (first < last) {
      factorAt(first + 1);
    }
    factorAt(first);
  }

  private void factorAt(int j) {
    double above = j > first ? tau * link[j - 1] : 0;
    double below = tau * link[j];
    double carried = j < last ? below * back[j + 1] : 0;
    inv[j] = 1 / (mass[j] + above + below + tau * loss[j] - carried);
    back[j] = above * inv[j];
  }

  /** Backward Euler over half a step. */
  void halfStep() {
    double carried = 0;
    for (int j = last; j >= first; j--) {
      double value = mass[j] * t[j] + tau * source[j];
      if (j < last) {
        value += tau * link[j] * carried;
      }
      carried = value * inv[j];
      work[j] = carried;
    }
    substitute();
  }

  /** Crank-Nicolson over a whole step. */
  void fullStep() {
    double carried = 0;
    double flowOut = link[last] * t[last];
    for (int j = last; j >= first; j--) {
      double here = t[j];
      double flowIn = j > first ? link[j - 1] * (t[j - 1] - here) : 0;
      double value = mass[j] * here + tau * (flowIn - flowOut - loss[j] * here + 2 * source[j]);
      if (j < last) {
        value += tau * link[j] * carried;
      }
      carried = value * inv[j];
      work[j] = carried;
      flowOut = flowIn;
    }
    substitute();
  }

  private void substitute() {
    double value = work[first];
    t[first] = value;
    for (int j = first + 1; j <= last; j++) {
      value = work[j] + back[j] * value;
      t[j] = value;
    }
  }
}
