package kerfwright.physics.heat.field;

import kerfwright.physics.heat.Coolant;
import kerfwright.physics.heat.HeatBody;

/**
 * Implicit half steps along r. Rows of one material share their factors; rows above the floor begin
 * at the cavity wall, which coolant washes; the two rows at the floor have equations of their own.
 */
final class RadialSweep {
  private final HeatGrid grid;
  private final CutFloor floor;
  private final HeatBody body;
  private final int[] kind;
  private final RadialFactors[] whole;
  private final RadialFactors[] walled;
  private final int[] typicalRow;
  private final RadialFactors upper;
  private final RadialFactors lower;
  private Coolant outside = Coolant.NONE;
  private double tau;

  RadialSweep(HeatGrid grid, CutFloor floor, HeatBody body) {
    this.grid = grid;
    this.floor = floor;
    this.body = body;
    kind = new int[grid.rows];
    int[] first = new int[grid.rows];
    int kinds = 0;
    for (int j = 0; j < grid.rows; j++) {
      int found = -1;
      for (int k = 0; k < kinds && found < 0; k++) {
        if (same(grid.rowK[j] / grid.rowC[j], grid.rowK[first[k]] / grid.rowC[first[k]])
            && same(grid.rowH[j] / grid.rowC[j], grid.rowH[first[k]] / grid.rowC[first[k]])) {
          found = k;
        }
      }
      if (found < 0) {
        first[kinds] = j;
        found = kinds++;
      }
      kind[j] = found;
    }
    typicalRow = java.util.Arrays.copyOf(first, kinds);
    whole = new RadialFactors[kinds];
    walled = new RadialFactors[kinds];
    for (int k = 0; k < kinds; k++) {
      whole[k] = new RadialFactors(grid.columns);
      walled[k] = new RadialFactors(grid.columns);
    }
    upper = new RadialFactors(grid.columns);
    lower = new RadialFactors(grid.columns);
  }

  private static boolean same(double a, double b) {
    return Math.abs(a - b) <= 1e-12 * Math.abs(b);
  }

  /** New time step or coolant: every kind of row anew. */
  void prepare(double halfStepS, Coolant coolant) {
    tau = halfStepS;
    outside = coolant;
    for (int k = 0; k < whole.length; k++) {
      int j = typicalRow[k];
      fill(whole[k], grid.rowC[j], grid.rowK[j], grid.rowH[j]);
      whole[k].factor(tau, 0);
      if (grid.wall >= 0) {
        RadialFactors f = walled[k];
        fill(f, grid.rowC[j], grid.rowK[j], grid.rowH[j]);
        f.mass[grid.wall] = grid.wallOuter * grid.rowC[j];
        bare(f, grid.rowH[j]);
        f.factor(tau, grid.wall);
      }
    }
    floorMoved();
  }

  /** The floor has moved: the two rows at the floor anew. */
  void floorMoved() {
    if (floor.untouched()) {
      return;
    }
    int j = floor.row;
    double dz = grid.z[j + 1] - grid.z[j];
    double halfK = 0.5 * grid.kz[j] * floor.open * dz;
    double belowK = 0.5 * grid.kz[j + 1] * (grid.z[j + 2] - grid.z[j + 1]);
    fill(upper, grid.rowC[j], grid.rowK[j], grid.rowH[j]);
    double height = 0.5 * floor.open * dz;
    inSpot(upper, floor.upperC, halfK, floor.open * halfK, height);
    fill(lower, grid.rowC[j + 1], grid.rowK[j + 1], grid.rowH[j + 1]);
    height += 0.5 * (grid.z[j + 2] - grid.z[j + 1]);
    inSpot(lower, floor.lowerC, halfK + belowK, (2 - floor.open) * halfK + belowK, height);
    if (grid.wall >= 0) {
      upper.mass[grid.wall] = floor.wallUpperC;
      lower.mass[grid.wall] = floor.wallLowerC;
      bare(upper, floor.upperBare);
      bare(lower, floor.lowerBare);
    }
    upper.factor(tau, 0);
    lower.factor(tau, 0);
  }

  private void fill(RadialFactors f, double rowC, double rowK, double rowH) {
    int last = grid.columns - 1;
    for (int i = 0; i <= last; i++) {
      f.mass[i] = grid.area[i] * rowC;
      f.link[i] = i < grid.gr.length ? grid.gr[i] * rowK : 0;
    }
    f.loss[last] = grid.sideLink * rowK + grid.sideWash * rowH;
    f.lossTimesOutsideC[last] = f.loss[last] * body.side().outsideC();
  }

