package kerfwright.catalogue.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;
import org.junit.jupiter.api.Test;

class SourceRolesTest {
  private static final SourceRoles ROLES = SourceRoles.packaged();

  @Test
  void noSourceIsBothCalibrationAndValidation() {
    Map<SourceKey, Set<EvidenceRow.Role>> roles = new HashMap<>();
    for (EvidenceRow row : Evidence.packaged().all()) {
      for (SourceKey source : row.sources()) {
        roles.computeIfAbsent(source, s -> new HashSet<>()).add(row.role());
      }
    }
    roles.forEach((source, found) -> assertEquals(1, found.size(), source.key()));
  }

  @Test
  void everySourceOfAFindingHasOneRoleWithItsReasonAndNoOtherHas() {
    Set<SourceKey> used = new HashSet<>();
    Evidence.packaged().all().forEach(row -> used.addAll(row.sources()));
    Set<SourceKey> known = new HashSet<>();
    for (SourceRole role : ROLES.all()) {
      assertTrue(known.add(role.source()), role.source().key());
      assertFalse(role.reason().isBlank(), role.source().key());
    }
    assertEquals(used, known);
  }

  /** Sources named in the code as the footing of a constant. */
  @Test
  void whatAConstantRestsOnDoesNotValidate() {
    for (String key :
        new String[] {
          "fais-2009",
          "fais-2010",
          "gonzaga-2019",
          "emir-2018",
          "farah-2019",
          "coolant-ports",
          "leucite-in-process",
          "single-use-diamonds-2000",
          "uab-thesis",
          "kim-2019"
        }) {
      assertEquals(
          EvidenceRow.Role.CALIBRATION, ROLES.of(new SourceKey(key)).orElseThrow().role(), key);
    }
  }

  @Test
  void nothingFromMemoryValidates() {
    for (EvidenceRow row : Evidence.packaged().all()) {
      if (row.basis() == Basis.FROM_MEMORY) {
        assertEquals(EvidenceRow.Role.CONTEXT, row.role(), row.id());
      }
    }
  }

  @Test
  void everyFindingIsComputedOrSaysWhyNot() {
    EvidenceCases cases = EvidenceCases.packaged();
    for (EvidenceRow row : Evidence.packaged().all()) {
      boolean computed = !cases.of(row).isEmpty();
      assertEquals(!computed, cases.notComputed().containsKey(row.id()), row.id());
      if (row.role() == EvidenceRow.Role.CONTEXT) {
        assertFalse(computed, row.id() + " is context and compares with nothing");
      }
    }
  }

  @Test
  void aConditionIsToldOrSaysThatItIsAssumed() {
    for (EvidenceCase one : EvidenceCases.packaged().all()) {
      for (Condition condition : one.first().ordered()) {
        assertTrue(condition.low() <= condition.typical(), one.first().id());
        assertTrue(condition.typical() <= condition.high(), one.first().id());
        assertTrue(condition.told() || !condition.note().isBlank(), one.first().id());
      }
    }
  }
}
