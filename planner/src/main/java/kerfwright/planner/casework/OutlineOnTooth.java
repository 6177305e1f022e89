package kerfwright.planner.casework;

import java.util.Optional;
import kerfwright.catalogue.stack.UsualStacks;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.planner.casework.Contradiction.Fix;
import kerfwright.quantity.Length;
import kerfwright.quantity.Rounded;

/** Whether an outline fits on the tooth it is told for, by the usual size of such a crown. */
final class OutlineOnTooth {
  /** Teeth vary: an outline may pass the usual size of a tooth by a fifth. */
  private static final double VARIES = 1.2;

  private OutlineOnTooth() {}

  static Optional<Contradiction> against(CutCase c) {
    double height = size("h", c);
    double wide = size("MD", c);
    double deep = size("BL", c);
    if (c.tooth().primary() || height == 0 || wide == 0 || deep == 0) {
      return Optional.empty();
    }
    if (fits(c, height, wide, deep)) {
      return Optional.empty();
    }
    return Optional.of(
        Contradiction.of(
            "outline-larger-than-tooth",
            "outline",
            Fix.leaveOut("outline"),
            Rounded.places(c.outline().length().millimetres(), 1),
            Rounded.places(c.outline().width().millimetres(), 1),
            Contradictions.label(c.tooth()),
            Rounded.places(wide, 1),
            Rounded.places(deep, 1),
            Rounded.places(height, 1)));
  }

  private static boolean fits(CutCase c, double height, double wide, double deep) {
    double across = Math.max(wide, deep);
    double narrow = Math.min(wide, deep);
    double round = Math.PI * across;
    double length = c.outline().length().millimetres();
    double width = c.outline().width().millimetres();
    return switch (c.outline().shape()) {
      case ELLIPSE, CIRCLE, RECTANGLE ->
          facial(c)
              ? length <= VARIES * Math.max(height, wide)
                  && width <= VARIES * Math.min(height, wide)
              : length <= VARIES * across && width <= VARIES * narrow;
      case SLOT -> length <= VARIES * (height + across) && width <= VARIES * narrow;
      case BAND -> length <= VARIES * round && width <= VARIES * height;
      case PATCH -> length * width <= VARIES * (round * height + wide * deep);
    };
  }

  private static boolean facial(CutCase c) {
    Tooth tooth = c.tooth();
    String front = UsualStacks.packaged().procedure(c.procedure().id()).frontTooth();
    return front.equals("facial") && UsualValues.cuspMm(tooth) == 0;
  }

  private static double size(String name, CutCase c) {
    return UsualOpening.crown(name, c.tooth()).map(Length::millimetres).orElse(0.0);
  }
}
