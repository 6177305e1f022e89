package kerfwright.practice.day;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import org.junit.jupiter.api.Test;

class SmallDaysTest {
  private static final int DAYS = 60;
  private static final SearchLimits LIMITS = new SearchLimits(120, 1, 7);

  @Test
  void theSolverFindsAndProvesWhatTryingEveryPlanFinds() {
    assumeTrue(NativeSolver.available());
    for (int seed = 0; seed < DAYS; seed++) {
      equalsEveryPlan(seed, new CpSatDayPlanner());
    }
  }

  @Test
  void thePlainJavaPlannerFindsAndProvesWhatTryingEveryPlanFinds() {
    for (int seed = 0; seed < DAYS; seed++) {
      equalsEveryPlan(seed, new BeamDayPlanner());
    }
  }

  private static void equalsEveryPlan(long seed, DayPlanner planner) {
    DayProblem problem = RandomDay.tiny(seed);
    DayPlan plan = planner.plan(problem, LIMITS);
    int[] values = plan.goals().stream().mapToInt(GoalResult::value).toArray();
    assertArrayEquals(EveryPlan.best(problem), values, "seed " + seed + " " + problem);
    assertTrue(plan.proven(), "seed " + seed + " " + plan.goals());
  }

  /** The rest of a day in which one case ends late: both planners, unlike in method, must agree. */
  @Test
  void bothPlannersAgreeOnTheRestOfADayWithFixedFacts() {
    assumeTrue(NativeSolver.available());
    int withFacts = 0;
    for (int seed = 0; seed < DAYS; seed++) {
      DayProblem day = RandomDay.tiny(seed);
      DayPlan plan = new BeamDayPlanner().plan(day, LIMITS);
      DayProblem late = DayReplannerTest.lateAt(day, plan, 90, 20);
      DayPlan walked = new BeamDayPlanner().plan(late, LIMITS);
      DayPlan solved = new CpSatDayPlanner().plan(late, LIMITS);
      assertTrue(walked.proven() && solved.proven(), "seed " + seed);
      for (Goal g : Goal.values()) {
        assertEquals(walked.value(g), solved.value(g), "seed " + seed + " " + g);
      }
      withFacts += late.facts().trays().isEmpty() ? 0 : 1;
    }
    assertTrue(withFacts > DAYS / 2, "most days must have begun");
  }

  @Test
  void aCutShortWalkClaimsNoProof() {
    int unproven = 0;
    for (int seed = 0; seed < DAYS; seed++) {
      DayProblem problem = RandomDay.tiny(seed);
      DayPlan plan = new BeamDayPlanner(1).plan(problem, LIMITS);
      int[] best = EveryPlan.best(problem);
      for (int g = 0; g < best.length; g++) {
        GoalResult result = plan.goals().get(g);
        assertTrue(!result.proven() || result.value() == best[g], "seed " + seed + " " + result);
        assertTrue(
            g > 0 || result.bound() <= best[g], "seed " + seed + " bound above optimum " + result);
      }
      unproven += plan.proven() ? 0 : 1;
    }
    assertTrue(unproven > 0, "with one state kept, most days must stay unproven");
  }
}
