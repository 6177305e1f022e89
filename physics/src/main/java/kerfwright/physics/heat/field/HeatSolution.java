package kerfwright.physics.heat.field;

/**
 * The answer to a {@link HeatProblem}.
 *
 * @param series temperatures against time, with the mesh used
 * @param errorEstimateK estimated largest error over probes and output times; not a number when the
 *     mesh was given, because then nothing was estimated
 * @param reached whether the allowed error was reached before the mesh became too large
 */
public record HeatSolution(HeatSeries series, double errorEstimateK, boolean reached) {
  public double[] timesS() {
    return series.timesS();
  }

  public double[] temperaturesC(int probe) {
    return series.probesC()[probe];
  }

  public int cellsR() {
    return series.mesh().cellsR();
  }

  public int cellsZ() {
    return series.mesh().cellsZ();
  }

  public double stepS() {
    return series.mesh().stepS();
  }
}
