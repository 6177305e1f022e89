package kerfwright.physics.heat;

import java.util.Arrays;

/** Reads depths and floor of the column after every step and keeps what falls due. */
final class ColumnRecorder {
  private final int[] element;
  private final double[] depthM;
  private final double everyS;
  private final double[] timesS;
  private final double[][] probesC;
  private final double[] floorC;
  private final double[] floorDepthMm;
  private final double[] peakC;
  private final double[] last;
  private final double[] now;
  private double lastFloorC;
  private double lastDepthM;
  private double lastS;
  private double peakFloorC;
  private int written;
  private int steps;

  ColumnRecorder(double[] depthsMm, double[] z, double everyS, double durationS, double initialC) {
    this.everyS = everyS;
    element = new int[depthsMm.length];
    depthM = new double[depthsMm.length];
    for (int p = 0; p < depthsMm.length; p++) {
      depthM[p] = depthsMm[p] * 1e-3;
      int j = z.length - 2;
      while (j > 0 && z[j] > depthM[p] + 1e-12) {
        j--;
      }
      element[p] = j;
    }
    double wanted = Math.floor(durationS / everyS + 1e-6);
    if (wanted > 5_000_000) {
      throw new IllegalArgumentException(
          "At most 5000000 outputs are kept, got " + wanted + "; take a longer output interval");
    }
    int outputs = (int) wanted;
    timesS = new double[outputs];
    probesC = new double[depthsMm.length][outputs];
    floorC = new double[outputs];
    floorDepthMm = new double[outputs];
    peakC = new double[depthsMm.length];
    last = new double[depthsMm.length];
    now = new double[depthsMm.length];
    Arrays.fill(peakC, initialC);
    Arrays.fill(last, initialC);
    lastFloorC = initialC;
    peakFloorC = initialC;
  }

  void step(LayeredColumn column, double cutToM, double atS) {
    steps++;
    double floorNow = column.floorC();
    peakFloorC = Math.max(peakFloorC, floorNow);
    for (int p = 0; p < now.length; p++) {
      double value =
          depthM[p] <= column.floorM() ? floorNow : column.temperatureC(depthM[p], element[p]);
      now[p] = value;
      peakC[p] = Math.max(peakC[p], value);
    }
    while (written < timesS.length) {
      double due = (written + 1) * everyS;
      if (due > atS + 1e-7 * everyS) {
        break;
      }
      double share = atS > lastS ? Math.min(1, (due - lastS) / (atS - lastS)) : 1;
      timesS[written] = due;
      for (int p = 0; p < now.length; p++) {
        probesC[p][written] = last[p] + share * (now[p] - last[p]);
      }
      floorC[written] = lastFloorC + share * (floorNow - lastFloorC);
      floorDepthMm[written] = (lastDepthM + share * (cutToM - lastDepthM)) * 1e3;
      written++;
    }
    System.arraycopy(now, 0, last, 0, now.length);
    lastFloorC = floorNow;
    lastDepthM = cutToM;
    lastS = atS;
  }

  ColumnSeries series() {
    return new ColumnSeries(timesS, probesC, floorC, floorDepthMm, peakC, peakFloorC, steps);
  }
}
