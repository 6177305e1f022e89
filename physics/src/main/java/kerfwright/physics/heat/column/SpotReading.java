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

  /** True where it was worked out for this shape of the column. */
  boolean isFor(int wanted) {
    return shape == wanted;
  }

  void begin(int forShape) {
    shape = forShape;
  }

  /** A term: so much of a share of the way from a node to the next. */
  void put(Term term, double of, int node, double onward) {
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
