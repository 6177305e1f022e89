package kerfwright.schedule.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.Goal;
import kerfwright.schedule.GoalResult;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.Referee;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.Shortage;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.Stock;
import kerfwright.schedule.TrayPlace;
import org.junit.jupiter.api.Test;

class RefereeTest {
  /** Two appointments share the only instrument; it can be washed in between. */
  private static final Day DAY =
      new Day(
          LocalTime.of(8, 0),
          300,
          20,
          45,
          15,
          1,
          2,
          List.of(new Stock("round", 5, List.of(3))),
          List.of(
              new Appointment("A", 0, 30, List.of("round")),
              new Appointment("B", 120, 150, List.of("round"))),
          FixedFacts.NONE);

  private static DayPlan plan(List<TrayPlace> trays, List<SteriliserLoad> loads) {
    List<Shortage> missing = new ArrayList<>();
    for (Appointment a : DAY.appointments()) {
      if (trays.stream().noneMatch(t -> t.appointment().equals(a.id()))) {
        missing.add(new Shortage(a.id(), "round"));
      }
    }
    return new DayPlan(trays, loads, missing, List.of(), "by hand");
  }

  private static final List<TrayPlace> BOTH =
      List.of(TrayPlace.of("A", "round", 0), TrayPlace.of("B", "round", 0));

  private static SteriliserLoad loadAt(int minute) {
    return new SteriliserLoad(minute, List.of(new InstrumentRef("round", 0)));
  }

  @Test
  void aPlanThatReprocessesInBetweenIsValid() {
    Referee.Verdict v = Referee.judge(DAY, plan(BOTH, List.of(loadAt(60))));
    assertEquals(List.of(), v.errors());
    assertEquals(0, v.shortages());
    assertEquals(1, v.loads());
  }

  @Test
  void theLoadMayNotStartBeforeCleaningIsDoneNorEndAfterTheNextUse() {
    assertTrue(Referee.judge(DAY, plan(BOTH, List.of(loadAt(75)))).valid());
    assertFalse(Referee.judge(DAY, plan(BOTH, List.of(loadAt(45)))).valid());
    assertFalse(Referee.judge(DAY, plan(BOTH, List.of(loadAt(90)))).valid());
    assertFalse(Referee.judge(DAY, plan(BOTH, List.of())).valid());
  }

  @Test
  void loadsKeepToTheGridTheCapacityAndTheSterilisers() {
    assertFalse(Referee.judge(DAY, plan(BOTH, List.of(loadAt(61)))).valid());
    assertFalse(
        Referee.judge(DAY, plan(BOTH, List.of(loadAt(60), new SteriliserLoad(75, List.of()))))
            .valid());
    InstrumentRef ref = new InstrumentRef("round", 0);
    assertFalse(
        Referee.judge(DAY, plan(BOTH, List.of(new SteriliserLoad(60, List.of(ref, ref, ref)))))
            .valid());
  }

  @Test
  void noInstrumentIsUsedBeyondItsLife() {
    Day worn =
        new Day(
            DAY.start(),
            300,
            20,
            45,
            15,
            1,
            2,
            List.of(new Stock("round", 5, List.of(4))),
            DAY.appointments(),
            FixedFacts.NONE);
    assertFalse(Referee.judge(worn, plan(BOTH, List.of(loadAt(60)))).valid());
  }

  @Test
  void aPlanMayNotClaimOtherValuesThanItHas() {
    DayPlan honest = plan(BOTH, List.of(loadAt(60)));
    DayPlan boasting =
        new DayPlan(
            honest.trays(),
            honest.loads(),
            honest.shortages(),
            List.of(new GoalResult(Goal.LOADS, 0, 0, true, 0)),
            "by hand");
    assertFalse(Referee.judge(DAY, boasting).valid());
  }

  @Test
  void everyPlanOfRandomDaysIsValidAndItsFirstPlanToo() {
    DayPlanner planner = DayPlanner.forThisMachine();
    for (int seed = 0; seed < 12; seed++) {
      Day day = RandomDay.practice(seed, 8 + seed);
      List<DayPlan> seen = new ArrayList<>();
      seen.add(planner.plan(day, SearchLimits.ofSeconds(0.4), seen::add));
      for (DayPlan plan : seen) {
        Referee.Verdict v = Referee.judge(day, plan);
        assertEquals(List.of(), v.errors(), "seed " + seed);
        assertEquals(plan.value(Goal.SHORTAGES), v.shortages());
        assertEquals(plan.value(Goal.LOADS), v.loads());
        assertEquals(plan.value(Goal.WEAR), v.wear());
      }
    }
  }
}
