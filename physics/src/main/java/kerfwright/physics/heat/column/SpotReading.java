package kerfwright.physics.heat.column;

/**
 * How the spot's part of the temperature at one depth is put together from the nodes. It stays the
 * same as long as floor, rim and coolant outside do, so it is worked out once for many steps.
 */
final class SpotReading {
  /** The nodes straight above, at the distance of the rim, at that of the side. */
  enum Term {
    PLAIN,
    RIM,
    SIDE
  }

  private static final int TERMS = Term.values().length;

  private final int[] element = new int[TERMS];
  private final double[] share = new double[TERMS];
  private final double[] weight = new double[TERMS];
  private int shape = -1;
  private ColumnGrid grid = new ColumnGrid();
  private int row;
  private double floorM;
  private double outsideWPerM2K;

  /** True where it was worked out for this shape of the column. */
  boolean isFor(int wanted) {
    return shape == wanted;
  }

  /** A shape of the column, with its floor in an element and the loss outside. */
  void begin(int forShape, ColumnGrid of, int floorRow, double floorDepthM, double lossWPerM2K) {
    shape = forShape;
    grid = of;
    row = floorRow;
    floorM = floorDepthM;
    outsideWPerM2K = lossWPerM2K;
  }

  /** The element a depth lies in, whose nodes count straight above. */
  int straightAbove(double depthM) {
    int j = row;
    if (depthM - floorM > 1e-9) {
      while (j + 2 < grid.z.length && grid.z[j + 1] < depthM) {
        j++;
      }
      put(Term.PLAIN, 1, j, share(j, depthM));
    } else {
      put(Term.PLAIN, 1, row, 0);
    }
    return j;
  }

  /**
   * P where warmth gets to in the time it takes along the slant from a depth to a ring, times phi.
   */
  void atDistance(Term term, int of, double depthM, double ringM) {
    double x = depthM - floorM;
    double fromFloor = grid.delay(row, floorM);
    double wanted;
    double phi;
    if (x <= 1e-9) {
      wanted = fromFloor + ringM / grid.rootDiffusivity[row];
      phi = 1 / (outsideWPerM2K * ringM / grid.k[row] + 1);
    } else {
      double longer = Math.sqrt(x * x + ringM * ringM) / x;
      double resistance = grid.resist(of, depthM) - grid.resist(row, floorM);
      wanted = fromFloor + (grid.delay(of, depthM) - fromFloor) * longer;
      phi = (outsideWPerM2K * resistance + 1) / (outsideWPerM2K * resistance * longer + 1);
    }
    if (wanted >= grid.wholeDelay()) {
      put(term, phi, grid.cells(), 0);
      return;
    }
    int j = grid.elementOfDelay(of, wanted);
    put(term, phi, j, share(j, grid.depthOfDelayM(j, wanted)));
  }

  private double share(int of, double depthM) {
    double top = of == row ? floorM : grid.z[of];
    return (depthM - top) / (grid.z[of + 1] - top);
  }

  /** A term: so much of a share of the way from a node to the next. */
  private void put(Term term, double of, int node, double onward) {
    weight[term.ordinal()] = of;
    element[term.ordinal()] = node;
    share[term.ordinal()] = onward;
  }

  private double at(int term, double[] t) {
    double here = t[element[term]];
    double onward = share[term];
    double value = onward == 0 ? here : here + onward * (t[element[term] + 1] - here);
    return weight[term] * value;
  }

  /** The spot's part: straight above, less the rim, and what an insulated side throws back. */
  double of(double[] t, double sideShare) {
    return at(0, t) - at(1, t) + sideShare * at(2, t);
  }
}
