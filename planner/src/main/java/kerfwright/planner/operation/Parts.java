package kerfwright.planner.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.operation.Formula;
import kerfwright.catalogue.operation.Operation;

/** Shares what an operation cuts among the layers on its way, by their thickness. */
final class Parts {
  private static final double MM3 = 1e-9;
  private static final double MM = 1e-3;

  private Parts() {}

  static List<Work.Part> of(
      Operation operation,
      Depths depths,
      CaseQuantities names,
      double fromMm,
      double toMm,
      double kept) {
    Work.VolumeOfHead volume = volume(operation, names);
    List<Integer> on = new ArrayList<>();
    for (int i = 0; i < depths.layers().size(); i++) {
      if (depths.between(i, fromMm, toMm) > Depths.LEAST_MM && passes(operation, depths, i)) {
        on.add(i);
      }
    }
    if (on.isEmpty()) {
      int near = nearest(operation, depths, fromMm);
      Material there = material(operation, depths, near);
      return List.of(new Work.Part(near, there, head -> kept * volume.m3(head)));
    }
    double way = on.stream().mapToDouble(i -> depths.between(i, fromMm, toMm)).sum();
    List<Work.Part> parts = new ArrayList<>();
    for (int i : on) {
      double share = kept * depths.between(i, fromMm, toMm) / way;
      parts.add(new Work.Part(i, depths.material(i), head -> share * volume.m3(head)));
    }
    return parts;
  }

  /**
   * Volume by head. A search asks for many heads: a volume that grows with the square of the head
   * at most is read from three of them, checked on a fourth.
   */
  private static Work.VolumeOfHead volume(Operation operation, CaseQuantities names) {
    Map<String, Formula> terms = operation.geometry().terms();
    Formula formula = terms.get("volume");
    if (formula == null) {
      return head -> 0;
    }
    DoubleUnaryOperator mm3 = headMm -> formula.value(names.of(terms, headMm));
    double at0 = mm3.applyAsDouble(0);
    double at1 = mm3.applyAsDouble(1);
    double at2 = mm3.applyAsDouble(2);
    double square = (at2 - 2 * at1 + at0) / 2;
    double linear = at1 - at0 - square;
    DoubleUnaryOperator known = headMm -> at0 + headMm * (linear + headMm * square);
    double at3 = mm3.applyAsDouble(3);
    boolean exact = Math.abs(known.applyAsDouble(3) - at3) <= 1e-9 * (1 + Math.abs(at3));
    DoubleUnaryOperator taken = exact ? known : mm3;
    return headM -> Math.max(0, taken.applyAsDouble(headM / MM)) * MM3;
  }

  private static boolean passes(Operation operation, Depths depths, int layer) {
    Material material = depths.material(layer);
    return operation.fromLayer().equals("any")
        || Depths.matches(material, operation.fromLayer())
        || Depths.matches(material, operation.toLayer())
        || depths.film(layer);
  }

  /** The layer at a depth, or the one it is told to start on. */
  private static int nearest(Operation operation, Depths depths, double depthMm) {
    int at = depths.at(depthMm);
    for (int i = 0; i < depths.layers().size() && !passes(operation, depths, at); i++) {
      if (Depths.matches(depths.material(i), operation.fromLayer())) {
        return i;
      }
    }
    return at;
  }

  /** A material the stack does not show: the enamel rim round a filling on dentine. */
  private static Material material(Operation operation, Depths depths, int near) {
    Material there = depths.material(near);
    return passes(operation, depths, near)
        ? there
        : Materials.packaged().all().stream()
            .filter(m -> m.is(operation.fromLayer()))
            .findFirst()
            .orElse(there);
  }
}
