package kerfwright.app.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kerfwright.app.input.BadInput;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.Goal;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.Referee;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.Shortage;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.TrayPlace;
import kerfwright.schedule.search.DayPlanner;
import org.junit.jupiter.api.Test;

/**
 * The committed benchmark day of 20 cases (seed 1). Its optimum, 17 shortages, 8 loads, unevenness
 * 98, was proven by another solver on another model: HiGHS through SciPy 1.17 on the plain 0-1
 * model with one variable for each case and instrument. The verdicts were written by the referee
 * script of the benchmark, which shares nothing with ours.
 */
class BenchmarkInstanceTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "day");

  private static Day day() throws BadInput {
    return new DayFile(PLAIN).read(FOLDER.resolve("instance-20-1.yaml"));
  }

  private static final NeedsOfCase PLAIN =
      caseFile -> {
        throw new IllegalStateException("no case files here");
      };

  private static DayPlan solution(Day day, JsonNode json) {
    List<TrayPlace> trays = new ArrayList<>();
    Set<String> filled = new HashSet<>();
    for (JsonNode a : json.get("assign")) {
      String id = "A" + a.get(0).asInt();
      String type = "t" + a.get(1).asInt();
      trays.add(TrayPlace.of(id, type, a.get(2).asInt()));
      filled.add(id + type);
    }
    List<Shortage> shortages = new ArrayList<>();
    for (Appointment a : day.appointments()) {
      for (String type : a.needs()) {
        if (!filled.contains(a.id() + type)) {
          shortages.add(new Shortage(a.id(), type));
        }
      }
    }
    List<SteriliserLoad> loads = new ArrayList<>();
    for (JsonNode l : json.get("loads")) {
      List<InstrumentRef> inside = new ArrayList<>();
      l.get("units")
          .forEach(u -> inside.add(new InstrumentRef("t" + u.get(0).asInt(), u.get(1).asInt())));
      loads.add(new SteriliserLoad(l.get("start").asInt(), inside));
    }
    return new DayPlan(trays, loads, shortages, List.of(), "given");
  }

  @Test
  void ourRefereeAgreesWithTheOtherRefereeOnGoodAndBadPlans() throws BadInput, IOException {
    Day day = day();
    int valid = 0;
    for (JsonNode given :
        new ObjectMapper().readTree(FOLDER.resolve("verdicts-20-1.json").toFile())) {
      Referee.Verdict v = Referee.judge(day, solution(day, given.get("solution")));
      String name = given.get("name").asText();
      assertEquals(given.get("valid").asBoolean(), v.valid(), name + " " + v.errors());
      assertEquals(given.get("shortages").asInt(), v.shortages(), name);
      assertEquals(given.get("loads").asInt(), v.loads(), name);
      assertEquals(given.get("imbalance").asInt(), v.wear(), name);
      valid += v.valid() ? 1 : 0;
    }
    assertEquals(2, valid);
  }

  @Test
  void theProvenOptimumIsFoundAndProvenAgain() throws BadInput {
    assumeTrue(DayPlanner.solverFault() == null);
    DayPlan plan = DayPlanner.forThisMachine().plan(day(), SearchLimits.ofSeconds(120));
    assertEquals(17, plan.value(Goal.SHORTAGES));
    assertEquals(8, plan.value(Goal.LOADS));
    assertEquals(98, plan.value(Goal.WEAR));
    assertTrue(plan.proven(), plan.goals().toString());
  }
}
