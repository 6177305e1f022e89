package kerfwright.planner.casework;

import java.util.Map;
import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The roughness wanted at the end where the case does not say. Polished surfaces: 0.2 micrometres,
 * the threshold above which plaque is held (Bollen and Quirynen, from memory). Smooth walls and
 * margins: 1.0 and 1.5 micrometres, common practice.
 */
public final class FinishGoal {
  private static final Map<Procedure, Double> MICROMETRES =
      Map.ofEntries(
          Map.entry(Procedure.FINISH_COMPOSITE, 0.2),
          Map.entry(Procedure.FINISH_CERAMIC, 0.2),
          Map.entry(Procedure.FINISH_METAL, 0.2),
          Map.entry(Procedure.FINISH_ENAMEL, 0.2),
          Map.entry(Procedure.OCCLUSAL_ADJUSTMENT, 0.2),
          Map.entry(Procedure.ADHESIVE_CLEAN_UP, 0.2),
          Map.entry(Procedure.CAVITY_PREPARATION, 1.0),
          Map.entry(Procedure.INLAY_CAVITY, 1.0),
          Map.entry(Procedure.ONLAY_CAVITY, 1.0),
          Map.entry(Procedure.CROWN_PREPARATION, 1.0),
          Map.entry(Procedure.ENAMEL_BEVEL, 1.5),
          Map.entry(Procedure.VENEER_PREPARATION, 1.5));

  private FinishGoal() {}

  /** Ra wanted, or null where the surface goes away or is covered. */
  public static @Nullable Length of(CutCase c) {
    if (c.finishRa() != null) {
      return c.finishRa();
    }
    Double micrometres = MICROMETRES.get(c.procedure());
    return micrometres == null ? null : Length.ofMicrometres(micrometres);
  }
}
