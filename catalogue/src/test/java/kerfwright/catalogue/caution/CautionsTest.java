package kerfwright.catalogue.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import kerfwright.quantity.Finding;
import org.junit.jupiter.api.Test;

class CautionsTest {
  private static final Cautions CAUTIONS = Cautions.packaged();

  @Test
  void theTwentyCautionsAreThereInOrder() {
    assertEquals(
        IntStream.rangeClosed(1, 20).mapToObj(i -> String.format("C%02d", i)).toList(),
        CAUTIONS.all().stream().map(Caution::id).toList());
  }

  @Test
  void someAlwaysShow() {
    assertEquals(
        List.of(
            "caution-c01",
            "caution-c02",
            "caution-c03",
            "caution-c04",
            "caution-c08",
            "caution-c14",
            "caution-c15",
            "caution-c19"),
        codes(Set.of()));
  }

  @Test
  void amalgamCallsUpMercury() {
    List<String> codes = codes(EnumSet.of(CautionCondition.AMALGAM));
    assertTrue(codes.contains("caution-c10"));
    assertTrue(codes.contains("caution-c11"));
    assertFalse(codes.contains("caution-c06"));
  }

  @Test
  void everyConditionCallsUpSomething() {
    for (CautionCondition condition : CautionCondition.values()) {
      assertTrue(
          CAUTIONS.all().stream().anyMatch(c -> c.when().contains(condition)), condition.id());
    }
  }

  @Test
  void everyConditionTogetherShowsAll() {
    List<Finding> all = CAUTIONS.findings(EnumSet.allOf(CautionCondition.class));
    assertEquals(20, all.size());
    assertTrue(all.stream().allMatch(f -> f.severity() == Finding.Severity.NOTE));
  }

  private static List<String> codes(Set<CautionCondition> conditions) {
    return CAUTIONS.findings(conditions).stream().map(Finding::code).toList();
  }
}
