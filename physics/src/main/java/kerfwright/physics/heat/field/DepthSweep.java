package kerfwright.physics.heat.field;

import kerfwright.physics.heat.Coolant;
import kerfwright.physics.heat.HeatBody;

/**
 * Implicit half steps along z, eliminated from the bottom upwards: so all that lies below the floor
 * has the same factors in every column, and a moving floor changes only the two topmost rows inside
 * the spot and the column on its edge.
 */
final class DepthSweep {
  private final HeatGrid grid;
  private final CutFloor floor;
  private final HeatBody body;
  private final double[] inv;
  private final double[] below;
  private final double[] above;
  private final double[] wallInv;
  private final double[] wallBelow;
  private final double[] wallAbove;
  private final double[] wallSource;
  private double tau;
  private double topSource;
  private double bottomSource;
  private double spotUpperInv;
  private double spotUpperBelow;
  private double spotLowerInv;
  private double spotLowerBelow;
  private double spotLowerAbove;
  private double spotSource;
  private double fluxWPerM2;
  private Coolant spot = Coolant.NONE;
  private Coolant outside = Coolant.NONE;

  DepthSweep(HeatGrid grid, CutFloor floor, HeatBody body) {
    this.grid = grid;
    this.floor = floor;
    this.body = body;
    inv = new double[grid.rows];
    below = new double[grid.rows];
    above = new double[grid.rows];
    wallInv = new double[grid.rows];
    wallBelow = new double[grid.rows];
    wallAbove = new double[grid.rows];
    wallSource = new double[grid.rows];
  }

  /** Conductance from row j to the one below, or to the outside for the last row. */
  private double down(int j) {
    return j < grid.rows - 1 ? grid.gz[j] : grid.bottomLink;
  }

  void prepare(double halfStepS, double flux, Coolant onSpot, Coolant onOutside) {
    tau = halfStepS;
    fluxWPerM2 = flux;
    spot = onSpot;
    outside = onOutside;
    int last = grid.rows - 1;
    double aboveBelow = 0;
    for (int j = last; j >= 0; j--) {
      double share = tau / grid.rowC[j];
      double up = j > 0 ? grid.gz[j - 1] : 0;
      double loss = j > 0 ? 0 : outside.coefficientWPerM2K();
      double toBelow = j < last ? share * down(j) : 0;
      double w = 1 / (1 + share * (up + down(j) + loss) - toBelow * aboveBelow);
      inv[j] = w;
      below[j] = toBelow * w;
      above[j] = share * up * w;
      aboveBelow = above[j];
    }
    bottomSource = tau / grid.rowC[last] * grid.bottomLink * body.bottom().outsideC();
    topSource = tau / grid.rowC[0] * outside.coefficientWPerM2K() * outside.temperatureC();
    floorMoved();
  }

  void floorMoved() {
    int m = floor.row;
    double share = tau / floor.lowerC;
    double toBelow = share * down(m + 1);
    double w = 1 / (1 + share * (floor.spotLink + down(m + 1)) - toBelow * above[m + 2]);
    spotLowerInv = w;
    spotLowerBelow = toBelow * w;
    spotLowerAbove = share * floor.spotLink * w;
    share = tau / floor.upperC;
    toBelow = share * floor.spotLink;
    double h = spot.coefficientWPerM2K();
    w = 1 / (1 + share * (floor.spotLink + h) - toBelow * spotLowerAbove);
    spotUpperInv = w;
    spotUpperBelow = toBelow * w;
    spotSource = share * (fluxWPerM2 + h * spot.temperatureC());
    if (grid.wall >= 0) {
      factorWall();
    }
  }

  private double wallLink(int j) {
    return j < floor.row
        ? grid.wallOuter * grid.gz[j]
        : j == floor.row ? floor.wallLink : grid.area[grid.wall] * down(j);
  }

  /** Share of the floor beside the edge that its column carries in a row. */
  private double floorShare(int j) {
    return j == floor.row
        ? floor.open * grid.wallInner
        : j == floor.row + 1 ? (1 - floor.open) * grid.wallInner : 0;
  }

  private void factorWall() {
    double aboveBelow = above[floor.row + 2];
    for (int j = floor.row + 1; j >= 0; j--) {
      double share = tau / floor.wallCapacity(j);
      double up = j > 0 ? wallLink(j - 1) : 0;
      double down = wallLink(j);
      double onFloor = floorShare(j);
      double loss = onFloor * spot.coefficientWPerM2K();
      double source = onFloor * (fluxWPerM2 + spot.coefficientWPerM2K() * spot.temperatureC());
      if (j == 0) {
        loss += grid.wallOuter * outside.coefficientWPerM2K();
        source += grid.wallOuter * outside.coefficientWPerM2K() * outside.temperatureC();
      }
      double toBelow = share * down;
      double w = 1 / (1 + share * (up + down + loss) - toBelow * aboveBelow);
      wallInv[j] = w;
      wallBelow[j] = toBelow * w;
      wallAbove[j] = share * up * w;
      wallSource[j] = share * source * w;
      aboveBelow = wallAbove[j];
    }
  }

