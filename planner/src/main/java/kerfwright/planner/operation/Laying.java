package kerfwright.planner.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.operation.Formula;
import kerfwright.catalogue.operation.GeometryKind;
import kerfwright.catalogue.operation.HeatTarget;
import kerfwright.catalogue.operation.Operation;
import kerfwright.catalogue.operation.Task;
import kerfwright.catalogue.size.Place;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.Outline;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * The operations of a procedure laid through the layers of a case: what is cut, in which order, how
 * much of which layer, and the cues between.
 *
 * <p>A volume is shared among the layers an operation passes by their thickness on its way; a film
 * of cement or adhesive goes with its neighbour. What must stay cuts an operation short.
 *
 * @param works the operations that cut, in order
 * @param cues those that cut nothing, with their place
 * @param findings what has to be known beside them
 */
public record Laying(List<Work> works, List<Cue> cues, List<Finding> findings) {
  private static final double MM = 1e-3;
  private static final double MM2 = 1e-6;
  private static final double MM3 = 1e-9;
  private static final double SLOT_SHARE_OF_HEAD = 0.8;
  private static final double USUAL_HEAD_MM = 1.2;

  public Laying {
    works = List.copyOf(works);
    cues = List.copyOf(cues);
    findings = List.copyOf(findings);
  }

  /** Lays a procedure's operations, which are all of one variant, through a case. */
  public static Laying of(CutCase c, List<Operation> operations) {
    Builder builder = new Builder(c);
    operations.forEach(builder::add);
    return new Laying(builder.works, builder.cues, builder.findings());
  }

  /** How deep the deepest work goes, m. */
  public double depthM() {
    return works.stream().mapToDouble(Work::toM).max().orElse(0);
  }

  /** Lays one operation after the other. */
  private static final class Builder {
    final List<Work> works = new ArrayList<>();
    final List<Cue> cues = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final CutCase c;
    private final Depths depths;
    private boolean entersChamber;

    Builder(CutCase c) {
      this.c = c;
      this.depths = new Depths(c.layers());
    }

    List<Finding> findings() {
      if (entersChamber && c.stackFilledIn()) {
        findings.add(
            Finding.warn(
                "operation-film-first",
                Message.of("finding.operation-film-first"),
                new SourceKey("deutsch-2004")));
      }
      return findings;
    }

    void add(Operation operation) {
      CaseQuantities names =
          new CaseQuantities(
              c,
              depths,
              new Place(c.tooth(), c.procedure().id(), operation.variant()),
              operation.geometry().terms(),
              USUAL_HEAD_MM);
      entersChamber |= operation.task() == Task.ENTER;
      boolean decidedByHand = operation.when().equals(Operation.HAND);
      if (!decidedByHand
          && !operation.when().isEmpty()
          && names.value(Formula.of(operation.when())) <= 0) {
        return;
      }
      if (!operation.cuts() || decidedByHand) {
        Cue.Why why =
            decidedByHand
                ? Cue.Why.IF_NEEDED
                : operation.task() == Task.INSPECT ? Cue.Why.INSPECT : Cue.Why.HAND;
        cues.add(new Cue(works.size(), operation, why, said(operation, names)));
        return;
      }
      work(operation, names);
    }

    private static List<Double> said(Operation operation, CaseQuantities names) {
      return operation.says().stream().map(names::value).toList();
    }

    private void work(Operation operation, CaseQuantities names) {
      Map<String, Formula> terms = operation.geometry().terms();
      double slot = slotMm(operation);
      double most = most(operation, names, slot);
      double least = Math.min(most, value(operation.window().headLeast(), names, 0));
      double head = Double.isInfinite(most) ? Math.max(least, USUAL_HEAD_MM) : (least + most) / 2;
      CaseQuantities usual = names.of(terms, head);
      double floor = works.stream().mapToDouble(Work::toM).max().orElse(0) / MM;
      double from = terms.containsKey("from") ? usual.applyAsDouble("from") : floor;
      double asked = terms.containsKey("to") ? usual.applyAsDouble("to") : from;
      double sparedFrom = sparedFrom(operation, usual, from, asked);
      double to = Math.min(asked, sparedFrom);
      boolean deep = asked > from + Depths.LEAST_MM;
      if ((deep && to <= from + Depths.LEAST_MM)
          || (terms.containsKey("to") && asked < from - Depths.LEAST_MM)) {
        shortened(operation, sparedFrom < asked, 0);
        return;
      }
      double kept = deep ? (to - from) / (asked - from) : 1;
      shortened(operation, kept < 1 - 1e-9, to - from);
      List<Work.Part> parts = parts(operation, usual, from, to, kept);
      double volume = parts.stream().mapToDouble(p -> p.volume().m3(head * MM)).sum() / MM3;
      if (terms.containsKey("volume") && volume <= Depths.LEAST_MM) {
        return;
      }
      double area =
          terms.containsKey("area")
              ? usual.applyAsDouble("area")
              : to > from ? volume / (to - from) : usual.applyAsDouble("A");
      double wall =
          terms.containsKey("wall")
              ? usual.applyAsDouble("wall")
              : walled(operation.geometry().kind()) ? to - from : Math.sqrt(area);
      boolean spares = operation.spare() != null && !Double.isInfinite(sparedFrom);
      int under = depths.at(to);
      works.add(
          new Work(
              works.size() + 1,
              operation,
              parts,
              from * MM,
              to * MM,
              area * MM2,
              wall * MM,
              terms.containsKey("length") ? usual.applyAsDouble("length") * MM : 0,
              slot * MM,
              least * MM,
              most * MM,
              value(operation.window().reach(), usual, 0) * MM,
              to < depths.total() - Depths.LEAST_MM ? depths.material(under) : null,
              spares
                  ? Math.max(0, depths.bottom(spared(operation)) - to) * MM
                  : Double.POSITIVE_INFINITY,
              spares && whole(operation, usual),
              heat(operation),
              said(operation, usual)));
    }

