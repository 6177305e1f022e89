package kerfwright.planner.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import kerfwright.catalogue.source.Sources;
import kerfwright.quantity.Basis;
import org.junit.jupiter.api.Test;

/** What every rule must carry: a code of its own, a standing, a source that exists. */
class RulesTest {
  @Test
  void everyRuleHasACodeOfItsOwn() {
    Set<String> codes = new HashSet<>();
    Vetoes.all().forEach(v -> assertTrue(codes.add(v.code()), v.code()));
    EvidenceRules.all().forEach(r -> assertTrue(codes.add(r.code()), r.code()));
  }

  @Test
  void everyRuleNamesASourceOfTheRegisterOrCommonPractice() {
    Set<String> known = new HashSet<>();
    Sources.packaged().all().forEach(s -> known.add(s.key().key()));
    Vetoes.all().forEach(v -> check(v, known));
    EvidenceRules.all().forEach(r -> check(r, known));
  }

  private static void check(Standing rule, Set<String> known) {
    assertFalse(rule.sources().isEmpty(), rule.code());
    rule.sources().forEach(k -> assertTrue(known.contains(k.key()), rule.code() + ": " + k));
    if (rule.basis() == Basis.COMMON_PRACTICE) {
      assertEquals("common-practice", rule.sources().get(0).key(), rule.code());
    }
  }
}
