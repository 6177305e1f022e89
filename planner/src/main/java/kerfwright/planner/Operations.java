package kerfwright.planner;

import java.util.List;
import kerfwright.catalogue.operation.Asked;
import kerfwright.catalogue.operation.Operation;
import kerfwright.catalogue.operation.OperationTable;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Lesion;
import kerfwright.planner.operation.Laying;

/** Which operations a case gets. */
final class Operations {
  private Operations() {}

  /** The case's operations laid through its layers. */
  static Laying laid(CutCase c) {
    return Laying.of(c, of(c));
  }

  static List<Operation> of(CutCase c) {
    return OperationTable.inUse().operations(asked(c));
  }

  private static Asked asked(CutCase c) {
    Lesion lesion = c.lesion();
    return new Asked(
        c.procedure().id(),
        c.tooth(),
        c.restoration() == null ? "" : c.restoration(),
        c.layers().stream().map(l -> l.material()).toList(),
        c.intended() == null ? "" : c.intended(),
        lesion == null ? "" : lesion.depth().id(),
        c.pulp().id());
  }
}
