package kerfwright.app.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import kerfwright.app.Golden;
import kerfwright.app.json.JsonText;
import org.junit.jupiter.api.Test;

class PlanJsonTest {
  @Test
  void aPlanIsWrittenAsPlan1() throws IOException {
    Golden.check("plan.json", PlanJson.text(APlan.throughACrown()));
  }

  @Test
  void everyFieldOfTheContractIsThere() throws IOException {
    JsonNode json = new ObjectMapper().readTree(PlanJson.text(APlan.throughACrown()));
    assertEquals("plan/1", json.get("contract").asText());
    has(json, "case procedure tooth seed steps pulp totalTimeS runnersUp findings");
    has(
        json.get("steps").get(0),
        "order layer material purpose instrument handpiece setSpeedRpm speedUnderLoadRpm"
            + " rimSpeedMPerS loadN coolantMlPerMin stroke cutSeconds pauseSeconds fromMm toMm"
            + " removalMm3PerMin powerW raUm timeS reasons cautions");
    has(json.get("steps").get(0).get("instrument"), "id kind iso shape grit blades diameterMm");
    has(json.get("steps").get(0).get("reasons").get(0), "code text supports sources");
    has(json.get("pulp"), "peakRiseK secondsAboveLimit limitK cem43Min remainingDentineMm");
    has(json.get("runnersUp").get(0), "step instrument why costRatio");
    has(json.get("findings").get(0), "severity code text sources");
    has(json.get("totalTimeS"), "low typical high");
  }

  private static void has(JsonNode json, String fields) {
    for (String field : fields.split(" ")) {
      assertTrue(json.has(field), field + " in " + json);
    }
  }

  @Test
  void aRefusalHasNoStepsAndNoPulp() throws IOException {
    JsonNode json = new ObjectMapper().readTree(PlanJson.text(APlan.refused()));
    assertTrue(json.get("steps").isEmpty());
    assertTrue(json.get("pulp").isNull());
    assertEquals("refuse", json.get("findings").get(0).get("severity").asText());
  }

  @Test
  void figuresHaveSixDigitsAndNoExponent() {
    List<String> written = new ArrayList<>();
    for (double value : new double[] {0, -0.0, 1.0 / 3, 1e-9, 123456789, 0.1 + 0.2, 274321}) {
      written.add(JsonText.of(JsonText.number(value)).strip());
    }
    assertEquals(
        List.of("0", "0", "0.333333", "0.000000001", "123457000", "0.3", "274321"), written);
  }
}
