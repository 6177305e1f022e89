package kerfwright.planner;

import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.operation.Task;
import kerfwright.planner.casework.ChamberDepth;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Known;
import kerfwright.planner.operation.Work;
import kerfwright.planner.plan.DepthFrom;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.SourceKey;

/**
 * Where the roof of the chamber is looked for. Bulk cutting stops short of it by one millimetre, or
 * by three times the error of the film where that is more; where only a mean of the literature is
 * known a film comes first. One millimetre below the roof without an opening: stop and take a
 * radiograph.
 */
final class AccessDepth {
  private static final double STAND_OFF_MM = 1.0;
  private static final double BEYOND_MM = 1.0;
  private static final double ERRORS = 3;

  private AccessDepth() {}

  static Optional<DepthFrom> of(CutCase c, List<Work> works) {
    ChamberDepth chamber = c.condition().chamber();
    boolean enters = works.stream().anyMatch(w -> w.operation().task() == Task.ENTER);
    if (chamber == null || !enters) {
      return Optional.empty();
    }
    double mm = chamber.below().typical().millimetres();
    double low = chamber.below().low().millimetres();
    double high = chamber.below().high().millimetres();
    double error = Math.max(mm - low, high - mm);
    double short0 = read(chamber) ? Math.max(STAND_OFF_MM, ERRORS * error) : STAND_OFF_MM;
    return Optional.of(
        new DepthFrom(
            landmark(c),
            mm,
            error,
            chamber.known().id(),
            Math.max(0, mm - short0),
            mm + BEYOND_MM));
  }

  /** The warning that a film comes first where only a mean is known. */
  static Optional<Finding> filmFirst(CutCase c, DepthFrom depth) {
    ChamberDepth chamber = c.condition().chamber();
    return chamber == null || read(chamber)
        ? Optional.empty()
        : Optional.of(
            Finding.warn(
                "film-first",
                Message.of(
                    "finding.film-first",
                    Rounded.places(depth.mm(), 1),
                    Rounded.places(depth.plusMinusMm(), 1)),
                c.filled("chamber").map(f -> f.sources().toArray(SourceKey[]::new))
                    .orElse(new SourceKey[] {new SourceKey("deutsch-2004")})));
  }

  private static boolean read(ChamberDepth chamber) {
    return chamber.known() == Known.FILM || chamber.known() == Known.MEASURED;
  }

  private static Message landmark(CutCase c) {
    if (c.restoration() != null && !c.restoration().equals("none")) {
      return Message.of("landmark.crown");
    }
    return switch (c.tooth().toothClass()) {
      case MOLAR -> Message.of("landmark.buccal-cusp-tip");
      case PREMOLAR -> Message.of("landmark.between-cusp-tips");
      case INCISOR, CANINE -> Message.of("landmark.lingual-surface");
    };
  }
}
