package kerfwright.physics.heat.column;

import kerfwright.physics.heat.HeatStretch;

/**
 * What strokes and pauses that repeat do in the mean.
 *
 * <pre>
 *   into the floor, on average:  w q + w h_on (T_on - F_on) + (1 - w) h_off (T_off - F_off)
 *   F_on - F_off = Z (q + h_on (T_on - F) - h_off (T_off - F)),   F = w F_on + (1 - w) F_off
 *
 *   w   share of strokes in the time      F_on, F_off   mean temperature of the floor in each
 *   q   heat flux of a stroke             Z             ripple of the floor for a jump of flux
 * </pre>
 *
 * <p>With Z the mean intake is linear in the mean floor F, so that steps much longer than a stroke
 * follow the mean: a mean without Z would lose a tenth of the heat and more, for water meets a
 * floor cooler than the mean. Z depends on the work under the floor, the coolants and the rhythm
 * only; it is read from two cycles that were followed stroke by stroke. How the state at the end of
 * a cycle departs from the mean (the ripple, which dies out within millimetres) is kept, and put
 * back at the same distance from the floor afterwards. This form is our own.
 */
final class StrokeMean {
  /** Cycles at the end of a stretch that are followed. */
  static final int LAST = 2;

  /** Fewer cycles than this are not worth lumping. */
  static final int LEAST = 4;

  /** At most so many times the cycles gone by are lumped before the ripple is read again. */
  static final int GROWTH = 2;

  /** How far the floor may go down before the ripple is read again. */
  static final double DEEPEST_M = 0.1e-3;

  private double[] sum = new double[0];
  private double[] mean = new double[0];
  private double[] before = new double[0];
  private double[] ripple = new double[0];
  private double[] ripplesAtM = new double[0];
  private int ripples;
  private final double[] floorSum = new double[2];
  private final double[] seconds = new double[2];
  private double floorC;
  private double floorBeforeC;
  private double jumpC;
  private int phase;
  private int rowAtStart;
  private int rowOfMean;
  private int cycles;
  private double fluxWPerM2;
  private double coefficientWPerM2K;

  /** A new stretch: nothing read before holds. */
  void forget() {
    cycles = 0;
  }

  /** A cycle begins. */
  void begin(int row) {
    rowAtStart = row;
    java.util.Arrays.fill(sum, 0);
    java.util.Arrays.fill(floorSum, 0);
    java.util.Arrays.fill(seconds, 0);
  }

  void phase(boolean on) {
    phase = on ? 0 : 1;
  }

  /** The state holds for so long. */
  void add(double[] t, double lengthS) {
    if (sum.length < t.length) {
      sum = new double[t.length];
      mean = new double[t.length];
      before = new double[t.length];
      ripple = new double[t.length];
      ripplesAtM = new double[t.length];
    }
    for (int j = 0; j < t.length; j++) {
      sum[j] += lengthS * t[j];
    }
  }

  /** The floor as the coolant met it in a step: the intake is a small difference of large ones. */
  void floor(double metC, double lengthS) {
    floorSum[phase] += lengthS * metC;
    seconds[phase] += lengthS;
  }

  /** A cycle ends. */
  void end(int row) {
    if (row != rowAtStart) {
      cycles = 0;
      return;
    }
    cycles = row == rowOfMean ? cycles + 1 : 1;
    rowOfMean = row;
    double[] swap = before;
    before = mean;
    mean = swap;
    double all = seconds[0] + seconds[1];
    for (int j = 0; j < sum.length; j++) {
      mean[j] = sum[j] / all;
    }
    floorBeforeC = floorC;
    floorC = (floorSum[0] + floorSum[1]) / all;
    jumpC = floorSum[0] / seconds[0] - floorSum[1] / seconds[1];
  }

  /** Whether two cycles over the same node were read. */
  boolean ready(int row) {
    return cycles >= 2 && row == rowOfMean;
  }

  /** Puts the mean in the place of the state at the end of a cycle and keeps the difference. */
  void settle(HeatStretch stretch, double[] t, double[] z, int row, double floorM, int last) {
    ripples = last - row + 1;
    for (int i = 0; i < ripples; i++) {
      int j = row + i;
      double now = mean[j] + 0.5 * (mean[j] - before[j]);
      ripplesAtM[i] = i == 0 ? 0 : z[j] - floorM;
      ripple[i] = t[j] - now;
      t[j] = now;
    }
    double share = stretch.onS() / (stretch.onS() + stretch.offS());
    double on = stretch.spotWhileOn().coefficientWPerM2K();
    double off = stretch.spotWhileOff().coefficientWPerM2K();
    double broughtOn = stretch.fluxWPerM2() + on * stretch.spotWhileOn().temperatureC();
    double broughtOff = off * stretch.spotWhileOff().temperatureC();
    // strokes come half a cycle before pauses, so that they lag behind what drifts
    double jump = jumpC + 0.5 * (floorC - floorBeforeC);
    double drive = broughtOn - broughtOff - (on - off) * floorC;
    double z0 = Math.abs(drive) > 1e-9 ? jump / drive : 0;
    double lost = share * (1 - share) * (on - off) * z0;
    fluxWPerM2 = share * broughtOn + (1 - share) * broughtOff - lost * (broughtOn - broughtOff);
    coefficientWPerM2K = Math.max(0, share * on + (1 - share) * off - lost * (on - off));
    cycles = 0;
  }

  double fluxWPerM2() {
    return fluxWPerM2;
  }

  double coefficientWPerM2K() {
    return coefficientWPerM2K;
  }

  /** Puts the ripple back, at the distance from the floor where it was. */
  void restore(double[] t, double[] z, int row, double floorM, int last) {
    int i = 0;
    for (int j = row; j <= last; j++) {
      double at = j == row ? 0 : z[j] - floorM;
      while (i + 2 < ripples && ripplesAtM[i + 1] < at) {
        i++;
      }
      double share =
          ripples < 2 ? 0 : Math.min(1, (at - ripplesAtM[i]) / (ripplesAtM[i + 1] - ripplesAtM[i]));
      double next = ripples < 2 ? ripple[i] : ripple[i + 1];
      t[j] += ripple[i] + share * (next - ripple[i]);
    }
  }
}
