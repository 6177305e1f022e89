package kerfwright.physics.heat.field;

import kerfwright.physics.heat.HeatBody;

/** Reads a temperature anywhere in the body: straight lines between nodes, floor above it. */
final class ProbeReader {
  private final HeatGrid grid;
  private final CutFloor floor;
  private final HeatBody body;
  private final double rM;
  private final double zM;
  private final int column;
  private final double outward;
  private final int element;

  ProbeReader(HeatGrid grid, CutFloor floor, HeatBody body, HeatProbe probe) {
    this.grid = grid;
    this.floor = floor;
    this.body = body;
    double radius = grid.r[grid.r.length - 1];
    double depth = grid.z[grid.z.length - 1];
    rM = probe.rMm() * 1e-3;
    zM = probe.zMm() * 1e-3;
    if (rM > radius * (1 + 1e-9) || zM > depth * (1 + 1e-9)) {
      throw new IllegalArgumentException(
          "Probe at r "
              + probe.rMm()
              + " mm, z "
              + probe.zMm()
              + " mm lies outside the body of radius "
              + body.radiusMm()
              + " mm and depth "
              + body.depthMm()
              + " mm");
    }
    column = find(grid.r, rM);
    outward = Math.min(1, (rM - grid.r[column]) / (grid.r[column + 1] - grid.r[column]));
    element = find(grid.z, zM);
  }

  private static int find(double[] lines, double at) {
    int k = lines.length - 2;
    while (k > 0 && lines[k] > at) {
      k--;
    }
    // A position that only rounding keeps off a line is on it.
    if (k + 1 < lines.length - 1 && lines[k + 1] - at < 1e-12) {
      k++;
    }
    return k;
  }

  /** Whether the material at the probe has been cut away. */
  boolean cutAway() {
    double edge = grid.wall < 0 ? Double.POSITIVE_INFINITY : grid.r[grid.wall] * (1 - 1e-9);
    return zM < floor.depthM - 1e-12 && rM < edge;
  }

  double read(double[][] t) {
    double inner = at(t, column);
    return outward <= 0 ? inner : inner + outward * (at(t, column + 1) - inner);
  }

  private double at(double[][] t, int i) {
    if (i >= grid.columns) {
      return body.side().outsideC();
    }
    int j = element;
    double top = grid.z[j];
    if (i < grid.spot && j <= floor.row) {
      if (zM <= floor.depthM) {
        return t[floor.row][i];
      }
      top = floor.depthM;
    }
    double share = Math.max(0, Math.min(1, (zM - top) / (grid.z[j + 1] - top)));
    double upper = t[j][i];
    double lower = j + 1 < grid.rows ? t[j + 1][i] : body.bottom().outsideC();
    return upper + share * (lower - upper);
  }
}
