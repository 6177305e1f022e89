package kerfwright.planner.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import kerfwright.catalogue.operation.GeometryKind;
import kerfwright.catalogue.operation.OperationTable;
import kerfwright.planner.casework.CutCase;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every variant can be laid through a case it is for. */
class EveryVariantTest {
  private static final Map<String, CutCase> CASES = LaidCases.ofEveryVariant();

  static Stream<String> variants() {
    return OperationTable.packaged().variants().stream();
  }

  @ParameterizedTest
  @MethodSource("variants")
  void everyVariantCutsSomethingInACaseItIsFor(String variant) {
    CutCase c = Objects.requireNonNull(CASES.get(variant), variant);
    Laying laid = Laying.of(c, OperationTable.packaged().operations(variant));
    assertFalse(laid.works().isEmpty());
    for (Work work : laid.works()) {
      String what = variant + "." + work.operation().id();
      double mm3 = work.volumeM3((work.headLeastM() + Math.min(work.headMostM(), 2e-3)) / 2) * 1e9;
      assertTrue(work.toM() >= work.fromM() && work.fromM() >= 0, what);
      assertTrue(work.areaM2() > 0, what + " has no area");
      assertTrue(work.engagedM() > 0, what + " has no height");
      assertTrue(work.headLeastM() <= work.headMostM(), what + " takes no head");
      assertTrue(
          mm3 > 0 || work.operation().geometry().kind() == GeometryKind.SWEEP,
          what + " cuts nothing");
      assertTrue(mm3 < 150, what + " cuts " + mm3 + " mm3");
    }
    assertEquals(
        List.of(),
        laid.findings().stream().map(f -> f.code() + f.message()).toList(),
        "nothing is cut short in a usual case");
  }
}
