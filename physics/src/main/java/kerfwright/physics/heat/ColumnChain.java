package kerfwright.physics.heat;

/**
 * A chain of nodes that conduct to their neighbours: mass dT/dt = link (T_next - T) + link
 * (T_previous - T) - loss T + source. Steps are implicit with half the step in the matrix, so a
 * full step is Crank-Nicolson and a half step backward Euler with the same factors.
 */
final class ColumnChain {
  double[] t = new double[0];
  double[] mass = new double[0];
  double[] link = new double[0];
  double[] loss = new double[0];
  double[] source = new double[0];
  private double[] inv = new double[0];
  private double[] back = new double[0];
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
      inv = new double[nodes];
      back = new double[nodes];
      work = new double[nodes];
    }
  }

  /** Factors for half a time step; link[last] joins the last node to zero outside. */
  void factor(double halfStepS) {
    tau = halfStepS;
    double previous = 0;
    double carried = 0;
    for (int j = first; j <= last; j++) {
      double next = tau * link[j];
      double w = 1 / (mass[j] + previous + next + tau * loss[j] - previous * carried);
      inv[j] = w;
      carried = next * w;
      back[j] = carried;
      previous = next;
    }
  }

  /** Backward Euler over half a step. */
  void halfStep() {
    double carried = 0;
    for (int j = first; j <= last; j++) {
      double value = mass[j] * t[j] + tau * source[j];
      if (j > first) {
        value += tau * link[j - 1] * carried;
      }
      carried = value * inv[j];
      work[j] = carried;
    }
    substitute();
  }

  /** Crank-Nicolson over a whole step. */
  void fullStep() {
    double carried = 0;
    double flowIn = 0;
    for (int j = first; j <= last; j++) {
      double here = t[j];
      double flowOut = link[j] * (j < last ? here - t[j + 1] : here);
      double value = mass[j] * here + tau * (flowIn - flowOut - loss[j] * here + 2 * source[j]);
      if (j > first) {
        value += tau * link[j - 1] * carried;
      }
      carried = value * inv[j];
      work[j] = carried;
      flowIn = flowOut;
    }
    substitute();
  }

  private void substitute() {
    double value = work[last];
    t[last] = value;
    for (int j = last - 1; j >= first; j--) {
      value = work[j] + back[j] * value;
      t[j] = value;
    }
  }
}
