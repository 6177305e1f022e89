package kerfwright.planner.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.catalogue.material.Trait;
import kerfwright.catalogue.operation.Formula;
import kerfwright.catalogue.operation.Geometry;
import kerfwright.catalogue.operation.GeometryKind;
import kerfwright.catalogue.operation.HeatTarget;
import kerfwright.catalogue.operation.Operation;
import kerfwright.catalogue.operation.Task;
import kerfwright.catalogue.size.Place;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Outline;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import org.jspecify.annotations.Nullable;

/** Lays one operation after the other; what it has laid so far is what the next one meets. */
final class Layout {
  private static final double MM = 1e-3;
  private static final double MM2 = 1e-6;

  /** A head of 0.8 of a slot leaves room for water and chips (common practice). */
  private static final double HEAD_SHARE_OF_SLOT = 0.8;

  private static final double USUAL_HEAD_MM = 1.2;

  private final List<Work> works = new ArrayList<>();
  private final List<Cue> cues = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final CutCase c;
  private final Depths depths;

  Layout(CutCase c) {
    this.c = c;
    this.depths = new Depths(c.layers());
  }

  Laying laying() {
    return new Laying(works, cues, findings);
  }

  void add(Operation operation) {
    CaseQuantities names =
        new CaseQuantities(
            c,
            depths,
            new Place(c.tooth(), c.procedure().id(), operation.variant()),
            operation.geometry().terms(),
            USUAL_HEAD_MM);
    String when = operation.when();
    boolean asked = when.equals(Operation.HAND);
    if (!asked && !when.isEmpty() && names.value(Formula.of(when)) <= 0) {
      return;
    }
    if (asked || !operation.cuts()) {
      boolean looks = operation.task() == Task.INSPECT;
      Cue.Why why = asked ? Cue.Why.IF_NEEDED : looks ? Cue.Why.INSPECT : Cue.Why.HAND;
      cues.add(new Cue(works.size(), operation, why, said(operation, names)));
    } else {
      work(operation, names);
    }
  }

  private static List<Double> said(Operation operation, CaseQuantities names) {
    return operation.says().stream().map(f -> Math.rint(names.value(f) * 100) / 100).toList();
  }

  private void work(Operation operation, CaseQuantities names) {
    Geometry geometry = operation.geometry();
    double slot = slot(geometry, names);
    double most = value(operation.window().headMost(), names, Double.POSITIVE_INFINITY);
    most = slot > 0 ? Math.min(most, HEAD_SHARE_OF_SLOT * slot) : most;
    double least = Math.min(most, value(operation.window().headLeast(), names, 0));
    double head = Double.isInfinite(most) ? Math.max(least, USUAL_HEAD_MM) : (least + most) / 2;
    CaseQuantities usual = names.of(geometry.terms(), head);
    double floor = works.stream().mapToDouble(Work::toM).max().orElse(0) / MM;
    double from = term(geometry, "from", usual, floor);
    double wanted = term(geometry, "to", usual, from);
    Spared spared = Spared.of(operation, c, depths, usual);
    double to = Math.min(wanted, spared.fromMm());
    boolean flat = Math.abs(wanted - from) <= Depths.LEAST_MM;
    if (!flat && to <= from + Depths.LEAST_MM) {
      leftOut(operation, wanted > from && to < wanted);
      return;
    }
    double kept = flat ? 1 : (to - from) / (wanted - from);
    List<Work.Part> parts = Parts.of(operation, depths, usual, from, flat ? from : to, kept);
    double volume = parts.stream().mapToDouble(p -> p.volume().m3(head * MM)).sum() * 1e9;
    if (geometry.terms().containsKey("volume") && volume <= Depths.LEAST_MM) {
      return;
    }
    cutShort(operation, kept, to - from);
    double area =
        term(geometry, "area", usual, flat ? usual.applyAsDouble("A") : volume / (to - from));
    double wall = term(geometry, "wall", usual, walled(geometry) ? to - from : Math.sqrt(area));
    works.add(
        new Work(
            works.size() + 1,
            operation,
            parts,
            from * MM,
            (flat ? from : to) * MM,
            area * MM2,
            wall * MM,
            term(geometry, "length", usual, 0) * MM,
            slot * MM,
            least * MM,
            most * MM,
            value(operation.window().reach(), usual, 0) * MM,
            to < depths.total() - Depths.LEAST_MM ? depths.material(depths.at(to)) : null,
            spared.leftBelow(to) * MM,
            spared.whole(),
            heat(operation),
            said(operation, usual)));
  }

  /** Width of the slot where the case gives it, else 0. */
  private double slot(Geometry geometry, CaseQuantities names) {
    Formula width = geometry.terms().get("width");
    boolean given =
        geometry.kind() == GeometryKind.SLOT
            && c.outline().shape() == Outline.Shape.SLOT
            && width != null
            && width.names().contains("s");
    return given && width != null ? names.value(width) : 0;
  }

  private static double term(Geometry geometry, String name, CaseQuantities names, double without) {
    Map<String, Formula> terms = geometry.terms();
    return terms.containsKey(name) ? names.applyAsDouble(name) : without;
  }

  private static double value(@Nullable Formula formula, CaseQuantities names, double without) {
    return formula == null ? without : names.value(formula);
  }

  private static boolean walled(Geometry geometry) {
    return switch (geometry.kind()) {
      case POCKET, SLOT, GROOVE -> true;
      case NONE, BAND, SKIN, SWEEP -> false;
    };
  }

  /** A dead pulp needs no cooling; metal or a post still leads heat to the root. */
  private HeatTarget heat(Operation operation) {
    if (operation.heat() != HeatTarget.PULP_WALL || c.pulp().protectsPulp()) {
      return operation.heat();
    }
    boolean leads =
        c.layers().stream()
            .anyMatch(l -> l.material().has(Trait.METAL) || l.material().has(Trait.POST));
    return leads ? HeatTarget.ROOT_SURFACE : HeatTarget.NONE;
  }

  private void cutShort(Operation operation, double kept, double deepMm) {
    if (kept < 1 - 1e-9) {
      findings.add(
          Finding.note(
              "operation-cut-short",
              Message.of(
                  "finding.operation-cut-short", name(operation), Rounded.places(deepMm, 2))));
    }
  }

  private void leftOut(Operation operation, boolean spared) {
    if (spared) {
      findings.add(
          Finding.note(
              "operation-left-out", Message.of("finding.operation-left-out", name(operation))));
    }
  }

  private static Message name(Operation operation) {
    return Message.of(operation.key("name"));
  }
}
