package kerfwright.planner.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import kerfwright.catalogue.operation.OperationTable;
import kerfwright.planner.casework.CutCase;
import org.junit.jupiter.api.Test;

/** What the operations of a case come to. */
class LayingTest {
  @Test
  void anAccessIsOneAfterTheOtherAndAddsUpToItsOpening() {
    CutCase c = LaidCases.access(46, "enamel", 1.2, "dentine", 3.8);
    Laying laid = Laying.of(c, OperationTable.packaged().operations("access-natural-molar"));
    double mm3 = laid.works().stream().mapToDouble(w -> w.volumeM3(1.5e-3)).sum() * 1e9;
    assertEquals(c.outline().areaM2() * 1e6 * 5.0, mm3, 1e-6);
  }
}
