package kerfwright.app.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Locale;
import java.util.regex.Pattern;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.CutPlan;
import kerfwright.quantity.FlowRate;
import org.junit.jupiter.api.Test;

/** Of a pulp under dry cutting a plan tells three words and why, and no figure. */
class DryPulpTest {
  private static final Pattern KELVIN = Pattern.compile("[0-9][\\u00A0 ]K\\b");

  private static CutPlan with(double mlPerMin) {
    CutPlan plan = APlan.throughACrown();
    return new CutPlan(
        plan.cutCase().with(FlowRate.ofMillilitresPerMinute(mlPerMin)),
        plan.seed(),
        plan.samples(),
        plan.steps(),
        plan.cues(),
        plan.unfilled(),
        plan.access(),
        plan.pulp(),
        null,
        plan.times(),
        plan.branches(),
        plan.runnersUp(),
        java.util.List.of(),
        plan.cautions());
  }

  @Test
  void dryItTellsWordsAndWhyInBothLanguages() {
    for (Language language : Language.values()) {
      Say say = Say.in(language);
      String dry = Figures.pulpWall(say, with(0));
      assertFalse(KELVIN.matcher(dry).find(), dry);
      assertTrue(dry.contains(say.at("plan.pulp-in-words")), dry);
      String wet = Figures.pulpWall(say, with(50));
      assertTrue(KELVIN.matcher(wet).find(), wet);
      String text = PlanText.of(say, with(0));
      int from =
          text.toLowerCase(Locale.ROOT).indexOf(dry.substring(0, 10).toLowerCase(Locale.ROOT));
      assertTrue(from > 0, text);
      assertFalse(KELVIN.matcher(text.substring(from)).find(), text.substring(from));
    }
  }

  @Test
  void theAnswerGivesNoFigureEither() throws Exception {
    JsonNode dry = new ObjectMapper().readTree(PlanJson.text(with(0))).get("pulp");
    assertTrue(dry.get("peakRiseK").isNull());
    assertTrue(dry.get("secondsAboveLimit").isNull());
    assertTrue(dry.get("cem43Min").isNull());
    assertTrue(dry.get("curve").isNull());
    assertEquals(with(0).pulp().band().id(), dry.get("band").asText());
    assertFalse(dry.get("inWords").asText().isBlank());
    JsonNode wet = new ObjectMapper().readTree(PlanJson.text(with(50))).get("pulp");
    assertTrue(wet.get("inWords").isNull());
    assertTrue(wet.get("peakRiseK").get("typical").isNumber());
  }
}