  /**
   * One implicit half step; t becomes the solution, g its explicit counterpart 2 t - g when
   * reflecting, else a copy of t.
   */
  void solve(double[][] t, double[][] g, boolean reflecting) {
    int n = grid.columns;
    int m = floor.row;
    int last = grid.rows - 1;
    int wall = grid.wall;
    int spotEnd = grid.spot;
    int outer = wall < 0 ? n : wall + 1;
    Lines.first(t[last], g[last], bottomSource, inv[last], 0, n);
    for (int j = last - 1; j >= m + 2; j--) {
      Lines.eliminate(t[j], g[j], t[j + 1], inv[j], below[j], 0, n);
    }
    Lines.eliminate(t[m + 1], g[m + 1], t[m + 2], spotLowerInv, spotLowerBelow, 0, spotEnd);
    Lines.eliminate(t[m], g[m], t[m + 1], spotUpperInv, spotUpperBelow, 0, spotEnd);
    Lines.add(t[m], spotSource * spotUpperInv, 0, spotEnd);
    if (wall >= 0) {
      for (int j = m + 1; j >= 0; j--) {
        Lines.eliminate(t[j], g[j], t[j + 1], inv[j], below[j], outer, n);
        t[j][wall] = g[j][wall] * wallInv[j] + wallBelow[j] * t[j + 1][wall] + wallSource[j];
      }
      Lines.add(t[0], topSource * inv[0], outer, n);
      close(t[0], g[0], reflecting, wall, n);
      for (int j = 1; j <= m + 1; j++) {
        t[j][wall] += wallAbove[j] * t[j - 1][wall];
        close(t[j], g[j], reflecting, wall, outer);
        next(t[j], g[j], t[j - 1], above[j], reflecting, outer, n);
      }
    }
    close(t[m], g[m], reflecting, 0, spotEnd);
    next(t[m + 1], g[m + 1], t[m], spotLowerAbove, reflecting, 0, spotEnd);
    for (int j = m + 2; j <= last; j++) {
      next(t[j], g[j], t[j - 1], above[j], reflecting, 0, n);
    }
  }

  private static void close(double[] x, double[] g, boolean reflecting, int from, int to) {
    if (reflecting) {
      Lines.reflect(x, g, from, to);
    } else {
      System.arraycopy(x, from, g, from, to - from);
    }
  }

  private static void next(
      double[] x, double[] g, double[] before, double link, boolean reflecting, int from, int to) {
    if (reflecting) {
      Lines.substituteReflecting(x, g, before, link, from, to);
    } else {
      Lines.substituteCopying(x, g, before, link, from, to);
    }
  }

  /** Heat per radian and second that the flux of cutting brings in. */
  double cutInflow() {
    double area = grid.wallInner;
    for (int i = 0; i < grid.spot; i++) {
      area += grid.area[i];
    }
    return fluxWPerM2 * area;
  }

  /** Heat per radian and second that coolant brings in through floor and top. */
  double washedInflow(double[][] t) {
    int m = floor.row;
    double floorSum = 0;
    double[] row = t[m];
    for (int i = 0; i < grid.spot; i++) {
      floorSum += grid.area[i] * (spot.temperatureC() - row[i]);
    }
    double topSum = 0;
    if (grid.wall >= 0) {
      floorSum += floorShare(m) * (spot.temperatureC() - row[grid.wall]);
      floorSum += floorShare(m + 1) * (spot.temperatureC() - t[m + 1][grid.wall]);
      topSum += grid.wallOuter * (outside.temperatureC() - t[0][grid.wall]);
      for (int i = grid.wall + 1; i < grid.columns; i++) {
        topSum += grid.area[i] * (outside.temperatureC() - t[0][i]);
      }
    }
    return spot.coefficientWPerM2K() * floorSum + outside.coefficientWPerM2K() * topSum;
  }

  /** Heat per radian and second that comes in through the bottom. */
  double bottomInflow(double[][] t) {
    if (grid.bottomLink == 0) {
      return 0;
    }
    double sum = 0;
    double outsideC = body.bottom().outsideC();
    double[] row = t[grid.rows - 1];
    for (int i = 0; i < grid.columns; i++) {
      sum += grid.area[i] * (outsideC - row[i]);
    }
    return grid.bottomLink * sum;
  }
}
