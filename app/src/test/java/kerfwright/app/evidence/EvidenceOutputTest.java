package kerfwright.app.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Set;
import kerfwright.catalogue.evidence.Evidence;
import kerfwright.catalogue.evidence.EvidenceCases;
import kerfwright.planner.evidence.Compared;
import kerfwright.planner.evidence.Comparing;
import kerfwright.planner.evidence.EvidenceReport;
import kerfwright.planner.evidence.Summary;
import org.junit.jupiter.api.Test;

class EvidenceOutputTest {
  private static final Set<String> SOME = Set.of("DC032", "DC032-rank", "V3b", "V12-water");
  private static final EvidenceReport REPORT = some();

  private static EvidenceReport some() {
    Comparing comparing =
        new Comparing(EvidenceReport.SAMPLES, EvidenceReport.HEAT_SAMPLES, EvidenceReport.SEED);
    List<Compared> compared =
        EvidenceCases.packaged().all().stream()
            .filter(c -> SOME.contains(c.id()))
            .map(comparing::compare)
            .toList();
    return new EvidenceReport(
        compared, EvidenceCases.packaged().notComputed(), new Summary(2, 1, 2, 1, 3.5, 1, 2.5, 1));
  }

  @Test
  void theJsonHoldsEveryFindingWithWhatWasComputed() throws Exception {
    JsonNode json = new ObjectMapper().readTree(EvidenceJson.text(REPORT));
    assertEquals("evidence/1", json.get("contract").asText());
    assertEquals(Evidence.packaged().all().size(), json.get("rows").size());
    JsonNode row = find(json, "DC032");
    assertEquals("validation", row.get("role").asText());
    assertEquals(20, row.get("published").get("typical").asDouble());
    assertEquals(2, row.get("cases").size());
    JsonNode one = row.get("cases").get(0);
    assertEquals("mg/min", one.get("computedUnit").asText());
    assertTrue(
        one.get("computed").get("low").asDouble() < one.get("computed").get("high").asDouble());
    assertFalse(one.get("setUps").get(0).get("conditions").isEmpty());
    assertFalse(find(json, "H01").get("notComputed").asText().isBlank());
    assertEquals(0.5, json.get("summary").get("share").asDouble());
  }

  @Test
  void aMissSaysWhyAndAHitDoesNot() throws Exception {
    JsonNode json = new ObjectMapper().readTree(EvidenceJson.text(REPORT));
    for (JsonNode row : json.get("rows")) {
      for (JsonNode one : row.get("cases")) {
        assertEquals(
            !one.get("met").asBoolean(),
            !one.get("explanation").asText().isBlank(),
            row.toString());
      }
    }
  }

  @Test
  void theTextTellsFindingConditionsAndFigure() {
    String text = EvidenceText.of(REPORT);
    assertTrue(text.contains("published 20 (6 to 34) mg/min"));
    assertTrue(text.contains("assumed load 0.5 to 1.5 N"));
    assertTrue(text.contains("Validation cases met: 2 of 4 (50 %; wanted 80 %)."));
    assertTrue(text.contains("order of magnitude only"));
    assertTrue(text.contains("[sam-ni-cr] "));
  }

  @Test
  void whatIsReachedIsSaidToBeReached() {
    List<String> words = EvidenceWords.closing(new Summary(10, 9, 10, 9, 3.9, 5, 5.9, 5));
    assertEquals("The models reach what is wanted of them.", words.get(3));
    List<String> wide = EvidenceWords.closing(new Summary(10, 10, 10, 10, 4.1, 5, 5.9, 5));
    assertTrue(wide.get(3).contains("order of magnitude only"), "wide bands do not count");
  }

  @Test
  void figuresAreWrittenWithoutExponents() {
    assertEquals("0.000123", EvidenceWords.figure(0.000123456));
    assertEquals("200000", EvidenceWords.figure(200_000));
    assertEquals("0", EvidenceWords.figure(0));
    assertEquals("-", EvidenceWords.figure(Double.POSITIVE_INFINITY));
  }

  private static JsonNode find(JsonNode json, String id) {
    for (JsonNode row : json.get("rows")) {
      if (row.get("id").asText().equals(id)) {
        return row;
      }
    }
    throw new AssertionError(id);
  }
}
