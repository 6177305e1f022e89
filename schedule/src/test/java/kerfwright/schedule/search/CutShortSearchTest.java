package kerfwright.schedule.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.DayProgress;
import kerfwright.schedule.Goal;
import kerfwright.schedule.Referee;
import kerfwright.schedule.SearchLimits;
import org.junit.jupiter.api.Test;

/** Searches that are stopped, cut short, or run again. */
class CutShortSearchTest {
  private static final Day DAY = RandomDay.practice(3, 16);

  @Test
  void oneThreadAndOneSeedGiveOnePlan() {
    Day day = RandomDay.practice(3, 10);
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
    assertEquals(List.of(), Referee.judge(DAY, plan).errors());
    assertTrue(!plan.result(Goal.WEAR).proven());
  }
}
