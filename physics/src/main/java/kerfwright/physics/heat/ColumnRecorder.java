package kerfwright.physics.heat;

import java.util.Arrays;

/** Reads depths and floor of the column after every step and keeps what falls due. */
final class ColumnRecorder {
  private final int[] element;
  private final double[] depthM;
  private final SpotReading[] reading;
  private final double[] peakC;
  private final TimedOutputs outputs;

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
    outputs = new TimedOutputs(probes + 2, everyS, durationS);
    now = new double[probes + 2];
    Arrays.fill(now, 0, probes + 1, initialC);
    outputs.start(now);
    peakC = Arrays.copyOf(now, probes);
    peakFloorC = initialC;
  }

  void step(LayeredColumn column, double cutToM, double atS) {
    steps++;
    int probes = depthM.length;
    double floorC = column.floorC();
    peakFloorC = Math.max(peakFloorC, floorC);
    for (int p = 0; p < probes; p++) {
      double value =
          depthM[p] <= column.floorM()
              ? floorC
              : column.temperatureC(depthM[p], element[p], reading[p]);
      now[p] = value;
      peakC[p] = Math.max(peakC[p], value);
    }
    now[probes] = floorC;
    now[probes + 1] = cutToM * 1e3;
    outputs.step(now, atS);
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
