package kerfwright.planner;

import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.limit.SafetyLimits;
import kerfwright.catalogue.material.Trait;
import kerfwright.catalogue.operation.HeatTarget;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.operation.Work;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.SourceKey;

/**
 * Over a pulp that is to live at least 0.5 mm of dentine remains: below it odontoblasts fell by a
 * third or more (Murray PE, Smith AJ, Windsor LJ, Mjor IA. Int Endod J 2003;36:33-43). An access
 * cavity means to reach the chamber and is exempt.
 */
final class PulpDistance {
  static final double LEAST_M = SafetyLimits.packaged().remainingDentine().metres();

  private PulpDistance() {}

  /** Whether the pulp is to live: it is not known dead, and no operation opens it. */
  static boolean toLive(CutCase c, List<Work> works) {
    return c.pulp().protectsPulp()
        && works.stream().noneMatch(w -> w.heat() == HeatTarget.ROOT_SURFACE);
  }

  static Optional<Finding> refusal(CutCase c, List<Work> works) {
    if (!toLive(c, works)) {
      return Optional.empty();
    }
    double left = leftM(c, deepestM(works));
    boolean hasDentine = c.layers().stream().anyMatch(PulpDistance::covers);
    if (!hasDentine || left >= LEAST_M - 1e-9) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.refuse(
            "remaining-dentine",
            Message.of(
                "finding.remaining-dentine",
                Rounded.places(left * 1e3, 2),
                Message.of("label.pulp-" + c.pulp().id())),
            new SourceKey("murray-2003")));
  }

  static double deepestM(List<Work> works) {
    return works.stream().mapToDouble(Work::toM).max().orElse(0);
  }

  private static boolean covers(Layer layer) {
    return layer.material().has(Trait.DENTINE) || layer.material().has(Trait.CARIOUS);
  }

  /** Dentine left under a floor, sound or not. */
  static double leftM(CutCase c, double floorM) {
    double top = 0;
    double left = 0;
    for (Layer layer : c.layers()) {
      double thick = layer.thickness().typical().metres();
      if (covers(layer)) {
        left += Math.max(0, top + thick - Math.max(top, floorM));
      }
      top += thick;
    }
    return left;
  }
}
