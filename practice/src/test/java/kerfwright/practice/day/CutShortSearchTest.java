package kerfwright.practice.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Searches that are stopped, cut short, or run again. */
class CutShortSearchTest {
  private static final DayProblem DAY = RandomDay.practice(3, 16);

  @Test
  void plainJavaNeverClaimsMoreThanItSaw() {
    DayPlan plan = new BeamDayPlanner(20).plan(DAY, SearchLimits.ofSeconds(5));
    DayPlan whole = DayPlanner.forThisMachine().plan(DAY, SearchLimits.ofSeconds(20));
    assertTrue(whole.result(Goal.SHORTAGES).proven(), "the day must be closed to compare with");
    assertTrue(plan.value(Goal.SHORTAGES) >= whole.value(Goal.SHORTAGES));
    assertTrue(plan.result(Goal.SHORTAGES).bound() <= whole.value(Goal.SHORTAGES));
    assertTrue(!plan.proven(), "a cut short walk proves nothing");
  }

  @Test
  void oneThreadAndOneSeedGiveOnePlan() {
    DayProblem day = RandomDay.practice(3, 10);
    SearchLimits limits = new SearchLimits(120, 1, 5);
    DayPlan first = DayPlanner.forThisMachine().plan(day, limits);
    DayPlan second = DayPlanner.forThisMachine().plan(day, limits);
    assertEquals(first.trays(), second.trays());
    assertEquals(first.loads(), second.loads());
  }

  @Test
  void aStoppedSearchKeepsItsBestPlan() {
    List<DayPlan> seen = new ArrayList<>();
    DayProgress impatient =
        new DayProgress() {
          @Override
          public void better(DayPlan plan) {
            seen.add(plan);
          }

          @Override
          public boolean stopped() {
            return !seen.isEmpty();
          }
        };
    DayPlan plan = DayPlanner.forThisMachine().plan(DAY, SearchLimits.ofSeconds(60), impatient);
    assertEquals(List.of(), DayReferee.judge(DAY, plan).errors());
    assertTrue(!plan.result(Goal.WEAR).proven());
  }
}
