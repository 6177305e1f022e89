package kerfwright.physics.heat.field;

import kerfwright.physics.heat.Face;
import kerfwright.physics.heat.HeatBody;

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
    tissueM = body.tissueM(grid.z);
    int row = 0;
    while (row < grid.rows && tissueM[row] == 0) {
      row++;
    }
    first = tissue.sinkWPerM3K() == 0 ? grid.rows : row;
  }

  /** Changes the temperatures and their explicit part; heat per radian brought in. */
  double step(double[][] t, double[][] g, double seconds) {
    double heat = 0;
    for (int j = Math.max(first, floor.row + 2); j < grid.rows; j++) {
      if (t[j][0] > Face.Perfused.stopsAboveC()) {
        continue;
      }
      double kept = tissue.keptShare(tissueM[j], grid.rowC[j], seconds);
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
