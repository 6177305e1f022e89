package kerfwright.planner.casework;

import java.util.List;
import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What is kept where the case does not say: common practice, filled in and named as such in the
 * plan.
 */
public final class KeepDefaults {
  private KeepDefaults() {}

  /** What must remain in a case, or null where everything in the stack may go. */
  public static @Nullable Keep of(CutCase c) {
    if (c.keep() != null) {
      return c.keep();
    }
    return switch (c.procedure()) {
      case ADHESIVE_CLEAN_UP -> wholly(c, "enamel");
      case CROWN_SECTIONING, AMALGAM_REMOVAL, COMPOSITE_REMOVAL -> whollyTooth(c);
      case POST_EXPOSURE -> whollyPost(c);
      case FINISH_COMPOSITE, FINISH_CERAMIC -> outermostBut(c, 0.05);
      case OCCLUSAL_ADJUSTMENT -> outermostBut(c, 0.15);
      case ENAMEL_BEVEL -> shareOf(c, "enamel", 0.5);
      case VENEER_PREPARATION -> shareOf(c, "enamel", 0.4);
      case CROWN_PREPARATION -> dentineBut(c, crownReductionMm(c));
      case CAVITY_PREPARATION -> dentineBut(c, 0.2);
      case ACCESS_CAVITY ->
          c.pulp().protectsPulp() ? new Keep("dentine", Length.ofMillimetres(0.5)) : null;
    };
  }

  private static @Nullable Keep wholly(CutCase c, String id) {
    return c.layers().stream().anyMatch(l -> l.material().id().equals(id))
        ? new Keep(id, null)
        : null;
  }

  private static @Nullable Keep whollyTooth(CutCase c) {
    for (String id : List.of("enamel", "dentine")) {
      Keep keep = wholly(c, id);
      if (keep != null) {
        return keep;
      }
    }
    return null;
  }

  private static @Nullable Keep whollyPost(CutCase c) {
    for (String id : List.of("fibre-post", "steel-post")) {
      Keep keep = wholly(c, id);
      if (keep != null) {
        return keep;
      }
    }
    return null;
  }

  private static Keep outermostBut(CutCase c, double cutMm) {
    Layer outer = c.layers().get(0);
    double left = outer.thickness().typical().millimetres() - cutMm;
    return new Keep(outer.material().id(), Length.ofMillimetres(Math.max(0.01, left)));
  }

  private static @Nullable Keep shareOf(CutCase c, String id, double share) {
    return c.layers().stream()
        .filter(l -> l.material().id().equals(id))
        .findFirst()
        .map(l -> new Keep(id, new Length(l.thickness().typical().metres() * share)))
        .orElse(null);
  }

  /** About 1.2 mm in all: facial reduction for a metal-ceramic crown, Davis GR et al. 2012. */
  private static double crownReductionMm(CutCase c) {
    double outer =
        c.layers().stream()
            .filter(l -> !l.material().id().equals("dentine"))
            .mapToDouble(l -> l.thickness().typical().millimetres())
            .sum();
    return Math.max(0, 1.2 - outer);
  }

  private static @Nullable Keep dentineBut(CutCase c, double cutMm) {
    return c.layers().stream()
        .filter(l -> l.material().id().equals("dentine"))
        .findFirst()
        .map(
            l ->
                new Keep(
                    "dentine",
                    Length.ofMillimetres(
                        Math.max(0.01, l.thickness().typical().millimetres() - cutMm))))
        .orElse(null);
  }
}
