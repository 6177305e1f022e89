package kerfwright.physics.heat.column;

import java.util.Arrays;
import kerfwright.physics.heat.ColumnSeries;
import kerfwright.physics.heat.numeric.CycleWave;
import kerfwright.physics.heat.numeric.TimedOutputs;

/** Reads depths and floor of the column after every step and keeps what falls due. */
final class ColumnRecorder {
  private final int[] element;
  private final double[] depthM;
  private final SpotReading[] reading;
  private final double[] peakC;
  private final TimedOutputs outputs;
  private final CycleWave wave;

  /** Probes, then the floor's temperature and its depth in mm. */
  private final double[] now;

  private double peakFloorC;
  private int steps;

  ColumnRecorder(
      double[] depthsMm, ColumnGrid grid, double everyS, double durationS, double initialC) {
    int probes = depthsMm.length;
    element = new int[probes];
    depthM = new double[probes];
    reading = new SpotReading[probes];
    for (int p = 0; p < probes; p++) {
      depthM[p] = depthsMm[p] * 1e-3;
      element[p] = grid.elementAt(depthM[p]);
      reading[p] = new SpotReading();
    }
    wave = new CycleWave(probes + 1);
    outputs = new TimedOutputs(probes + 2, everyS, durationS, wave);
    now = new double[probes + 2];
    Arrays.fill(now, 0, probes + 1, initialC);
    outputs.start(now);
    peakC = Arrays.copyOf(now, probes);
    peakFloorC = initialC;
  }

  void step(ColumnState column, double cutToM, double atS) {
    steps++;
    read(column);
    int probes = depthM.length;
    peakFloorC = Math.max(peakFloorC, now[probes] + wave.highest(probes));
    for (int p = 0; p < probes; p++) {
      peakC[p] = Math.max(peakC[p], now[p] + wave.highest(p));
    }
    now[probes + 1] = cutToM * 1e3;
    wave.keep(now, atS);
    outputs.step(now, atS);
  }

  private void read(ColumnState column) {
    int probes = depthM.length;
    double floorC = column.floorC();
    for (int p = 0; p < probes; p++) {
      now[p] =
          depthM[p] <= column.floorM()
              ? floorC
              : column.temperatureC(depthM[p], element[p], reading[p]);
    }
    now[probes] = floorC;
  }

  /** A cycle of strokes begins. */
  void cycle(double atS) {
    wave.begin(now, atS);
  }

  /** From here on the column follows the mean: the last cycle's ripple is written on top of it. */
  void mean(ColumnState column, double atS, double periodS) {
    read(column);
    wave.repeat(now, atS, periodS);
    outputs.start(now);
  }

  /** The column follows every stroke again. */
  void strokes(ColumnState column) {
    wave.stop();
    read(column);
    outputs.start(now);
  }

  ColumnSeries series() {
    int probes = depthM.length;
    return new ColumnSeries(
        outputs.timesS,
        outputs.first(probes),
        outputs.values[probes],
        outputs.values[probes + 1],
        peakC,
        peakFloorC,
        steps);
  }
}
