package kerfwright.planner.operation;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.planner.casework.Aim;
import kerfwright.planner.casework.AtHand;
import kerfwright.planner.casework.Condition;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.quantity.FlowRate;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;

/** Cases to lay operations through: a stack as material, thickness in mm, and so on. */
final class LaidCases {
  private LaidCases() {}

  static CutCase access(int fdi, Object... stack) {
    return of("access-cavity", fdi, PulpState.VITAL, stack);
  }

  static CutCase of(String procedure, int fdi, PulpState pulp, Object... stack) {
    return with(procedure, fdi, pulp, outline(Outline.Shape.ELLIPSE, 4.0, 3.0), stack);
  }

  static Outline outline(Outline.Shape shape, double length, double width) {
    return new Outline(shape, Length.ofMillimetres(length), Length.ofMillimetres(width));
  }

  static CutCase with(String procedure, int fdi, PulpState pulp, Outline outline, Object... stack) {
    List<Layer> layers = new ArrayList<>();
    for (int i = 0; i < stack.length; i += 2) {
      layers.add(
          new Layer(
              Materials.packaged().get((String) stack[i]),
              Range.exactly(Length.ofMillimetres(((Number) stack[i + 1]).doubleValue()))));
    }
    return new CutCase(
        "K-1",
        new Procedure(procedure),
        new Tooth(fdi),
        new Condition(pulp, layers),
        new Aim(outline),
        new AtHand(Handpieces.all(), FlowRate.ofMillilitresPerMinute(50)),
        List.of());
  }
}
