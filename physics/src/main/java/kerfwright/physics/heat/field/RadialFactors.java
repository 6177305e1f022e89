package kerfwright.physics.heat.field;

/**
 * The equations of one kind of row along r, and their elimination from the axis outwards.
 *
 * <p>Node i: mass_i dT_i/dt = link_(i-1) (T_(i-1) - T_i) + link_i (T_(i+1) - T_i) + loss_i (S_i -
 * T_i). With tau half a time step the implicit half step solves (I + tau B) T = g + tau s, where B
 * and s are the right side divided by mass.
 */
final class RadialFactors {
  final double[] mass;
  final double[] link;
  final double[] loss;
  final double[] lossTimesOutsideC;
  final double[] inv;
  final double[] before;
  final double[] after;

  /** Source already multiplied by inv. */
  final double[] source;

  RadialFactors(int columns) {
    mass = new double[columns];
    link = new double[columns];
    loss = new double[columns];
    lossTimesOutsideC = new double[columns];
    inv = new double[columns];
    before = new double[columns];
    after = new double[columns];
    source = new double[columns];
  }

  void factor(double tau, int from) {
    int last = inv.length - 1;
    double afterPrevious = 0;
    double linkPrevious = 0;
    for (int i = from; i <= last; i++) {
      double share = tau / mass[i];
      double linkNext = i < last ? link[i] : 0;
      double inward = share * linkPrevious;
      double pivot = 1 + share * (linkPrevious + linkNext + loss[i]) - inward * afterPrevious;
      double w = 1 / pivot;
      inv[i] = w;
      before[i] = inward * w;
      after[i] = share * linkNext * w;
      source[i] = share * lossTimesOutsideC[i] * w;
      afterPrevious = after[i];
      linkPrevious = linkNext;
    }
  }

  /** Explicit half step: g = T - tau B T + tau s. */
  void explicit(double[] t, double[] g, double tau, int from) {
    int last = inv.length - 1;
    for (int i = from; i <= last; i++) {
      double flow = lossTimesOutsideC[i] - loss[i] * t[i];
      if (i > from) {
        flow += link[i - 1] * (t[i - 1] - t[i]);
      }
      if (i < last) {
        flow += link[i] * (t[i + 1] - t[i]);
      }
      g[i] = t[i] + tau / mass[i] * flow;
    }
  }
}
