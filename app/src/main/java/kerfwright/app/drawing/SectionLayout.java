package kerfwright.app.drawing;

import java.util.ArrayList;
import java.util.List;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;

/**
 * Where things stand in the section of a tooth: one scale down, the same across where the opening
 * fits.
 *
 * @param plan what is drawn
 * @param perMm drawing units a millimetre of depth
 * @param top height of the outer surface in the drawing
 */
record SectionLayout(CutPlan plan, double perMm, double top) {
  static final double LEFT = 40;
  static final double RIGHT = 206;
  static final double BADGE = 18;
  private static final double WIDEST_OPENING = 118;
  private static final double NARROWEST_OPENING = 44;

  /** A layout whose stack is about as tall as wanted. */
  static SectionLayout of(CutPlan plan, double tall) {
    double total = totalMm(plan.cutCase());
    double width = plan.cutCase().outline().width().millimetres();
    double perMm = tall / total;
    if (width * perMm > WIDEST_OPENING) {
      perMm = Math.max(WIDEST_OPENING / width, 124 / total);
    }
    double depth = plan.steps().isEmpty() ? 0 : deepestMm(plan) * perMm;
    double badges = plan.steps().size() * BADGE;
    // numbers stand in the opening, or all of them above it where it is too shallow
    return new SectionLayout(plan, perMm, badges > depth ? 46 + badges : 40);
  }

  private static double totalMm(CutCase cutCase) {
    double total = 0;
    for (Layer layer : cutCase.layers()) {
      total += layer.thickness().typical().millimetres();
    }
    if (!(total > 0)) {
      throw new IllegalArgumentException("A section needs layers with a thickness, got 0 mm");
    }
    return total;
  }

  private static double deepestMm(CutPlan plan) {
    double deepest = 0;
    for (PlannedStep step : plan.steps()) {
      deepest = Math.max(deepest, step.toMm().typical());
    }
    return Math.min(deepest, totalMm(plan.cutCase()));
  }

  /** True where the numbers of the steps do not fit into the opening. */
  boolean shallow() {
    return plan.steps().size() * BADGE > y(floorMm()) - top;
  }

  double totalMm() {
    return totalMm(plan.cutCase());
  }

  double floorMm() {
    return deepestMm(plan);
  }

  /** Height in the drawing of a depth; what lies below the stack is drawn at its bottom. */
  double y(double depthMm) {
    return top + perMm * Math.max(0, Math.min(depthMm, totalMm()));
  }

  double bottom() {
    return y(totalMm());
  }

  /** Depth of the upper side of each layer and, last, of the bottom. */
  List<Double> boundariesMm() {
    List<Double> depths = new ArrayList<>(List.of(0.0));
    for (Layer layer : plan.cutCase().layers()) {
      depths.add(depths.get(depths.size() - 1) + layer.thickness().typical().millimetres());
    }
    return depths;
  }

  boolean walled() {
    return plan.cutCase().outline().shape().walled();
  }

  double openingWidth() {
    double drawn = plan.cutCase().outline().width().millimetres() * perMm;
    return Math.max(NARROWEST_OPENING, Math.min(WIDEST_OPENING, drawn));
  }

  /** True where the width of the opening is drawn at the scale of the depth. */
  boolean widthToScale() {
    double drawn = plan.cutCase().outline().width().millimetres() * perMm;
    return Math.abs(drawn - openingWidth()) < 0.5;
  }

  double openingLeft() {
    return walled() ? (LEFT + RIGHT - openingWidth()) / 2 : RIGHT - openingWidth();
  }

  double openingRight() {
    return openingLeft() + openingWidth();
  }
}
