package kerfwright.physics.heat;

import java.util.List;
import kerfwright.quantity.Check;

/**
 * The body that is cut: a cylinder of layers, outermost first, all at one temperature to begin
 * with. Its top is cut inside a round spot and cooled outside it.
 *
 * @param radiusMm radius of the cylinder
 * @param layers layers from the top down
 * @param initialC temperature at the start
 * @param bottom the face below the last layer
 * @param side the face at the radius
 */
public record HeatBody(
    double radiusMm, List<HeatLayer> layers, double initialC, Face bottom, Face side) {
  public HeatBody {
    Check.positive("Radius of the body", "mm", radiusMm);
    Check.finite("Initial temperature", "degC", initialC);
    layers = List.copyOf(layers);
    if (layers.isEmpty()) {
      throw new IllegalArgumentException("The body needs at least one layer");
    }
  }

  /** A body whose side passes no heat. */
  public static HeatBody of(double radiusMm, List<HeatLayer> layers, double initialC, Face bottom) {
    return new HeatBody(radiusMm, layers, initialC, bottom, Face.insulated());
  }

  /** All layers together. */
  public double depthMm() {
    double depth = 0;
    for (HeatLayer layer : layers) {
      depth += layer.thicknessMm();
    }
    return depth;
  }

  /** How much of each node's height is tissue: all of the last layer. */
  public double[] tissueM(double[] depthsM) {
    int last = depthsM.length - 1;
    double topM = depthsM[last] - layers.get(layers.size() - 1).thicknessMm() * 1e-3;
    double[] heights = new double[depthsM.length];
    for (int j = 0; j < last; j++) {
      if (0.5 * (depthsM[j] + depthsM[j + 1]) > topM) {
        heights[j] += 0.5 * (depthsM[j + 1] - depthsM[j]);
        heights[j + 1] += 0.5 * (depthsM[j + 1] - depthsM[j]);
      }
    }
    return heights;
  }
}
