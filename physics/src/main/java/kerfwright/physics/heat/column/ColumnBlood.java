package kerfwright.physics.heat.column;

import kerfwright.physics.heat.Face;
import kerfwright.physics.heat.HeatBody;

/**
 * Blood in the column's last layer. The undisturbed body is drawn to the blood's temperature, what
 * the spot adds to it is drawn to nothing: the sink is linear, so both keep the same share.
 */
final class ColumnBlood {
  private Face.Perfused tissue = new Face.Perfused(0, 0, 0);
  private double[] tissueM = new double[0];
  private double[] capacity = new double[0];
  private double[] kept = new double[0];
  private int first;

  void build(HeatBody body, ColumnGrid grid, double[] capacityJPerM2K) {
    first = grid.cells() + 1;
    kept = new double[0];
    if (body.bottom() instanceof Face.Perfused perfused && perfused.sinkWPerM3K() > 0) {
      tissue = perfused;
      tissueM = body.tissueM(grid.z);
      capacity = java.util.Arrays.copyOf(capacityJPerM2K, tissueM.length);
      kept = new double[tissueM.length];
      first = 0;
      while (tissueM[first] == 0) {
        first++;
      }
    }
  }

  /** The node on top of the tissue; past the last one where there is no blood. */
  int first() {
    return first;
  }

  void prepare(double seconds) {
    for (int j = first; j < kept.length; j++) {
      kept[j] = tissue.keptShare(tissueM[j], capacity[j], seconds);
    }
  }

  void step(double[] plane, double[] spot, int from, int last) {
    for (int j = from; j <= last; j++) {
      plane[j] = tissue.bloodC() + kept[j] * (plane[j] - tissue.bloodC());
      spot[j] *= kept[j];
    }
  }

  /** Makes blood part of two chains, or takes all of it out again. */
  void flow(ColumnChain plane, ColumnChain spot, int from, boolean in) {
    for (int j = in ? from : first; j <= plane.last && j < tissueM.length; j++) {
      double sink = tissue.sinkWPerM3K() * tissueM[j];
      double change = in ? sink : -plane.loss[j];
      plane.loss[j] += change;
      spot.loss[j] = plane.loss[j];
      plane.source[j] += change * tissue.bloodC();
    }
    plane.forget();
    spot.forget();
  }
}
