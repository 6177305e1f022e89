package kerfwright.planner.casework;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is found in the mouth.
 *
 * @param pulp state of the pulp
 * @param restoration what stands on the tooth, an id of the usual stacks, where told
 * @param lesion the decay, where there is one
 * @param layers the stack, outermost first
 * @param chamber how deep the chamber lies, where told or usual
 */
public record Condition(
    PulpState pulp,
    @Nullable String restoration,
    @Nullable Lesion lesion,
    List<Layer> layers,
    @Nullable ChamberDepth chamber) {
  public Condition {
    layers = List.copyOf(layers);
    if (layers.isEmpty()) {
      throw new IllegalArgumentException("A case needs at least one layer");
    }
  }

  /** Layers and pulp alone. */
  public Condition(PulpState pulp, List<Layer> layers) {
    this(pulp, null, null, layers, null);
  }
}
