package kerfwright.planner;

import java.util.Optional;
import kerfwright.catalogue.limit.SafetyLimits;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.sequence.Segments;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.SourceKey;

/**
 * Over a vital pulp at least 0.5 mm of dentine remains: below it odontoblasts fell by a third or
 * more (Murray PE, Smith AJ, Windsor LJ, Mjor IA. Int Endod J 2003;36:33-43). An access cavity
 * means to reach the chamber and is exempt.
 */
final class PulpDistance {
  static final double LEAST_M = SafetyLimits.packaged().remainingDentine().metres();

  private PulpDistance() {}

  static Optional<Finding> refusal(CutCase c, Segments segments) {
    if (!c.pulp().protectsPulp() || Procedure.ACCESS_CAVITY.equals(c.procedure())) {
      return Optional.empty();
    }
    double left = leftM(c, segments);
    boolean hasDentine = c.layers().stream().anyMatch(l -> l.material().id().equals("dentine"));
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

  /** Dentine left under the planned floor. */
  static double leftM(CutCase c, Segments segments) {
    double floor = segments.depthM();
    double top = 0;
    double left = 0;
    for (Layer layer : c.layers()) {
      double thick = layer.thickness().typical().metres();
      if (layer.material().id().equals("dentine")) {
        left += Math.max(0, top + thick - Math.max(top, floor));
      }
      top += thick;
    }
    return left;
  }
}
