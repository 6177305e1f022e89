package kerfwright.schedule.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.Goal;
import kerfwright.schedule.Referee;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.TrayPlace;
import org.junit.jupiter.api.Test;

class ReplannerTest {
  private static final SearchLimits LIMITS = SearchLimits.ofSeconds(3);

  @Test
  void aDayThatGoesAsPlannedKeepsEveryTray() {
    for (int seed = 0; seed < 6; seed++) {
      Day day = RandomDay.practice(seed, 14);
      DayPlan plan = DayPlanner.forThisMachine().plan(day, SearchLimits.ofSeconds(0.3));
      Day later = day.withFacts(Replanner.factsAt(day, plan, 240));
      Replanner.Replan again = Replanner.replan(later, plan, LIMITS);
      assertEquals(List.of(), again.changed(), "seed " + seed);
      assertEquals(plan.value(Goal.SHORTAGES), again.plan().value(Goal.SHORTAGES));
    }
  }

  @Test
  void aLateCaseIsPlannedRoundAndWhatHappenedStays() {
    int changedAtAll = 0;
    for (int seed = 0; seed < 12; seed++) {
      Day day = RandomDay.practice(seed, 16);
      DayPlan plan = DayPlanner.forThisMachine().plan(day, SearchLimits.ofSeconds(0.3));
      Day late = lateAt(day, plan, 200, 35);
      Replanner.Replan again = Replanner.replan(late, plan, LIMITS);
      assertEquals(List.of(), Referee.judge(late, again.plan()).errors(), "seed " + seed);
      assertTrue(again.plan().trays().containsAll(late.facts().trays()), "seed " + seed);
      for (TrayPlace t : late.facts().trays()) {
        assertTrue(!again.changed().contains(t.appointment()), "seed " + seed + " " + t);
      }
      changedAtAll += again.changed().size();
    }
    assertTrue(changedAtAll > 0, "some late case must touch a tray, or this tests nothing");
  }

  /** The appointment under way at this minute ends later; others stay. */
  static Day lateAt(Day day, DayPlan plan, int nowMin, int byMin) {
    List<Appointment> moved = new ArrayList<>(day.appointments());
    for (int i = 0; i < moved.size(); i++) {
      Appointment a = moved.get(i);
      if (a.startMin() < nowMin && nowMin < a.endMin()) {
        moved.set(i, a.movedTo(a.startMin(), Math.min(day.lengthMin(), a.endMin() + byMin)));
        break;
      }
    }
    return day.withAppointments(moved).withFacts(Replanner.factsAt(day, plan, nowMin));
  }
}
