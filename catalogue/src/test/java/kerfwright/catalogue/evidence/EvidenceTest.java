package kerfwright.catalogue.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class EvidenceTest {
  private static final Evidence EVIDENCE = Evidence.packaged();

  @Test
  void theRowsThatSpeakAgainstCommonPracticeAreThere() {
    double diamond = typical("DC032");
    double carbide = typical("DC033");
    assertTrue(diamond > carbide, "published: diamond outran carbide on nickel-chromium");
    assertEquals("sam-ni-cr", EVIDENCE.get("DC032").sources().get(0).key());
    assertTrue(typical("P01") < typical("P02"), "published: carbide cooler in composite");
  }

  @Test
  void everyRowSaysOneSentence() {
    for (EvidenceRow row : EVIDENCE.all()) {
      assertTrue(row.sentence().endsWith("."), row.id());
      assertTrue(row.sentence().length() <= 200, row.id());
      assertTrue(!row.sources().isEmpty(), row.id());
    }
  }

  @Test
  void whatRulesCiteIsFound() {
    for (String id : List.of("DC017", "DC021", "DC026", "DC040", "DC071", "R01", "V1a", "H06")) {
      assertTrue(EVIDENCE.find(id).isPresent(), id);
    }
    assertTrue(EVIDENCE.find("DC999").isEmpty());
  }

  /** Gonzaga 2019: 33.38 to 39.55 s is +18.5 %. Fais 2009: autoclave to control 0.786. */
  @Test
  void publishedRatiosFollowFromTheRows() {
    assertEquals(0.185, typical("DC061") / typical("DC060") - 1, 5e-4);
    assertEquals(0.786, typical("DC068") / typical("DC066"), 5e-4);
    assertEquals(0.105, 1 - typical("DC039") / 322200, 5e-4);
  }

  private static double typical(String id) {
    return Objects.requireNonNull(EVIDENCE.get(id).numbers().typical());
  }
}
