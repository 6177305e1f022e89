package kerfwright.planner;

import java.util.Optional;
import kerfwright.catalogue.operation.Task;
import kerfwright.planner.casework.ChamberDepth;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Known;
import kerfwright.planner.operation.Laying;
import kerfwright.planner.plan.DepthFrom;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
import kerfwright.quantity.Range;
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

  static Optional<DepthFrom> of(CutCase c, Laying laying) {
    boolean enters = laying.works().stream().anyMatch(w -> w.operation().task() == Task.ENTER);
    ChamberDepth chamber = c.condition().chamber();
    if (!enters) {
      return Optional.empty();
    }
    double mm = chamber == null ? laidMm(laying) : chamber.below().typical().millimetres();
    double error = chamber == null ? stackErrorMm(c) : errorMm(chamber.below());
    double shy =
        chamber != null && read(chamber) ? Math.max(STAND_OFF_MM, ERRORS * error) : STAND_OFF_MM;
    return Optional.of(
        new DepthFrom(
            landmark(c),
            mm,
            error,
            chamber == null ? Known.RANGE.id() : chamber.known().id(),
            Math.max(0, mm - shy),
            mm + BEYOND_MM));
  }

  /** The depth the operations were laid for: the second figure of what is read off the film. */
  private static double laidMm(Laying laying) {
    return laying.cues().stream()
        .filter(cue -> cue.after() == 0 && cue.saidMm().size() > 1)
        .findFirst()
        .map(cue -> cue.saidMm().get(1))
        .orElse(laying.depthM() * 1e3);
  }

  private static double stackErrorMm(CutCase c) {
    return c.layers().stream().mapToDouble(l -> errorMm(l.thickness())).sum();
  }

  private static double errorMm(Range<Length> range) {
    return Math.max(
        range.typical().millimetres() - range.low().millimetres(),
        range.high().millimetres() - range.typical().millimetres());
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
                c.filled("chamber")
                    .map(f -> f.sources().toArray(SourceKey[]::new))
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
