package kerfwright.schedule.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.DayProgress;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.Goal;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.Need;
import kerfwright.schedule.Referee;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.Stock;
import kerfwright.schedule.Substitute;
import kerfwright.schedule.TrayPlace;
import kerfwright.schedule.search.DayPlanner;
import kerfwright.schedule.search.EveryPlan;
import kerfwright.schedule.search.RandomDay;
import org.junit.jupiter.api.Test;

/** What a remedy claims is confirmed by others: the referee and brute force. */
class RemedySearchTest {
  private static final SearchLimits LIMITS = new SearchLimits(120, 1, 7);

  private static List<RemedyResult> remedies(Day day, DayPlan plan) {
    return new RemedySearch(DayPlanner.forThisMachine())
        .search(day, plan, LIMITS, DayProgress.NONE, r -> {});
  }

  private static DayPlan planned(Day day) {
    return DayPlanner.forThisMachine().plan(day, LIMITS);
  }

  /** A tiny day in which every need may be served by the other type too. */
  private static Day withSubstitutes(Day day) {
    List<String> types = day.stock().stream().map(Stock::type).toList();
    List<Appointment> all = new ArrayList<>();
    for (Appointment a : day.appointments()) {
      List<Need> needs = new ArrayList<>();
      for (String type : a.needs()) {
        List<Substitute> others =
            types.stream().filter(t -> !t.equals(type)).map(t -> new Substitute(t, 1.4)).toList();
        needs.add(new Need(type, 0.1, others));
      }
      all.add(Appointment.of(a.id(), a.startMin(), a.endMin(), a.chair(), needs));
    }
    return day.withAppointments(all);
  }

  @Test
  void everyClaimOnSmallDaysIsWhatTryingEveryPlanFinds() {
    assumeTrue(DayPlanner.solverFault() == null);
    int claims = 0;
    int tried = 0;
    for (int seed = 0; seed < 40; seed++) {
      Day day = withSubstitutes(RandomDay.tiny(seed));
      DayPlan plan = planned(day);
      for (RemedyResult r : remedies(day, plan)) {
        String what = "seed " + seed + " " + r.remedy();
        confirm(day, plan, r, what);
        // brute force is quick only where neither stock nor sterilisers grew
        if (r.day().stock().equals(day.stock()) && r.day().sterilisers() == day.sterilisers()) {
          int[] best = EveryPlan.best(r.day());
          assertEquals(best[0], r.shortagesAfter(), what);
          assertEquals(best[1], r.loadsAfter(), what);
          tried++;
        }
        claims++;
      }
    }
    assertTrue(claims > 60, "few remedies found: " + claims);
    assertTrue(tried > 15, "few remedies tried: " + tried);
  }

  private static void confirm(Day day, DayPlan plan, RemedyResult r, String what) {
    Day changed = r.remedy().applied(day).orElseThrow();
    assertEquals(changed, r.day(), what);
    assertEquals(List.of(), Referee.judge(changed, r.plan()).errors(), what);
    assertTrue(r.shortagesAfter() < plan.value(Goal.SHORTAGES), what);
    assertTrue(r.plan().result(Goal.SHORTAGES).proven(), what);
  }

  private static Day day(int capacity, List<Stock> stock, Appointment... appointments) {
    return new Day(
        LocalTime.of(8, 0),
        300,
        20,
        45,
        15,
        1,
        capacity,
        stock,
        List.of(appointments),
        FixedFacts.NONE);
  }

  private static Stock one(String type, Set<Integer> dirty) {
    return new Stock(type, 9, List.of(0), dirty);
  }

