package kerfwright.planner.operation;

import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import kerfwright.catalogue.operation.Formula;
import kerfwright.catalogue.size.LeastThickness;
import kerfwright.catalogue.size.Place;
import kerfwright.catalogue.size.UsualSizes;
import kerfwright.planner.casework.ChamberDepth;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Known;
import kerfwright.planner.casework.Outline;
import kerfwright.quantity.Length;

/**
 * The names of the operations' formulas with their values in one case, in mm and mm2; the README of
 * the operations lists them.
 *
 * @param c the case
 * @param depths its stack
 * @param place where usual sizes are asked for
 * @param terms formulas of the operation itself, asked first
 * @param headMm diameter of the head, mm
 */
record CaseQuantities(
    CutCase c, Depths depths, Place place, Map<String, Formula> terms, double headMm)
    implements ToDoubleFunction<String> {

  private static final Set<String> OF_THE_CASE =
      Set.of("A", "P", "L", "W", "d", "s", "total", "all", "pi", "front", "vital");

  /** Whether a case or the usual sizes give this name a value. */
  static boolean knows(String name) {
    return OF_THE_CASE.contains(name)
        || name.matches("(t|top|bottom|least)\\([#a-z0-9|-]+\\)")
        || UsualSizes.packaged().sizes().stream().anyMatch(size -> size.name().equals(name));
  }

  CaseQuantities of(Map<String, Formula> own, double head) {
    return new CaseQuantities(c, depths, place, own, head);
  }

  double value(Formula formula) {
    return formula.value(this);
  }

  @Override
  public double applyAsDouble(String name) {
    int bracket = name.indexOf('(');
    if (bracket > 0) {
      return ofLayers(name.substring(0, bracket), name.substring(bracket + 1, name.length() - 1));
    }
    double length = c.outline().length().millimetres();
    double width = c.outline().width().millimetres();
    return switch (name) {
      case "A" -> c.outline().areaM2() * 1e6;
      case "P" -> perimeter(c.outline().shape(), length, width);
      case "L" -> length;
      case "W" -> width;
      case "d" -> headMm;
      case "s" -> c.outline().shape() == Outline.Shape.SLOT ? width : 1.2 * headMm;
      case "total" -> depths.total();
      case "all" -> Double.POSITIVE_INFINITY;
      case "pi" -> Math.PI;
      case "front" -> c.tooth().position() <= 3 ? 1 : 0;
      case "vital" -> c.pulp().protectsPulp() ? 1 : 0;
      default -> other(name);
    };
  }

  private double other(String name) {
    Formula term = terms.get(name);
    if (term != null) {
      return term.value(of(without(name), headMm));
    }
    ChamberDepth chamber = c.condition().chamber();
    if (chamber != null && name.equals("D")) {
      return chamber.below().typical().millimetres();
    }
    if (chamber != null && name.equals("u") && read(chamber)) {
      return (chamber.below().high().millimetres() - chamber.below().low().millimetres()) / 2;
    }
    return UsualSizes.packaged().value(name, place, this);
  }

  /** Whether the depth was read on a film or measured; its own error then stands for u. */
  private static boolean read(ChamberDepth chamber) {
    return chamber.known() == Known.FILM || chamber.known() == Known.MEASURED;
  }

  /** A term may name the others, not itself. */
  private Map<String, Formula> without(String name) {
    return terms.entrySet().stream()
        .filter(term -> !term.getKey().equals(name))
        .collect(java.util.stream.Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
  }

  private double ofLayers(String what, String words) {
    return switch (what) {
      case "t" -> depths.thickness(words);
      case "top" -> depths.top(words);
      case "bottom" -> depths.bottom(words);
      case "least" -> leastLeft(words);
      default -> throw new IllegalArgumentException("There is no quantity " + what);
    };
  }

  /** Least thickness left of the innermost layer of these words; all of it counts as infinite. */
  private double leastLeft(String words) {
    for (int i = c.layers().size() - 1; i >= 0; i--) {
      if (Depths.matches(depths.material(i), words)) {
        return UsualSizes.packaged()
            .least(depths.material(i), place)
            .map(LeastThickness::least)
            .map(least -> least.map(Length::millimetres).orElse(Double.POSITIVE_INFINITY))
            .orElse(0.0);
      }
    }
    return 0;
  }

  /** Perimeter; of an ellipse by Ramanujan's first approximation. */
  private static double perimeter(Outline.Shape shape, double length, double width) {
    double a = length / 2;
    double b = width / 2;
    return switch (shape) {
      case ELLIPSE, CIRCLE -> Math.PI * (3 * (a + b) - Math.sqrt((3 * a + b) * (a + 3 * b)));
      case SLOT -> 2 * (length - width) + Math.PI * width;
      case RECTANGLE, BAND, PATCH -> 2 * (length + width);
    };
  }
}