    private double slotMm(Operation operation) {
      return operation.geometry().kind() == GeometryKind.SLOT
              && c.outline().shape() == Outline.Shape.SLOT
          ? c.outline().width().millimetres()
          : 0;
    }

    private static double most(Operation operation, CaseQuantities names, double slotMm) {
      double most = value(operation.window().headMost(), names, Double.POSITIVE_INFINITY);
      return slotMm > 0 ? Math.min(most, SLOT_SHARE_OF_HEAD * slotMm) : most;
    }

    private static double value(@Nullable Formula formula, CaseQuantities names, double without) {
      return formula == null ? without : names.value(formula);
    }

    private static boolean walled(GeometryKind kind) {
      return kind == GeometryKind.POCKET
          || kind == GeometryKind.SLOT
          || kind == GeometryKind.GROOVE;
    }

    /** Depth where what must stay begins; infinite where nothing must. */
    private double sparedFrom(Operation operation, CaseQuantities names, double from, double to) {
      Formula spare = operation.spare();
      int layer = spared(operation);
      if (spare == null || layer < 0 || (pulpAlone(operation) && !c.pulp().protectsPulp())) {
        return Double.POSITIVE_INFINITY;
      }
      double least = names.value(spare);
      Keep keep = c.keep();
      if (keep != null && depths.material(layer).id().equals(keep.materialId())) {
        least = keep.atLeast() == null ? least : Math.max(least, keep.atLeast().millimetres());
      }
      return Double.isInfinite(least) ? depths.top(layer) : depths.bottom(layer) - least;
    }

    private static boolean whole(Operation operation, CaseQuantities names) {
      Formula spare = operation.spare();
      return spare != null && Double.isInfinite(names.value(spare));
    }

    private static boolean pulpAlone(Operation operation) {
      return operation.heat() == HeatTarget.PULP_WALL;
    }

    /** The layer an operation ends in; below zero where the stack has none. */
    private int spared(Operation operation) {
      for (int i = c.layers().size() - 1; i >= 0; i--) {
        if (Depths.matches(depths.material(i), operation.toLayer())) {
          return i;
        }
      }
      return -1;
    }

    private void shortened(Operation operation, boolean isShort, double leftMm) {
      if (isShort) {
        findings.add(
            Finding.note(
                leftMm > 0 ? "operation-cut-short" : "operation-left-out",
                leftMm > 0
                    ? Message.of(
                        "finding.operation-cut-short",
                        Message.of("operation." + operation.id() + ".name"),
                        Rounded.places(leftMm, 2))
                    : Message.of(
                        "finding.operation-left-out",
                        Message.of("operation." + operation.id() + ".name"))));
      }
    }

    private HeatTarget heat(Operation operation) {
      if (operation.heat() != HeatTarget.PULP_WALL || c.pulp().protectsPulp()) {
        return operation.heat();
      }
      boolean leads =
          c.layers().stream().anyMatch(l -> l.material().has("metal") || l.material().has("post"));
      return leads ? HeatTarget.ROOT_SURFACE : HeatTarget.NONE;
    }

    /** What is cut of each layer on the way; the layer at that depth where nothing is deep. */
    private List<Work.Part> parts(
        Operation operation, CaseQuantities names, double from, double to, double kept) {
      List<Integer> on = new ArrayList<>();
      for (int i = 0; i < c.layers().size(); i++) {
        if (depths.between(i, from, to) > Depths.LEAST_MM && passes(operation, i)) {
          on.add(i);
        }
      }
      Formula volume = operation.geometry().terms().get("volume");
      if (on.isEmpty()) {
        int near = nearest(operation, from);
        return List.of(
            new Work.Part(
                near, material(operation, near), d -> cut(volume, operation, names, d) * kept));
      }
      double way = on.stream().mapToDouble(i -> depths.between(i, from, to)).sum();
      List<Work.Part> parts = new ArrayList<>();
      for (int i : on) {
        double share = depths.between(i, from, to) / way * kept;
        parts.add(
            new Work.Part(i, depths.material(i), d -> cut(volume, operation, names, d) * share));
      }
      return parts;
    }

    private static double cut(
        @Nullable Formula volume, Operation operation, CaseQuantities names, double headM) {
      return volume == null
          ? 0
          : Math.max(0, volume.value(names.of(operation.geometry().terms(), headM / MM))) * MM3;
    }

    private boolean passes(Operation operation, int layer) {
      Material material = depths.material(layer);
      return operation.fromLayer().equals("any")
          || Depths.matches(material, operation.fromLayer())
          || Depths.matches(material, operation.toLayer())
          || depths.film(layer);
    }

    private int nearest(Operation operation, double depth) {
      int at = depths.at(depth);
      if (passes(operation, at)) {
        return at;
      }
      for (int i = 0; i < c.layers().size(); i++) {
        if (Depths.matches(depths.material(i), operation.fromLayer())) {
          return i;
        }
      }
      return at;
    }

    private Material material(Operation operation, int near) {
      Material there = depths.material(near);
      return passes(operation, near)
          ? there
          : kerfwright.catalogue.material.Materials.packaged()
              .find(operation.fromLayer())
              .orElse(there);
    }
  }
}
