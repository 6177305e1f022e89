package kerfwright.physics.heat;

/**
 * What blood does to the tissue at the bottom in a step: each row keeps a share of its departure
 * from the blood's temperature, exact for the sink alone. A row whose middle is too warm keeps all
 * of it, and so do the rows that the cut has reached.
 */
final class Perfusion {
  private final Face.Perfused tissue;
  private final HeatGrid grid;
  private final CutFloor floor;
  private final int first;
  private final double[] tissueM;

  Perfusion(HeatBody body, HeatGrid grid, CutFloor floor) {
    this.grid = grid;
    this.floor = floor;
    tissue =
        body.bottom() instanceof Face.Perfused perfused ? perfused : new Face.Perfused(0, 0, 0);
    tissueM = tissueM(body, grid.z);
    int row = 0;
    while (row < grid.rows && tissueM[row] == 0) {
      row++;
    }
    first = tissue.sinkWPerM3K() == 0 ? grid.rows : row;
  }

  /** How much of each node's height is tissue: all of the last layer. */
  static double[] tissueM(HeatBody body, double[] z) {
    int last = z.length - 1;
    double topM = z[last] - body.layers().get(body.layers().size() - 1).thicknessMm() * 1e-3;
    double[] heights = new double[z.length];
    for (int j = 0; j < last; j++) {
      if (0.5 * (z[j] + z[j + 1]) > topM) {
        heights[j] += 0.5 * (z[j + 1] - z[j]);
        heights[j + 1] += 0.5 * (z[j + 1] - z[j]);
      }
    }
    return heights;
  }

  /** Changes the temperatures and their explicit part; heat per radian brought in. */
  double step(double[][] t, double[][] g, double seconds) {
    double heat = 0;
    for (int j = Math.max(first, floor.row + 2); j < grid.rows; j++) {
      if (t[j][0] > Face.Perfused.STOPS_C) {
        continue;
      }
      double kept = tissue.kept(tissueM[j], grid.rowC[j], seconds);
      double sum = 0;
      for (int i = 0; i < grid.columns; i++) {
        double change = (kept - 1) * (t[j][i] - tissue.bloodC());
        t[j][i] += change;
        g[j][i] = tissue.bloodC() + kept * (g[j][i] - tissue.bloodC());
        sum += grid.area[i] * change;
      }
      heat += grid.rowC[j] * sum;
    }
    return heat;
  }
}
