package kerfwright.planner.casework;

import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The roughness wanted at the end where the case does not say. Polished surfaces: 0.2 micrometres,
 * the threshold above which plaque is held (Bollen and Quirynen, from memory). Smooth walls and
 * margins: 1.0 and 1.5 micrometres, common practice.
 */
public final class FinishGoal {
  private FinishGoal() {}

  /** Ra wanted, or null where the surface goes away or is covered. */
  public static @Nullable Length of(CutCase c) {
    if (c.finishRa() != null) {
      return c.finishRa();
    }
    return switch (c.procedure()) {
      case FINISH_COMPOSITE, FINISH_CERAMIC, OCCLUSAL_ADJUSTMENT, ADHESIVE_CLEAN_UP ->
          Length.ofMicrometres(0.2);
      case CAVITY_PREPARATION, CROWN_PREPARATION -> Length.ofMicrometres(1.0);
      case ENAMEL_BEVEL, VENEER_PREPARATION -> Length.ofMicrometres(1.5);
      case ACCESS_CAVITY, CROWN_SECTIONING, AMALGAM_REMOVAL, COMPOSITE_REMOVAL, POST_EXPOSURE ->
          null;
    };
  }
}
