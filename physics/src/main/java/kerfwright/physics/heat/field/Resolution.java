package kerfwright.physics.heat.field;

import kerfwright.quantity.Check;

/** How finely a problem is computed: to an error, or on a given mesh. */
public sealed interface Resolution {
  /**
   * Cells and step are chosen so that the estimated error at every probe and output time stays
   * below a limit.
   */
  record WithinK(double errorK) implements Resolution {
    public WithinK {
      Check.positive("Allowed error", "K", errorK);
    }
  }

  /** Computed once on this mesh. */
  record On(HeatMesh mesh) implements Resolution {}

  static Resolution withinK(double errorK) {
    return new WithinK(errorK);
  }

  static Resolution on(HeatMesh mesh) {
    return new On(mesh);
  }
}