  /** One day for each kind that ends its shortage; the other planner plans the changed day too. */
  @Test
  void eachKindOfRemedyIsFoundWhereItHelps() {
    List<String> round = List.of("round");
    Appointment early = new Appointment("A", 0, 30, round);
    Appointment soon = new Appointment("B", 40, 70, round);
    Appointment other = new Appointment("C", 150, 180, List.of("flame"));
    List<String> both = List.of("round", "flame");
    List<Stock> two = List.of(one("round", Set.of()), one("flame", Set.of()));
    Need replaceable = new Need("round", 0.1, List.of(new Substitute("flame", 1.3)));
    ends(
        day(4, two, early, Appointment.of("B", 40, 70, null, List.of(replaceable))),
        new Remedy.UseSubstitute("B", "round", "flame", 1.3));
    ends(day(4, two, early, soon, other), new Remedy.SwapAppointments("B", "C"));
    ends(day(4, two, early, new Appointment("B", 95, 120, round)), new Remedy.LoadBetween(50));
    ends(
        day(4, List.of(one("round", Set.of(0))), early),
        new Remedy.LoadBeforeOpening(List.of(new InstrumentRef("round", 0))));
    ends(
        day(1, two, new Appointment("A", 0, 30, both), new Appointment("B", 110, 140, both)),
        new Remedy.LoadBeside());
    ends(day(4, two, early, soon), new Remedy.BuyMore("round", 1));
  }

  private static void ends(Day day, Remedy expected) {
    DayPlan plan = planned(day);
    assertEquals(1, plan.value(Goal.SHORTAGES), expected.toString());
    RemedyResult found =
        remedies(day, plan).stream()
            .filter(r -> r.remedy().equals(expected))
            .findFirst()
            .orElseThrow(() -> new AssertionError("not found: " + expected));
    confirm(day, plan, found, expected.toString());
    assertEquals(0, found.shortagesAfter());
    assertEquals(0, EveryPlan.best(found.day())[0]);
  }

  @Test
  void remediesStandByCost() {
    Day day = withSubstitutes(RandomDay.tiny(4));
    List<RemedyResult> all = remedies(day, planned(day));
    List<RemedyResult> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparingDouble(RemedyResult::costMin));
    assertEquals(sorted, all);
  }

  @Test
  void aDayWithoutAShortageNeedsNoRemedy() {
    Day day = oneRound(List.of(0, 0));
    assertEquals(List.of(), remedies(day, planned(day)));
  }

  @Test
  void aSecondInstrumentEndsTheShortageOfADayTooQuickForTheSteriliser() {
    Day day = oneRound(List.of(0));
    DayPlan plan = planned(day);
    assertEquals(1, plan.value(Goal.SHORTAGES));
    List<Remedy> told = remedies(day, plan).stream().map(RemedyResult::remedy).toList();
    assertTrue(told.contains(new Remedy.BuyMore("round", 1)), told.toString());
    assertTrue(told.stream().noneMatch(r -> r instanceof Remedy.LoadBeside), told.toString());
  }

  @Test
  void whatIsLaidOrBegunIsNotSwapped() {
    Day day = oneRound(List.of(0));
    Day begun =
        day.withFacts(new FixedFacts(10, List.of(), List.of(TrayPlace.of("A", "round", 0))));
    assertTrue(new Remedy.SwapAppointments("A", "B").applied(begun).isEmpty());
  }

  @Test
  void neighboursOfOneChairChangeOrderAndKeepTheirPause() {
    Day day = oneRound(List.of(0));
    Day swapped = new Remedy.SwapAppointments("A", "B").applied(day).orElseThrow();
    assertEquals(0, swapped.appointment("B").orElseThrow().startMin());
    assertEquals(40, swapped.appointment("A").orElseThrow().startMin());
    assertEquals(70, swapped.appointment("A").orElseThrow().endMin());
  }

  private static Day oneRound(List<Integer> uses) {
    return new Day(
        LocalTime.of(8, 0),
        300,
        20,
        45,
        15,
        1,
        4,
        List.of(new Stock("round", 5, uses)),
        List.of(
            new Appointment("A", 0, 30, List.of("round"), "1"),
            new Appointment("B", 40, 70, List.of("round"), "1")),
        FixedFacts.NONE);
  }
}
