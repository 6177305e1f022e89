package kerfwright.app.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseFile;
import kerfwright.app.input.BadInput;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.planner.PlanOptions;
import kerfwright.planner.plan.Branch;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.practice.daylist.NeedsOfPlan;
import kerfwright.practice.daylist.TypeName;
import kerfwright.schedule.Need;
import org.junit.jupiter.api.Test;

/** A crown of unknown material, as text, as JSON and on the tray. */
class BranchesTest {
  private static CutPlan plan() throws BadInput {
    Wiring wiring = Wiring.production();
    return wiring
        .plans()
        .plan(
            new CaseFile(wiring.cases()).read(Path.of("../examples/access-unknown-crown.yaml")),
            wiring.demoDrawer().read(),
            new PlanOptions(2, 1));
  }

  @Test
  void theTrayHoldsWhatAnyBranchTakes() throws BadInput {
    CutPlan plan = plan();
    Map<String, Double> most = new TreeMap<>();
    for (Branch branch : plan.branches()) {
      life(branch.plan()).forEach((type, life) -> most.merge(type, life, Math::max));
    }
    life(plan).forEach((type, life) -> most.merge(type, life, Double::sum));
    List<Need> needs = NeedsOfPlan.of(plan);
    Map<String, Double> laid = new TreeMap<>();
    needs.forEach(n -> assertTrue(laid.put(n.type(), n.lifeAsked()) == null, n.type()));
    assertEquals(most.keySet(), laid.keySet());
    most.forEach((type, life) -> assertEquals(life, laid.get(type), 1e-12, type));
    for (Need need : needs) {
      need.substitutes().forEach(s -> assertTrue(!laid.containsKey(s.type()), s.type()));
    }
    for (Branch branch : plan.branches()) {
      assertTrue(needs.size() > NeedsOfPlan.of(branch.plan()).size(), branch.id());
    }
  }

  private static Map<String, Double> life(CutPlan plan) {
    Map<String, Double> life = new TreeMap<>();
    for (PlannedStep step : plan.steps()) {
      life.merge(
          TypeName.of(step.instrument().properties()), step.lifeUsed().typical(), Double::sum);
    }
    return life;
  }

  @Test
  void everyBranchIsWrittenWhole() throws BadInput, IOException {
    CutPlan plan = plan();
    JsonNode json = new ObjectMapper().readTree(PlanJson.text(plan));
    assertEquals(6, json.get("branches").size());
    for (JsonNode branch : json.get("branches")) {
      assertEquals("plan/1", branch.get("plan").get("contract").asText());
      assertTrue(branch.get("plan").get("steps").size() > 3, branch.get("id").asText());
      assertEquals(branch.get("restoration"), branch.get("plan").get("restoration"));
    }
    for (Language language : Language.values()) {
      Say say = Say.in(language);
      String text = PlanText.of(say, plan).replaceAll("\\s+", " ");
      for (Branch branch : plan.branches()) {
        assertEquals(3, text.split(Pattern.quote(say.of(branch.tells())), -1).length);
        PlannedStep last = branch.plan().steps().get(branch.plan().steps().size() - 1);
        assertTrue(text.contains(last.instrument().id() + ": "), branch.id());
      }
    }
  }
}
