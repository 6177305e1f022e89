package kerfwright.practice.daylist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.DayProgress;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.Need;
import kerfwright.schedule.Referee;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.Stock;
import kerfwright.schedule.search.DayPlanner;
import org.junit.jupiter.api.Test;

/** What was really started stands, and the rest of the plan follows it. */
class DayLoadedTest {
  private static final InstrumentRef FIRST = new InstrumentRef("round", 0);

  /** One piece, wanted at 0 and at 120 min; 20 min of cleaning, 45 min a load, every 15 min. */
  private static PlannedDay aDayOfOnePiece() {
    List<Appointment> appointments = new ArrayList<>();
    for (int start : List.of(0, 120)) {
      appointments.add(
          Appointment.of(
              "A" + start, start, start + 30, "1", List.of(new Need("round", 0, List.of()))));
    }
    Day day =
        new Day(
            LocalTime.of(8, 0),
            540,
            20,
            45,
            15,
            1,
            12,
            List.of(new Stock("round", 10, List.of(0))),
            appointments,
            FixedFacts.NONE);
    DayPlan plan =
        DayPlanner.forThisMachine().plan(day, SearchLimits.ofSeconds(2), DayProgress.NONE);
    assertEquals(List.of(), plan.shortages());
    assertEquals(1, plan.loads().size());
    return new PlannedDay(day, Map.of("round", List.of("D01")), plan, List.of());
  }

  private static PlannedDay loaded(SteriliserLoad... real) {
    PlannedDay after = DayLoaded.of(aDayOfOnePiece(), List.of(real));
    Referee.Verdict verdict = Referee.judge(after.problem(), after.plan());
    assertEquals(List.of(), verdict.errors());
    return after;
  }

  @Test
  void aLoadStartedLaterThanPlannedTakesThePlaceOfThePlannedOne() {
    SteriliserLoad real = new SteriliserLoad(67, List.of(FIRST));
    PlannedDay after = loaded(real);
    assertEquals(List.of(real), after.plan().loads(), "and no second one");
    assertEquals(List.of(), after.plan().shortages());
    assertEquals(List.of(real), after.problem().facts().loads());
  }

  @Test
  void aLoadThatComesTooLateLeavesTheTrayShortAndSaysSo() {
    PlannedDay after = loaded(new SteriliserLoad(90, List.of(FIRST)));
    assertEquals(1, after.plan().shortages().size());
  }

  @Test
  void aPieceThatCannotBeInALoadYetIsPlannedOnWithoutIt() {
    // used until 30, clean enough for a load at 50
    PlannedDay after = loaded(new SteriliserLoad(35, List.of(FIRST)));
    assertTrue(after.problem().facts().loads().get(0).instruments().isEmpty());
  }

  @Test
  void aLoadWithNothingOfTheDayTakesUpTheSteriliser() {
    // until 95 nothing else can run, and what starts then is clean at 140
    PlannedDay after = loaded(new SteriliserLoad(50, List.of()));
    assertEquals(1, after.plan().shortages().size());
  }

  @Test
  void aFailedLoadIsNoFactAnyMore() {
    PlannedDay before = loaded(new SteriliserLoad(67, List.of(FIRST)));
    PlannedDay after = DayLoaded.of(before, List.of());
    assertFalse(after.problem().facts().loads().stream().findAny().isPresent());
    assertEquals(List.of(), Referee.judge(after.problem(), after.plan()).errors());
  }
}
