package kerfwright.physics.heat.field;

/**
 * Where the floor of the cavity stands in the mesh, and what of the cut element is left.
 *
 * <p>The floor lies in element {@code row}, between lines row and row + 1. In the columns inside
 * the spot the node of line {@code row} rides on the floor, so the floor temperature is a value of
 * the mesh, not an extrapolation; {@code open} is the share of the element that is still there. The
 * column on the edge of the spot keeps its nodes; of its inner half the part below the floor
 * counts, weighted with linear shape functions. A last sliver of an element, a few steps thick, is
 * taken away at once when half of it is due, so it never makes the equations stiff and the floor is
 * on average where it should be.
 *
 * <p>Moving the floor by d at fixed temperatures exchanges heat thus (l half the height left, T0
 * floor, T1 next node): rho c d T0 leaves with the chips, and rho c (d/2) (T0 + T1)/2 passes from
 * volume 1 to volume 0, because the boundary between them moves by d/2. Heat is conserved exactly.
 */
final class CutFloor {
  /** Share of an element below which its sliver is taken away. */
  private static final double SLIVER = 0.04;

  final HeatGrid grid;
  int row;
  double open;
  double depthM;

  /** rho c times height of the two uppermost rows inside the spot, and k / height between them. */
  double upperC;

  double lowerC;
  double spotLink;

  /** Heat capacity per radian of the edge column in the two rows, and its link between them. */
  double wallUpperC;

  double wallLowerC;
  double wallLink;

  /** Height of bare cavity wall that belongs to the two rows. */
  double upperBare;

  double lowerBare;

  CutFloor(HeatGrid grid) {
    this.grid = grid;
    restart();
  }

  void restart() {
    row = 0;
    open = 1;
    depthM = 0;
    measure();
  }

  boolean untouched() {
    return row == 0 && open == 1;
  }

  /** Deepest the floor may get on this mesh. */
  double deepestM() {
    return grid.z[grid.rows - 2];
  }

  /**
   * Moves the floor down to a depth, give or take half a sliver.
   *
   * @return heat per radian that left with the material, above 0 degC
   */
  double moveTo(double targetM, double[][] t) {
    double removed = 0;
    while (targetM > depthM) {
      double next = grid.z[row + 1];
      double left = next - targetM;
      double sliver = Math.max(SLIVER * (next - grid.z[row]), 3 * (targetM - depthM));
      if (left >= sliver) {
        return removed + shave(targetM, t);
      }
      double rest = next - depthM;
      if (rest > 2 * sliver) {
        removed += shave(next - sliver, t);
      } else if (rest > 0.5 * (next - grid.z[row])) {
        // A long move: part of the way first, so that no volume is emptied in one stroke.
        removed += shave(depthM + 0.25 * rest, t);
      } else if (left > 0.5 * Math.min(sliver, rest)) {
        return removed;
      } else {
        removed += takeSliver(t);
      }
    }
    return removed;
  }

  private double shave(double targetM, double[][] t) {
    double c = grid.cz[row];
    double moved = targetM - depthM;
    double half = 0.5 * (grid.z[row + 1] - depthM);
    double[] upper = t[row];
    double[] lower = t[row + 1];
    double removed = 0;
    double lowerAfter = lowerC - 0.5 * c * moved;
    for (int i = 0; i < grid.spot; i++) {
      double t0 = upper[i];
      double t1 = lower[i];
      removed += grid.area[i] * t0;
      upper[i] = ((half - 0.75 * moved) * t0 + 0.25 * moved * t1) / (half - 0.5 * moved);
      lower[i] = t1 + 0.25 * moved * c * (t1 - t0) / lowerAfter;
    }
    removed *= c * moved;
    double wallBefore = wallHeat(t);
    depthM = targetM;
    measure();
    return removed + wallBefore - wallHeat(t);
  }

  private double takeSliver(double[][] t) {
    double removed = 0;
    double gone = grid.cz[row] * open * (grid.z[row + 1] - grid.z[row]) * 0.5;
    for (int i = 0; i < grid.spot; i++) {
      removed += grid.area[i] * gone * (t[row][i] + t[row + 1][i]);
    }
    if (grid.wall >= 0) {
      double t0 = t[row][grid.wall];
      double t1 = t[row + 1][grid.wall];
      removed += (wallUpperC - grid.wallOuter * grid.rowC[row]) * t0;
      double below = 0.5 * grid.cz[row + 1] * (grid.z[row + 2] - grid.z[row + 1]);
      removed += (wallLowerC - grid.wallOuter * grid.rowC[row + 1] - grid.wallInner * below) * t1;
    }
    row++;
    depthM = grid.z[row];
    measure();
    return removed;
  }

  private double wallHeat(double[][] t) {
    return grid.wall < 0 ? 0 : wallUpperC * t[row][grid.wall] + wallLowerC * t[row + 1][grid.wall];
  }

  private void measure() {
    double dz = grid.z[row + 1] - grid.z[row];
    double dzBelow = grid.z[row + 2] - grid.z[row + 1];
    double c = grid.cz[row];
    open = depthM == grid.z[row] ? 1 : (grid.z[row + 1] - depthM) / dz;
    double below = 0.5 * grid.cz[row + 1] * dzBelow;
    upperC = 0.5 * c * open * dz;
    lowerC = upperC + below;
    spotLink = grid.kz[row] / (open * dz);
    double shape = 0.5 * open * open;
    wallUpperC = grid.wallOuter * grid.rowC[row] + grid.wallInner * c * dz * shape;
    wallLowerC =
        grid.wallOuter * grid.rowC[row + 1] + grid.wallInner * (c * dz * (open - shape) + below);
    wallLink = (grid.wallOuter + grid.wallInner * open) * grid.gz[row];
    double bare = (1 - open) * dz;
    double lowerPart = 0.5 * bare * bare / dz;
    upperBare = (row > 0 ? 0.5 * (grid.z[row] - grid.z[row - 1]) : 0) + bare - lowerPart;
    lowerBare = lowerPart;
  }

  /** Heat per radian in the whole body, above 0 degC. */
  double heat(double[][] t) {
    double sum = 0;
    for (int j = 0; j < grid.rows; j++) {
      double inSpot = j < row ? 0 : j == row ? upperC : j == row + 1 ? lowerC : grid.rowC[j];
      double rowSum = 0;
      double spotSum = 0;
      for (int i = 0; i < grid.columns; i++) {
        if (i < grid.spot) {
          spotSum += grid.area[i] * t[j][i];
        } else if (i > grid.wall) {
          rowSum += grid.area[i] * t[j][i];
        }
      }
      sum += inSpot * spotSum + grid.rowC[j] * rowSum;
      if (grid.wall >= 0) {
        sum += wallCapacity(j) * t[j][grid.wall];
      }
    }
    return sum;
  }

  /** Heat capacity per radian of the edge column in a row. */
  double wallCapacity(int j) {
    if (j < row) {
      return grid.wallOuter * grid.rowC[j];
    }
    return j == row ? wallUpperC : j == row + 1 ? wallLowerC : grid.area[grid.wall] * grid.rowC[j];
  }

  /** Height of bare cavity wall that belongs to a row. */
  double bare(int j) {
    return j < row ? grid.rowH[j] : j == row ? upperBare : j == row + 1 ? lowerBare : 0;
  }
}
