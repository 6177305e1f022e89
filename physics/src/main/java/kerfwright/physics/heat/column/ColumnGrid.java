package kerfwright.physics.heat.column;

import kerfwright.physics.heat.HeatBody;
import kerfwright.physics.heat.numeric.Spacing;

/**
 * The line of nodes below the middle of the spot, with what lies between them. Nodes stand on the
 * borders of layers and on the probes; they are dense as far as the cut goes down. The arrays may
 * be longer than the line.
 */
final class ColumnGrid {
  private static final int CELLS = 26;

  /** Depths of the nodes, m. */
  double[] z = new double[0];

  /** Conductivity of the element below a node. */
  double[] k = new double[0];

  /** Heat a volume of it takes up. */
  double[] c = new double[0];

  /** Root of its diffusivity. */
  double[] rootDiffusivity = new double[0];

  /** How late warmth comes to a node: thickness over the root of the diffusivity, added up. */
  private double[] delays = new double[0];

  /** Thickness over conductivity, added up. */
  private double[] resistances = new double[0];

  void build(HeatBody body, double cutM, double spotRadiusM, double[] probeDepthsMm) {
    place(body, cutM, spotRadiusM, probeDepthsMm);
    int cells = cells();
    if (cutM >= z[cells - 1]) {
      throw new IllegalArgumentException(
          "The cut goes down "
              + cutM * 1e3
              + " mm; it must stay above "
              + z[cells - 1] * 1e3
              + " mm of the body's "
              + body.depthMm()
              + " mm");
    }
    fill(body);
  }

  int cells() {
    return z.length - 1;
  }

  private void place(HeatBody body, double cutM, double spotRadiusM, double[] probeDepthsMm) {
    double depth = body.depthMm() * 1e-3;
    int borders = body.layers().size() - 1;
    double[] inner = new double[borders + probeDepthsMm.length];
    double bottom = 0;
    for (int l = 0; l < borders; l++) {
      bottom += body.layers().get(l).thicknessMm() * 1e-3;
      inner[l] = bottom;
    }
    for (int p = 0; p < probeDepthsMm.length; p++) {
      double at = probeDepthsMm[p] * 1e-3;
      if (!(at >= 0 && at <= depth * (1 + 1e-9))) {
        throw new IllegalArgumentException(
            "Probe at depth " + probeDepthsMm[p] + " mm lies outside 0 to " + depth * 1e3 + " mm");
      }
      inner[borders + p] = at;
    }
    double[] breaks = Spacing.breaks(depth, inner);
    double fine = 0.2 * Math.min(spotRadiusM, 1e-3);
    z =
        Spacing.lines(
            breaks,
            Math.max(CELLS, 2 * breaks.length),
            at -> 1 / (fine + 0.25 * Math.max(0, at - cutM)));
  }

  private void fill(HeatBody body) {
    int cells = cells();
    if (k.length <= cells) {
      k = new double[cells + 1];
      c = new double[cells + 1];
      rootDiffusivity = new double[cells + 1];
      delays = new double[cells + 1];
      resistances = new double[cells + 1];
    }
    int layer = 0;
    double layerEnd = body.layers().get(0).thicknessMm() * 1e-3;
    for (int j = 0; j < cells; j++) {
      while (0.5 * (z[j] + z[j + 1]) > layerEnd && layer < body.layers().size() - 1) {
        layer++;
        layerEnd += body.layers().get(layer).thicknessMm() * 1e-3;
      }
      k[j] = body.layers().get(layer).conductivityWPerMK();
      c[j] = body.layers().get(layer).volumetricHeatJPerM3K();
      rootDiffusivity[j] = Math.sqrt(k[j] / c[j]);
      delays[j + 1] = delays[j] + (z[j + 1] - z[j]) / rootDiffusivity[j];
      resistances[j + 1] = resistances[j] + (z[j + 1] - z[j]) / k[j];
    }
  }

  /** The element that holds a depth: the one below it where it is a node. */
  int elementAt(double depthM) {
    int j = z.length - 2;
    while (j > 0 && z[j] > depthM + 1e-12) {
      j--;
    }
    return j;
  }

  /** How deep the work goes on as it is in an element. */
  double sameBelowM(int element) {
    int j = element;
    while (j + 1 < cells() && k[j + 1] == k[element] && c[j + 1] == c[element]) {
      j++;
    }
    return z[j + 1];
  }

  /** The element where a delay is reached, searched from one on; none is past the last. */
  int elementOfDelay(int from, double wanted) {
    int j = from;
    while (j + 2 < z.length && delays[j + 1] < wanted) {
      j++;
    }
    return j;
  }

  double delay(int element, double depthM) {
    return delays[element] + (depthM - z[element]) / rootDiffusivity[element];
  }

  /** The depth in an element where a delay is reached. */
  double depthOfDelayM(int element, double wanted) {
    return z[element] + (wanted - delays[element]) * rootDiffusivity[element];
  }

  double wholeDelay() {
    return delays[z.length - 1];
  }

  double resist(int element, double depthM) {
    return resistances[element] + (depthM - z[element]) / k[element];
  }

  /** Sets the masses of the nodes and the links between them, as if nothing were cut. */
  void shape(ColumnChain chain) {
    java.util.Arrays.fill(chain.mass, 0);
    for (int j = 0; j < cells(); j++) {
      double half = 0.5 * c[j] * (z[j + 1] - z[j]);
      chain.mass[j] += half;
      chain.mass[j + 1] += half;
      chain.link[j] = k[j] / (z[j + 1] - z[j]);
    }
  }
}
