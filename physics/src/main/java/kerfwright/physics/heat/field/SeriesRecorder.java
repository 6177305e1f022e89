package kerfwright.physics.heat.field;

import java.util.Arrays;
import kerfwright.physics.heat.numeric.TimedOutputs;

/** Reads probes and floor after every step and keeps what falls due at the output times. */
final class SeriesRecorder {
  private final ProbeReader[] readers;
  private final ProbeReader axis;
  private final CutFloor floor;
  private final double[] cutAwayS;
  private final double[] peakC;
  private final TimedOutputs outputs;

  /** Probes, then the floor's temperature and its depth in mm. */
  private final double[] now;

  private double peakFloorC = Double.NEGATIVE_INFINITY;

  SeriesRecorder(
      ProbeReader[] readers, ProbeReader axis, CutFloor floor, double everyS, double durationS) {
    this.readers = readers;
    this.axis = axis;
    this.floor = floor;
    outputs = new TimedOutputs(readers.length + 2, everyS, durationS);
    now = new double[readers.length + 2];
    cutAwayS = new double[readers.length];
    Arrays.fill(cutAwayS, Double.POSITIVE_INFINITY);
    peakC = new double[readers.length];
  }

  void start(double[][] t) {
    for (int p = 0; p < readers.length; p++) {
      now[p] = readers[p].read(t);
      peakC[p] = now[p];
    }
    peakFloorC = axis.read(t);
    now[readers.length] = peakFloorC;
    outputs.start(now);
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
    now[readers.length] = row[0];
    now[readers.length + 1] = depthM * 1e3;
    outputs.step(now, atS);
  }

  HeatSeries series(EnergyBalance balance, HeatMesh mesh) {
    int probes = readers.length;
    return new HeatSeries(
        outputs.timesS,
        outputs.first(probes),
        cutAwayS,
        outputs.values[probes],
        outputs.values[probes + 1],
        peakC,
        peakFloorC,
        balance,
        mesh);
  }
}
