package kerfwright.app.drawing.strip;

import java.util.List;
import java.util.Set;
import kerfwright.app.drawing.instrument.ShortInstrument;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Trait;
import kerfwright.catalogue.operation.GeometryKind;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.PulpState;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;

/**
 * The one scale of all stages of a plan, or of all columns of a comparison. Seen from the front:
 * layers lie one below the other and the instrument goes down into them. Seen from the side, where
 * most of the work is on an open surface: layers stand one behind the other and the instrument's
 * side goes into them.
 *
 * @param layers the stack, outermost first
 * @param pulpState of the pulp below it
 * @param works what is done in it
 * @param side true where surfaces are drawn standing
 * @param width of one stage
 * @param height of one stage, drawing units
 * @param shownMm how deep the layers are drawn
 * @param perMm drawing units a millimetre
 */
record StripScale(
    List<Layer> layers,
    PulpState pulpState,
    List<AtWork> works,
    boolean side,
    double width,
    double height,
    double shownMm,
    double perMm) {
  static final double HEAD = 30;
  static final double FOOT = 24;
  static final double PULP = 16;
  private static final double UNDER_MM = 1.5;
  private static final double LARGEST = 42;
  private static final double LEAST_HIGH = 170;
  private static final double EDGE_MM = 0.5;
  private static final Set<GeometryKind> ON_A_SURFACE =
      Set.of(GeometryKind.SKIN, GeometryKind.SWEEP, GeometryKind.BAND, GeometryKind.GROOVE);

  StripScale {
    layers = List.copyOf(layers);
    works = List.copyOf(works);
  }

  static StripScale of(CutPlan plan, List<AtWork> works, double width, double height) {
    var of = plan.cutCase();
    return of(of.layers(), of.pulp(), works, onSurfaces(plan), width, height);
  }

  static StripScale of(
      List<Layer> layers,
      PulpState pulpState,
      List<AtWork> works,
      boolean side,
      double width,
      double height) {
    double deepest = works.stream().mapToDouble(AtWork::toMm).max().orElse(0);
    double total = totalMm(layers);
    double shown =
        side
            ? Math.min(total, deepest + 1.2)
            : total - deepest < 2 * UNDER_MM ? total : deepest + UNDER_MM;
    StripScale rough = new StripScale(layers, pulpState, works, side, width, height, shown, 1);
    double across = 1;
    double up = 1;
    for (AtWork work : works) {
      ShortInstrument one = rough.instrument(work);
      across = Math.max(across, rough.acrossMm(work, one));
      up = Math.max(up, one.tallMm() - (side ? 0 : work.toMm()));
    }
    double around = HEAD + FOOT + (side || !rough.pulp() ? 0 : PULP);
    double tall = side ? up + 2 * EDGE_MM : up + shown;
    double perMm = Math.min(LARGEST, Math.min((height - around) / tall, (width - 6) / across));
    // where the width sets the scale, less height will do
    double high = Math.min(height, Math.max(LEAST_HIGH, Math.ceil(around + tall * perMm)));
    return new StripScale(layers, pulpState, works, side, width, high, shown, perMm);
  }

  private static boolean onSurfaces(CutPlan plan) {
    long surfaces = plan.steps().stream().filter(s -> onSurface(plan, s)).count();
    return 2 * surfaces > plan.steps().size();
  }

  private static boolean onSurface(CutPlan plan, PlannedStep step) {
    boolean within =
        plan.cutCase().outline().shape().walled()
            && step.operation().row().geometry().face().isEmpty();
    return !within
        && step.instrument().properties().shape() != ShapeFamily.ROUND
        && ON_A_SURFACE.contains(Stage.kind(step));
  }

  /** The instrument as long as it is drawn at its work. */
  ShortInstrument instrument(AtWork work) {
    return ShortInstrument.reaching(work.what(), side ? 0 : work.toMm());
  }

  private double acrossMm(AtWork work, ShortInstrument one) {
    double half = one.widestMm() / 2;
    if (side) {
      double head = one.silhouette().headWidthMm() / 2;
      return Math.max(0, head + half - work.toMm()) + shownMm;
    }
    return Math.max(work.wideMm() + 2 * EDGE_MM, one.widestMm() + EDGE_MM);
  }

  private static double totalMm(List<Layer> layers) {
    double total =
        layers.stream().mapToDouble(one -> one.thickness().typical().millimetres()).sum();
    if (!(total > 0)) {
      throw new IllegalArgumentException("A section needs layers with a thickness, got 0 mm");
    }
    return total;
  }

  /** True where the layers are drawn down to the pulp. */
  boolean pulp() {
    Material last = layers.get(layers.size() - 1).material();
    return !side
        && shownMm >= totalMm(layers) - 1e-9
        && (last.has(Trait.DENTINE) || last.has(Trait.CARIOUS));
  }

  double bottom() {
    return height - FOOT - (pulp() ? PULP : 0);
  }

  /** Where a depth is drawn: down from the outer surface, or across from it. */
  double at(double depthMm) {
    double depth = Math.min(depthMm, shownMm);
    return side ? width - 1 - (shownMm - depth) * perMm : bottom() - (shownMm - depth) * perMm;
  }
}
