package kerfwright.app.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Set;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.evidence.Discrepancies;
import kerfwright.catalogue.evidence.Evidence;
import kerfwright.catalogue.evidence.EvidenceCases;
import kerfwright.catalogue.evidence.Family;
import kerfwright.planner.evidence.Compared;
import kerfwright.planner.evidence.Comparing;
import kerfwright.planner.evidence.Conditioned;
import kerfwright.planner.evidence.Coverage;
import kerfwright.planner.evidence.EvidenceReport;
import kerfwright.planner.evidence.Summary;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class EvidenceOutputTest {
  private static final Set<String> SOME = Set.of("DC032", "DC032-rank", "V3b", "V12-water");
  private static final Summary SUMMARY =
      new Summary(
          2,
          1,
          2,
          1,
          List.of(new Summary.Study("a", 3, 1, 0.4), new Summary.Study("b", 1, 1, 1)),
          87,
          60,
          50,
          4,
          3.5,
          1,
          2.5,
          1,
          0.04,
          0.01);
  private static final EvidenceReport REPORT = some();

  private static Coverage coverage(
      @Nullable Family family, int studies, int figures, int covered, double meanScore) {
    return new Coverage(family, studies, figures, covered, 40, 7, meanScore, figures);
  }

  private static EvidenceReport some() {
    Comparing comparing =
        new Comparing(
            EvidenceReport.SAMPLES,
            EvidenceReport.HEAT_SAMPLES,
            EvidenceReport.SEED,
            Discrepancies.packaged());
    List<Compared> compared =
        EvidenceCases.packaged().all().stream()
            .filter(c -> SOME.contains(c.id()))
            .map(comparing::compare)
            .toList();
    return new EvidenceReport(
        compared,
        EvidenceCases.packaged().notComputed(),
        Discrepancies.packaged(),
        List.of(coverage(null, 6, 20, 17, 8), coverage(Family.BLADE_RATE, 2, 3, 3, 8)),
        List.of(new Conditioned(Family.WEAR, 2, 4, 3, 5)),
        SUMMARY);
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
    String text = EvidenceText.of(Say.in(Language.ENGLISH), REPORT);
    assertTrue(text.contains("published 20 (6 to 34) mg/min"));
    assertTrue(text.contains("assumed load 0.5 to 1.5 N"));
    assertTrue(text.contains("Rows no constant rests on: 2 of 4 met, in 2 studies."));
    assertTrue(text.contains("Each study counted once: 67 %."), "a third and one whole");
    assertTrue(text.contains("[sam-ni-cr] "));
  }

  @Test
  void coverageIsJudgedByWhatItCanBear() {
    assertEquals(
        "covers as it should; better than the mean of the other studies",
        EvidenceWords.judged(Say.in(Language.ENGLISH), coverage(null, 6, 20, 17, 8)));
    assertTrue(
        EvidenceWords.judged(Say.in(Language.ENGLISH), coverage(null, 6, 20, 15, 8))
            .startsWith("fails: covers too"));
    assertTrue(
        EvidenceWords.judged(Say.in(Language.ENGLISH), coverage(null, 6, 20, 20, 8))
            .startsWith("fails: too wide"));
    assertTrue(
        EvidenceWords.judged(Say.in(Language.ENGLISH), coverage(null, 6, 20, 17, 6))
            .contains("no better than"));
    assertTrue(
        EvidenceWords.judged(Say.in(Language.ENGLISH), coverage(null, 4, 20, 17, 8))
            .startsWith("not testable"));
    String words = EvidenceWords.covered(Say.in(Language.ENGLISH), coverage(null, 6, 20, 17, 8));
    assertTrue(words.startsWith("covered 17 of 20 left-out figures, 6 studies (85 %"), words);
  }

  @Test
  void theJsonTellsCoverageAndWidthOfEveryFamily() throws Exception {
    JsonNode coverage =
        new ObjectMapper().readTree(EvidenceJson.text(REPORT)).get("summary").get("coverage");
    assertEquals("all", coverage.get(0).get("family").asText());
    assertEquals(0.85, coverage.get(0).get("coverage90").asDouble());
    assertTrue(coverage.get(0).get("holds").asBoolean());
    assertEquals("blade-rate", coverage.get(1).get("family").asText());
    assertEquals(2, coverage.get(1).get("studies").asInt());
    assertEquals(3, coverage.get(1).get("figures").asInt());
    assertEquals(40, coverage.get(1).get("medianWidth").asDouble());
    assertFalse(coverage.get(1).get("holds").asBoolean(), "two studies test nothing");
  }

  @Test
  void figuresAreWrittenWithoutExponents() {
    assertEquals("0.000123", EvidenceWords.figure(Say.in(Language.ENGLISH), 0.000123456));
    assertEquals("200000", EvidenceWords.figure(Say.in(Language.ENGLISH), 200_000));
    assertEquals("0", EvidenceWords.figure(Say.in(Language.ENGLISH), 0));
    assertEquals("-", EvidenceWords.figure(Say.in(Language.ENGLISH), Double.POSITIVE_INFINITY));
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
