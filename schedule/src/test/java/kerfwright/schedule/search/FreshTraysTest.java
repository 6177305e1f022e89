package kerfwright.schedule.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.Goal;
import kerfwright.schedule.Need;
import kerfwright.schedule.Referee;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.Stock;
import org.junit.jupiter.api.Test;

class FreshTraysTest {
  private static final SearchLimits LIMITS = new SearchLimits(60, 1, 3);

  private static Day twoAtOnce(double askedOfA, double askedOfB) {
    return new Day(
        LocalTime.of(8, 0),
        300,
        20,
        45,
        15,
        1,
        4,
        List.of(new Stock("round", 10, List.of(8, 1))),
        List.of(
            Appointment.of("A", 0, 30, "1", List.of(new Need("round", askedOfA, List.of()))),
            Appointment.of("B", 0, 30, "2", List.of(new Need("round", askedOfB, List.of())))),
        FixedFacts.NONE);
  }

  private static int indexOf(DayPlan plan, String appointment) {
    return plan.trays().stream()
        .filter(t -> t.appointment().equals(appointment))
        .findFirst()
        .orElseThrow()
        .instrument()
        .index();
  }

  @Test
  void theFreshOneLiesWhereMostIsAskedWhicheverThatIs() {
    Day hardA = twoAtOnce(0.5, 0.05);
    DayPlan a = FreshTrays.laid(hardA, DayPlanner.forThisMachine().plan(hardA, LIMITS));
    assertEquals(1, indexOf(a, "A"));
    Day hardB = twoAtOnce(0.05, 0.5);
    DayPlan b = FreshTrays.laid(hardB, DayPlanner.forThisMachine().plan(hardB, LIMITS));
    assertEquals(1, indexOf(b, "B"));
    assertEquals(List.of(), FreshTrays.worn(hardB, b));
  }

  @Test
  void whatAsksMoreThanIsLeftIsTold() {
    Day day = twoAtOnce(0.5, 0.5);
    DayPlan plan = FreshTrays.laid(day, DayPlanner.forThisMachine().plan(day, LIMITS));
    List<FreshTrays.Worn> worn = FreshTrays.worn(day, plan);
    assertEquals(1, worn.size());
    assertEquals(0.2, worn.get(0).left(), 1e-12);
    assertEquals(0, worn.get(0).place().instrument().index());
  }

  @Test
  void changedRolesKeepEveryGoalAndEveryRuleAndNeverFitWorse() {
    int changed = 0;
    for (int seed = 0; seed < 10; seed++) {
      Day day = asking(RandomDay.practice(seed, 14), seed);
      DayPlan plan = DayPlanner.forThisMachine().plan(day, SearchLimits.ofSeconds(0.3));
      DayPlan laid = FreshTrays.laid(day, plan);
      assertEquals(List.of(), Referee.judge(day, laid).errors(), "seed " + seed);
      for (Goal g : Goal.values()) {
        assertTrue(laid.value(g) <= plan.value(g), "seed " + seed + " " + g);
      }
      assertEquals(plan.shortages(), laid.shortages());
      assertTrue(beyond(day, laid) <= beyond(day, plan) + 1e-9, "seed " + seed);
      changed += laid.trays().equals(plan.trays()) ? 0 : 1;
    }
    assertTrue(changed > 4, "some roles must change, or this tests nothing");
  }

  private static double beyond(Day day, DayPlan plan) {
    return FreshTrays.worn(day, plan).stream().mapToDouble(w -> w.asked() - w.left()).sum();
  }

  private static Day asking(Day day, long seed) {
    SplittableRandom r = new SplittableRandom(seed);
    List<Appointment> all = new ArrayList<>();
    for (Appointment a : day.appointments()) {
      List<Need> needs =
          a.needs().stream().map(t -> new Need(t, r.nextDouble() * 0.6, List.of())).toList();
      all.add(Appointment.of(a.id(), a.startMin(), a.endMin(), a.chair(), needs));
    }
    return day.withAppointments(all);
  }
}
