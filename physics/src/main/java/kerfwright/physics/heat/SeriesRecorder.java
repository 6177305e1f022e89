package kerfwright.physics.heat;

import java.util.Arrays;

/** Reads probes and floor after every step and keeps what falls due at the output times. */
final class SeriesRecorder {
  private final ProbeReader[] readers;
  private final ProbeReader axis;
  private final CutFloor floor;
  private final double everyS;
  private final double[] timesS;
  private final double[][] probesC;
  private final double[] floorC;
  private final double[] floorDepthMm;
  private final double[] cutAwayS;
  private final double[] peakC;
  private final double[] last;
  private final double[] now;
  private double lastFloorC;
  private double lastDepthM;
  private double lastS;
  private double peakFloorC = Double.NEGATIVE_INFINITY;
  private int written;

  SeriesRecorder(
      ProbeReader[] readers, ProbeReader axis, CutFloor floor, double everyS, double durationS) {
    this.readers = readers;
    this.axis = axis;
    this.floor = floor;
    this.everyS = everyS;
    double wanted = Math.floor(durationS / everyS + 1e-6);
    if (wanted > 5_000_000) {
      throw new IllegalArgumentException(
          "At most 5000000 outputs are kept, got " + wanted + "; take a longer output interval");
    }
    int outputs = (int) wanted;
    timesS = new double[outputs];
    probesC = new double[readers.length][outputs];
    floorC = new double[outputs];
    floorDepthMm = new double[outputs];
    cutAwayS = new double[readers.length];
    peakC = new double[readers.length];
    Arrays.fill(cutAwayS, Double.POSITIVE_INFINITY);
    last = new double[readers.length];
    now = new double[readers.length];
  }

  void start(double[][] t) {
    for (int p = 0; p < readers.length; p++) {
      last[p] = readers[p].read(t);
      peakC[p] = last[p];
    }
    lastFloorC = axis.read(t);
    peakFloorC = lastFloorC;
  }

  void step(double[][] t, double atS, double depthM) {
    for (int p = 0; p < readers.length; p++) {
      now[p] = readers[p].read(t);
      peakC[p] = Math.max(peakC[p], now[p]);
      if (cutAwayS[p] == Double.POSITIVE_INFINITY && readers[p].cutAway()) {
        cutAwayS[p] = atS;
      }
    }
    double[] row = t[floor.row];
    for (int i = 0; i < floor.grid.spot; i++) {
      peakFloorC = Math.max(peakFloorC, row[i]);
    }
    double floorNow = row[0];
    while (written < timesS.length) {
      double due = (written + 1) * everyS;
      if (due > atS + 1e-7 * everyS) {
        break;
      }
      double share = atS > lastS ? Math.min(1, (due - lastS) / (atS - lastS)) : 1;
      timesS[written] = due;
      for (int p = 0; p < readers.length; p++) {
        probesC[p][written] = last[p] + share * (now[p] - last[p]);
      }
      floorC[written] = lastFloorC + share * (floorNow - lastFloorC);
      floorDepthMm[written] = (lastDepthM + share * (depthM - lastDepthM)) * 1e3;
      written++;
    }
    System.arraycopy(now, 0, last, 0, now.length);
    lastFloorC = floorNow;
    lastDepthM = depthM;
    lastS = atS;
  }

  HeatSeries series(EnergyBalance balance, HeatMesh mesh) {
    return new HeatSeries(
        timesS, probesC, cutAwayS, floorC, floorDepthMm, peakC, peakFloorC, balance, mesh);
  }
}
