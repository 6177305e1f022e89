package kerfwright.planner.casework;

import java.util.Map;
import java.util.Optional;
import kerfwright.catalogue.material.Trait;
import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What is kept where the case does not say: common practice, filled in and named as such in the
 * plan.
 */
public final class KeepDefaults {
  /** What one procedure keeps. */
  private interface Rule {
    @Nullable Keep keep(CutCase c);
  }

  /** A procedure that is not named keeps nothing: its operations say where they end. */
  private static final Map<Procedure, Rule> RULES =
      Map.ofEntries(
          Map.entry(Procedure.ADHESIVE_CLEAN_UP, c -> wholly(c, Trait.ENAMEL)),
          Map.entry(Procedure.CROWN_SECTIONING, KeepDefaults::whollyTooth),
          Map.entry(Procedure.AMALGAM_REMOVAL, KeepDefaults::whollyTooth),
          Map.entry(Procedure.COMPOSITE_REMOVAL, KeepDefaults::whollyTooth),
          Map.entry(Procedure.POST_EXPOSURE, c -> wholly(c, Trait.POST)),
          Map.entry(Procedure.FINISH_COMPOSITE, c -> outermostBut(c, 0.05)),
          Map.entry(Procedure.FINISH_CERAMIC, c -> outermostBut(c, 0.05)),
          Map.entry(Procedure.FINISH_METAL, c -> outermostBut(c, 0.05)),
          Map.entry(Procedure.FINISH_ENAMEL, c -> outermostBut(c, 0.05)),
          Map.entry(Procedure.OCCLUSAL_ADJUSTMENT, c -> outermostBut(c, 0.15)),
          Map.entry(Procedure.ENAMEL_BEVEL, c -> shareOf(c, Trait.ENAMEL, 0.5)),
          Map.entry(Procedure.VENEER_PREPARATION, c -> shareOf(c, Trait.ENAMEL, 0.4)),
          Map.entry(Procedure.CROWN_PREPARATION, c -> dentineBut(c, toDepthMm(c, 1.2))),
          Map.entry(Procedure.INLAY_CAVITY, c -> dentineBut(c, toDepthMm(c, 2.0))),
          Map.entry(Procedure.ONLAY_CAVITY, c -> dentineBut(c, toDepthMm(c, 2.0))),
          Map.entry(Procedure.CAVITY_PREPARATION, KeepDefaults::soundDentine));

  private KeepDefaults() {}

  /** What must remain in a case, or null where everything in the stack may go. */
  public static @Nullable Keep of(CutCase c) {
    if (c.keep() != null) {
      return c.keep();
    }
    Rule rule = RULES.get(c.procedure());
    return rule == null ? null : rule.keep(c);
  }

  private static Optional<Layer> outermost(CutCase c, Trait trait) {
    return c.layers().stream().filter(l -> l.material().has(trait)).findFirst();
  }

  private static @Nullable Keep wholly(CutCase c, Trait trait) {
    return outermost(c, trait).map(l -> new Keep(l.material().id(), null)).orElse(null);
  }

  private static @Nullable Keep whollyTooth(CutCase c) {
    Keep enamel = wholly(c, Trait.ENAMEL);
    return enamel != null ? enamel : wholly(c, Trait.DENTINE);
  }

  private static Keep outermostBut(CutCase c, double cutMm) {
    Layer outer = c.layers().get(0);
    double left = outer.thickness().typical().millimetres() - cutMm;
    return new Keep(outer.material().id(), Length.ofMillimetres(Math.max(0.01, left)));
  }

  private static @Nullable Keep shareOf(CutCase c, Trait trait, double share) {
    return outermost(c, trait)
        .map(l -> new Keep(l.material().id(), new Length(l.thickness().typical().metres() * share)))
        .orElse(null);
  }

  /**
   * How far into dentine a depth below the surface reaches. 1.2 mm: facial reduction for a
   * metal-ceramic crown, Davis GR et al. 2012; 2.0 mm: floor of an inlay, common practice.
   */
  private static double toDepthMm(CutCase c, double depthMm) {
    double outer =
        c.layers().stream()
            .filter(l -> !l.material().has(Trait.DENTINE))
            .mapToDouble(l -> l.thickness().typical().millimetres())
            .sum();
    return Math.max(0, depthMm - outer);
  }

  /** No sound dentine is cut under decay; without decay the floor lies 0.2 mm in dentine. */
  private static @Nullable Keep soundDentine(CutCase c) {
    boolean decay = c.layers().stream().anyMatch(l -> l.material().has(Trait.CARIOUS));
    return decay ? wholly(c, Trait.DENTINE) : dentineBut(c, 0.2);
  }

  private static @Nullable Keep dentineBut(CutCase c, double cutMm) {
    return outermost(c, Trait.DENTINE)
        .map(
            l ->
                new Keep(
                    l.material().id(),
                    Length.ofMillimetres(
                        Math.max(0.01, l.thickness().typical().millimetres() - cutMm))))
        .orElse(null);
  }
}
