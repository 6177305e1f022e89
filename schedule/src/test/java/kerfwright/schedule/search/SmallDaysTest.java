package kerfwright.schedule.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.Goal;
import kerfwright.schedule.GoalResult;
import kerfwright.schedule.SearchLimits;
import org.junit.jupiter.api.Test;

/** Small days against brute force, which shares no code with the planner. */
class SmallDaysTest {
  private static final int DAYS = 60;
  private static final SearchLimits LIMITS = new SearchLimits(120, 1, 7);

  @Test
  void theSolverFindsAndProvesWhatTryingEveryPlanFinds() {
    assumeTrue(NativeSolver.available());
    for (int seed = 0; seed < DAYS; seed++) {
      provenBest(RandomDay.tiny(seed), "seed " + seed);
    }
  }

  /** The rest of a day in which one case ends late, what has happened held. */
  @Test
  void theRestOfADayWithFixedFactsIsAsGoodAsTryingEveryPlanFindsToo() {
    assumeTrue(NativeSolver.available());
    int withFacts = 0;
    for (int seed = 0; seed < DAYS; seed++) {
      Day day = RandomDay.tiny(seed);
      DayPlan plan = new DayPlanner(false).plan(day, LIMITS);
      Day late = ReplannerTest.lateAt(day, plan, 90, 20);
      provenBest(late, "seed " + seed);
      withFacts += late.facts().trays().isEmpty() ? 0 : 1;
    }
    assertTrue(withFacts > DAYS / 2, "most days must have begun");
  }

  private static void provenBest(Day day, String what) {
    DayPlan plan = new DayPlanner(true).plan(day, LIMITS);
    int[] values = plan.goals().stream().mapToInt(GoalResult::value).toArray();
    assertArrayEquals(EveryPlan.best(day), values, what + " " + day);
    assertTrue(plan.proven(), what + " " + plan.goals());
  }

  @Test
  void withoutTheSolverAPlanComesAndClaimsNoMoreThanIsSo() {
    int unproven = 0;
    for (int seed = 0; seed < DAYS; seed++) {
      Day day = RandomDay.tiny(seed);
      DayPlan plan = new DayPlanner(false).plan(day, LIMITS);
      assertEquals("first plan", plan.solver());
      int[] best = EveryPlan.best(day);
      for (Goal g : Goal.values()) {
        GoalResult result = plan.result(g);
        int least = best[g.ordinal()];
        assertTrue(!result.proven() || result.value() == least, "seed " + seed + " " + result);
        assertTrue(result.value() >= least || g != Goal.SHORTAGES, "seed " + seed);
        unproven += result.proven() ? 0 : 1;
      }
    }
    assertTrue(unproven > DAYS, "a greedy plan proves little");
  }
}
