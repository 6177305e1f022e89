package kerfwright.practice.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a remedy claims is confirmed by others: the referee, brute force, the other planner. */
class RemedySearchTest {
  private static final SearchLimits LIMITS = new SearchLimits(120, 1, 7);

  private static List<RemedyResult> remedies(DayProblem day, DayPlan plan) {
    return new RemedySearch(DayPlanner.forThisMachine(), RemedyPrices.USUAL)
        .search(day, plan, LIMITS, DayProgress.NONE, r -> {});
  }

  private static DayPlan planned(DayProblem day) {
    return DayPlanner.forThisMachine().plan(day, LIMITS);
  }

  /** A tiny day in which every need may be served by the other type too. */
  private static DayProblem withSubstitutes(DayProblem day) {
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

  /** Found by the walk in plain Java, confirmed by brute force and by the solver. */
  @Test
  void everyClaimOnSmallDaysIsWhatOthersFind() {
    int claims = 0;
    for (int seed = 0; seed < 40; seed++) {
      DayProblem day = withSubstitutes(RandomDay.tiny(seed));
      DayPlan plan = new BeamDayPlanner().plan(day, LIMITS);
      RemedySearch search = new RemedySearch(new BeamDayPlanner(), RemedyPrices.USUAL);
      for (RemedyResult r : search.search(day, plan, LIMITS, DayProgress.NONE, any -> {})) {
        String what = "seed " + seed + " " + r.remedy();
        confirm(day, plan, r, what);
        if (claims++ % 4 == 0 && NativeSolver.available()) {
          DayPlan solved = new CpSatDayPlanner().plan(r.day(), LIMITS);
          assertEquals(solved.value(Goal.SHORTAGES), r.shortagesAfter(), what);
          assertEquals(solved.value(Goal.LOADS), r.loadsAfter(), what);
        }
        if (r.day().equals(day.withAppointments(r.day().appointments()))) {
          int[] best = EveryPlan.best(r.day());
          assertEquals(best[0], r.shortagesAfter(), what);
          assertEquals(best[1], r.loadsAfter(), what);
        }
      }
    }
    assertTrue(claims > 60, "few remedies found: " + claims);
  }

  private static void confirm(DayProblem day, DayPlan plan, RemedyResult r, String what) {
    DayProblem changed = r.remedy().applied(day).orElseThrow();
    assertEquals(changed, r.day(), what);
    assertEquals(List.of(), DayReferee.judge(changed, r.plan()).errors(), what);
    assertTrue(r.shortagesAfter() < plan.value(Goal.SHORTAGES), what);
    assertTrue(r.plan().result(Goal.SHORTAGES).proven(), what);
  }

  private static DayProblem day(int capacity, List<Stock> stock, Appointment... appointments) {
    return new DayProblem(
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

  private static void ends(DayProblem day, Remedy expected) {
    DayPlan plan = planned(day);
    assertEquals(1, plan.value(Goal.SHORTAGES), expected.toString());
    RemedyResult found =
        remedies(day, plan).stream()
            .filter(r -> r.remedy().equals(expected))
            .findFirst()
            .orElseThrow(() -> new AssertionError("not found: " + expected));
    confirm(day, plan, found, expected.toString());
    assertEquals(0, found.shortagesAfter());
    assertEquals(0, new BeamDayPlanner().plan(found.day(), LIMITS).value(Goal.SHORTAGES));
  }

  @Test
  void remediesStandByCost() {
    DayProblem day = withSubstitutes(RandomDay.tiny(4));
    List<RemedyResult> all = remedies(day, planned(day));
    List<RemedyResult> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparingDouble(RemedyResult::costMin));
    assertEquals(sorted, all);
  }

  @Test
  void aDayWithoutAShortageNeedsNoRemedy() {
    DayProblem day = oneRound(List.of(0, 0));
    assertEquals(List.of(), remedies(day, planned(day)));
  }

  @Test
  void aSecondInstrumentEndsTheShortageOfADayTooQuickForTheSteriliser() {
    DayProblem day = oneRound(List.of(0));
    DayPlan plan = planned(day);
    assertEquals(1, plan.value(Goal.SHORTAGES));
    List<Remedy> told = remedies(day, plan).stream().map(RemedyResult::remedy).toList();
    assertTrue(told.contains(new Remedy.BuyMore("round", 1)), told.toString());
    assertTrue(told.stream().noneMatch(r -> r instanceof Remedy.LoadBeside), told.toString());
  }

  @Test
  void whatIsLaidOrBegunIsNotSwapped() {
    DayProblem day = oneRound(List.of(0));
    DayProblem begun =
        day.withFacts(new FixedFacts(10, List.of(), List.of(TrayPlace.of("A", "round", 0))));
    assertTrue(new Remedy.SwapAppointments("A", "B").applied(begun).isEmpty());
  }

  @Test
  void neighboursOfOneChairChangeOrderAndKeepTheirPause() {
    DayProblem day = oneRound(List.of(0));
    DayProblem swapped = new Remedy.SwapAppointments("A", "B").applied(day).orElseThrow();
    assertEquals(0, swapped.appointment("B").orElseThrow().startMin());
    assertEquals(40, swapped.appointment("A").orElseThrow().startMin());
    assertEquals(70, swapped.appointment("A").orElseThrow().endMin());
  }

  private static DayProblem oneRound(List<Integer> uses) {
    return new DayProblem(
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