  private void inSpot(
      RadialFactors f, double capacity, double conducting, double atWall, double height) {
    for (int i = 0; i < grid.spot; i++) {
      f.mass[i] = grid.area[i] * capacity;
      if (i < grid.gr.length) {
        f.link[i] = grid.gr[i] * (i == grid.spot - 1 && grid.wall >= 0 ? atWall : conducting);
      }
    }
    if (grid.wall < 0) {
      // The side goes down with the floor.
      int last = grid.columns - 1;
      f.loss[last] = grid.sideLink * conducting + grid.sideWash * height;
      f.lossTimesOutsideC[last] = f.loss[last] * body.side().outsideC();
    }
  }

  private void bare(RadialFactors f, double height) {
    double loss = outside.coefficientWPerM2K() * grid.r[grid.wall] * height;
    int side = grid.columns - 1;
    double already = grid.wall == side ? f.loss[side] : 0;
    double alreadySource = grid.wall == side ? f.lossTimesOutsideC[side] : 0;
    f.loss[grid.wall] = already + loss;
    f.lossTimesOutsideC[grid.wall] = alreadySource + loss * outside.temperatureC();
  }

  /** After the floor moved: the explicit part anew, in its two rows and those it has left. */
  void refresh(double[][] t, double[][] g, int rowBefore) {
    if (grid.wall >= 0) {
      for (int j = rowBefore; j < floor.row; j++) {
        walled[kind[j]].explicit(t[j], g[j], tau, grid.wall);
      }
    }
    upper.explicit(t[floor.row], g[floor.row], tau, 0);
    lower.explicit(t[floor.row + 1], g[floor.row + 1], tau, 0);
  }

  /** One implicit half step; t becomes the solution and g its explicit counterpart. */
  void solve(double[][] t, double[][] g) {
    if (floor.untouched()) {
      range(t, g, 0, grid.rows, whole, 0);
      return;
    }
    int at = floor.row;
    if (grid.wall >= 0) {
      range(t, g, 0, at, walled, grid.wall);
    }
    Lines.row(t[at], g[at], upper, 0);
    Lines.row(t[at + 1], g[at + 1], lower, 0);
    range(t, g, at + 2, grid.rows, whole, 0);
  }

  private void range(
      double[][] t, double[][] g, int from, int to, RadialFactors[] factors, int start) {
    int j = from;
    while (j < to) {
      int k = kind[j];
      if (j + 3 < to && kind[j + 1] == k && kind[j + 2] == k && kind[j + 3] == k) {
        Lines.fourRows(
            t[j],
            t[j + 1],
            t[j + 2],
            t[j + 3],
            g[j],
            g[j + 1],
            g[j + 2],
            g[j + 3],
            factors[k],
            start);
        j += 4;
      } else {
        Lines.row(t[j], g[j], factors[k], start);
        j++;
      }
    }
  }

  /** Heat per radian and second that coolant brings in through the cavity wall. */
  double wallInflow(double[][] t) {
    if (floor.untouched() || grid.wall < 0) {
      return 0;
    }
    double h = outside.coefficientWPerM2K() * grid.r[grid.wall];
    double sum = 0;
    for (int j = 0; j <= floor.row + 1; j++) {
      sum += floor.bare(j) * (outside.temperatureC() - t[j][grid.wall]);
    }
    return h * sum;
  }

  /** Heat per radian and second that comes in through the side. */
  double sideInflow(double[][] t) {
    if (grid.sideLink == 0 && grid.sideWash == 0) {
      return 0;
    }
    int last = grid.columns - 1;
    double outsideC = body.side().outsideC();
    double sum = 0;
    for (int j = 0; j < grid.rows; j++) {
      double height = grid.rowH[j];
      double conducting = grid.rowK[j];
      if (grid.wall < 0 && !floor.untouched() && j <= floor.row + 1) {
        if (j < floor.row) {
          continue;
        }
        RadialFactors f = j == floor.row ? upper : lower;
        sum += f.lossTimesOutsideC[last] - f.loss[last] * t[j][last];
        continue;
      }
      sum += (grid.sideLink * conducting + grid.sideWash * height) * (outsideC - t[j][last]);
    }
    return sum;
  }
}
