package kerfwright.planner.claim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import kerfwright.catalogue.claim.Claim;
import kerfwright.catalogue.claim.Claims;
import org.junit.jupiter.api.Test;

class ClaimModelsTest {
  @Test
  void theModelsSpeakToEveryClaimAndToNoOther() {
    Set<String> claims =
        Claims.packaged().all().stream().map(Claim::id).collect(Collectors.toSet());
    assertTrue(claims.size() >= 12, claims.size() + "");
    assertEquals(claims, ClaimModels.ids());
    assertThrows(IllegalArgumentException.class, () -> ClaimModels.of("no-such-claim"));
  }

  /**
   * Where the models contradict the trade stands here by name; it changes with the models alone.
   */
  @Test
  void theModelsContradictTheseClaimsAndNoOthers() {
    Set<String> contradicted =
        ClaimModels.ids().stream()
            .filter(id -> !ClaimModels.of(id).agrees())
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of("faster-turns-cut-faster"), contradicted);
  }

  @Test
  void howFarTestsCarryAClaimFollowsFromItsFindings() {
    assertEquals(Claim.Standing.TESTS_AGAINST, standing("ductile-wants-blades"));
    assertEquals(Claim.Standing.TESTS_AGREE, standing("zirconia-takes-longer"));
    assertEquals(Claim.Standing.TESTS_DIFFER, standing("steam-dulls"));
    assertEquals(Claim.Standing.PRACTICE_ONLY, standing("polymer-stops-at-sound-dentine"));
  }

  private static Claim.Standing standing(String id) {
    return Claims.packaged().find(id).orElseThrow().standing();
  }

  @Test
  void everyFigureIsComputed() {
    for (String id : ClaimModels.ids()) {
      ModelSays says = ClaimModels.of(id);
      assertTrue(!says.words().values().isEmpty(), id);
      assertEquals("claim.model-" + id, says.words().key());
    }
  }
}
