package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.operation.Work;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.rule.Vetoes;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.planner.sequence.Change;
import kerfwright.planner.sequence.Found;
import kerfwright.planner.sequence.Prices;
import kerfwright.planner.sequence.ShortestSequence;
import org.junit.jupiter.api.Test;

/** How operations, instruments and operating points are put together. */
class SequenceTest {
  private static final int MOST = 7;

  private static CutCase crown() {
    return ACase.of(Procedure.CROWN_PREPARATION)
        .layer("enamel", 1.2)
        .layer("dentine", 4)
        .outline(Outline.Shape.PATCH, 10, 9)
        .build();
  }

  /** The first operations of a crown, each with a few of its candidates. */
  private static List<Found> some(int operations) {
    CutCase c = crown();
    CandidateSearch search =
        new CandidateSearch(c, DemoDrawer.full().instruments(), Vetoes.all(), OwnPace.NONE);
    return Operations.laid(c).works().stream()
        .map(search::on)
        .filter(found -> found.candidates().size() > 2)
        .limit(operations)
        .map(
            found ->
                new Found(
                    found.work(),
                    found.candidates().subList(0, Math.min(MOST, found.candidates().size())),
                    Map.of()))
        .toList();
  }

  private static double cost(List<Candidate> path) {
    double cost = path.get(0).costS();
    for (int i = 1; i < path.size(); i++) {
      cost += Change.seconds(path.get(i - 1), path.get(i)) + path.get(i).costS();
    }
    return cost;
  }

  /** Every way through, one by one. */
  private static List<List<Candidate>> every(
      List<Found> found, BiPredicate<Candidate, Candidate> allows) {
    List<List<Candidate>> all = List.of(List.of());
    for (Found one : found) {
      List<List<Candidate>> longer = new ArrayList<>();
      for (List<Candidate> path : all) {
        for (Candidate c : one.candidates()) {
          if (path.isEmpty() || allows.test(path.get(path.size() - 1), c)) {
            List<Candidate> next = new ArrayList<>(path);
            next.add(c);
            longer.add(next);
          }
        }
      }
      all = longer;
    }
    return all;
  }

  @Test
  void theWayTakenIsTheCheapestOfAllThatTheOrderAllows() {
    List<Found> found = some(4);
    List<BiPredicate<Candidate, Candidate>> rules =
        List.of(
            (a, b) -> true,
            (a, b) -> !a.id().equals(b.id()),
            (a, b) -> a.handpiece().id().equals(b.handpiece().id()),
            (a, b) -> b.setRpm() <= a.setRpm());
    for (BiPredicate<Candidate, Candidate> allows : rules) {
      List<List<Candidate>> all = every(found, allows);
      double least = all.stream().mapToDouble(SequenceTest::cost).min().orElseThrow();
      List<Candidate> taken = ShortestSequence.of(found, allows);
      assertEquals(found.size(), taken.size());
      assertEquals(least, cost(taken), 1e-9 * least);
      assertTrue(all.contains(taken), "each may follow the one before");
      for (int i = 0; i < taken.size(); i++) {
        assertTrue(found.get(i).candidates().contains(taken.get(i)), "each does its operation");
      }
    }
  }

  @Test
  void oneThatNothingMayFollowEndsTheWay() {
    List<Found> found = some(3);
    Work last = found.get(2).work();
    List<Candidate> taken = ShortestSequence.of(found, (a, b) -> !b.work().equals(last));
    assertEquals(2, taken.size());
    List<Candidate> alone = ShortestSequence.of(found, (a, b) -> false);
    double least =
        found.get(0).candidates().stream().mapToDouble(Candidate::costS).min().orElseThrow();
    assertEquals(1, alone.size());
    assertEquals(least, alone.get(0).costS());
  }

  @Test
  void ofEqualOnesTheFirstByNameCounts() {
    Found found = some(1).get(0);
    Candidate one = found.candidates().get(0);
    CutCase c = crown();
    DrawerInstrument d = one.instrument().drawer();
    List<DrawerInstrument> twins =
        Stream.of("Z9", "A1", "M5")
            .map(id -> new DrawerInstrument(id, d.properties(), 0, 1, d.state()))
            .toList();
    Found equal = new CandidateSearch(c, twins, Vetoes.all(), OwnPace.NONE).on(found.work());
    assertEquals("A1", ShortestSequence.of(List.of(equal), (a, b) -> true).get(0).id());
    List<Candidate> reversed = new ArrayList<>(equal.candidates());
    Collections.reverse(reversed);
    Found turned = new Found(found.work(), reversed, Map.of());
    List<Candidate> path = ShortestSequence.of(List.of(turned, turned), (a, b) -> true);
    assertEquals(List.of("A1", "A1"), path.stream().map(Candidate::id).toList());
    assertEquals(path.get(0).handpiece().id(), path.get(1).handpiece().id());
  }

  @Test
  void aChangeCostsMoreWithTheHandpiece() {
    List<Candidate> all = some(2).stream().flatMap(found -> found.candidates().stream()).toList();
    boolean sameHandpiece = false;
    for (Candidate a : all) {
      for (Candidate b : all) {
        double seconds = Change.seconds(a, b);
        if (!a.handpiece().id().equals(b.handpiece().id())) {
          assertEquals(30, seconds);
        } else if (a.id().equals(b.id())) {
          assertEquals(0, seconds);
        } else {
          sameHandpiece = true;
          assertEquals(20, seconds);
        }
      }
    }
    assertTrue(sameHandpiece);
  }

  @Test
  void wearIsPricedByTheLifeItTakes() {
    assertEquals(6, Prices.ofWear(InstrumentKind.DIAMOND, 0.1), 1e-12);
    assertEquals(18, Prices.ofWear(InstrumentKind.SINTERED_DIAMOND, 0.1), 1e-12);
    assertEquals(20, Prices.ofWear(InstrumentKind.CARBIDE, 1.0 / 3), 1e-12, "a third is borne");
    assertEquals(324, Prices.ofWear(InstrumentKind.CARBIDE, 0.4), 1e-12, "more spoils the edge");
    assertEquals(24, Prices.ofWear(InstrumentKind.DIAMOND, 0.4), 1e-12, "grit has no edge");
  }

  @Test
  void everyCandidateKeepsWithinMakerWindowAndHandpiece() {
    CutCase c = crown();
    CandidateSearch search =
        new CandidateSearch(c, DemoDrawer.full().instruments(), Vetoes.all(), OwnPace.NONE);
    int turbines = 0;
    int geared = 0;
    for (Work work : Operations.laid(c).works()) {
      var operating = work.operation().operating();
      for (Candidate one : search.on(work).candidates()) {
        var is = one.instrument().properties();
        double most = is.maximumSpeed().rpm();
        double free = one.handpiece().drive().freeSpeed().rpm();
        assertTrue(one.setRpm() <= most + 1e-6 && one.setRpm() <= free + 1e-6, one.id());
        assertTrue(
            one.setRpm() <= one.instrument().shaft().whirlLimit().rpm() + 1e-6, "below whirl");
        assertEquals(one.handpiece().shank(), is.shank());
        if (operating.mostN() > 0) {
          assertTrue(one.loadN() <= operating.mostN() + 1e-12, one.id());
        }
        if (operating.mostRpm() > 0) {
          assertTrue(one.underLoadRpm() <= operating.mostRpm() * 1.000001, one.id());
          assertTrue(one.underLoadRpm() >= operating.leastRpm() * 0.999999, one.id());
        }
        if (CandidateSearch.oneSpeed(one)) {
          turbines++;
          assertEquals(free, one.setRpm(), 1e-6, "a turbine runs at full pedal");
          assertTrue(most >= free, "and turns only what bears it");
        } else {
          geared++;
        }
        assertEquals(
            Math.min(Math.min(most, free), one.instrument().shaft().whirlLimit().rpm()),
            CandidateSearch.highestRpm(one),
            1e-6);
        assertTrue(one.cutS() >= one.leastS() * (1 - 1e-12));
        assertTrue(one.overlap() == 1 || one.overlap() == 1.2);
      }
    }
    assertTrue(turbines > 0 && geared > 0);
  }

  @Test
  void oneInstrumentIsTriedAtOnePointWithEveryLimit() {
    CutCase c = crown();
    Work work =
        Operations.laid(c).works().stream()
            .filter(w -> w.operation().id().equals("lingual-wall"))
            .findFirst()
            .orElseThrow();
    DrawerInstrument coarse =
        AnInstrument.any("D", InstrumentKind.DIAMOND, GritClass.COARSE, null)
            .size(1.2, 8, 21)
            .build();
    DrawerInstrument slow =
        AnInstrument.any("S", InstrumentKind.DIAMOND, GritClass.COARSE, null)
            .size(1.2, 8, 21)
            .shank(ShankType.RA)
            .maximum(100_000.0)
            .build();
    DrawerInstrument used =
        AnInstrument.any("U", InstrumentKind.DIAMOND, GritClass.COARSE, null)
            .size(1.2, 8, 21)
            .state(DrawerInstrument.State.USED)
            .build();
    CandidateSearch search =
        new CandidateSearch(c, List.of(coarse, slow, used), Vetoes.all(), OwnPace.NONE);
    var fast = c.handpieces().stream().filter(h -> h.id().equals("electric-1to5")).findFirst();
    var handpiece = fast.orElseThrow();
    var fine = search.at(coarse, handpiece, work, 160_000, 0.8, Stroke.AGAINST_ROTATION);
    Candidate found = fine.candidate();
    assertEquals(0.8, found.loadN());
    assertEquals(160_000, found.setRpm());
    assertEquals("D", found.id());
    assertEquals(
        "too-fast",
        search
            .at(coarse, handpiece, work, 460_000, 0.8, Stroke.AGAINST_ROTATION)
            .exclusion()
            .code());
    assertEquals(
        "no-handpiece",
        search.at(slow, handpiece, work, 90_000, 0.8, Stroke.AGAINST_ROTATION).exclusion().code());
    assertEquals(
        "not-clean",
        search.at(used, handpiece, work, 90_000, 0.8, Stroke.AGAINST_ROTATION).exclusion().code());
    assertEquals(
        "too-slow-under-load",
        search
            .at(coarse, handpiece, work, 60_000, 0.8, Stroke.AGAINST_ROTATION)
            .exclusion()
            .code());
    assertEquals(Set.of("U"), search.excludedAlways().keySet());
    Candidate cheapest =
        search.cheapest(coarse, handpiece, work, 160_000, Stroke.AGAINST_ROTATION).candidate();
    double[] loads = IntStream.range(0, 4).mapToDouble(i -> 1 - i / 3.0 * 0.7).toArray();
    for (double load : loads) {
      Candidate other =
          search.at(coarse, handpiece, work, 160_000, load, Stroke.AGAINST_ROTATION).candidate();
      assertFalse(other != null && other.literatureCostS() < cheapest.literatureCostS() - 1e-9);
    }
    Candidate again = search.again(found, 120_000, 0.5);
    assertEquals(120_000, again.setRpm());
    assertEquals(0.5, again.loadN());
    assertEquals(found.id(), again.id());
  }

  @Test
  void aPullLimitsTheLoadOfAStrokeWithRotation() {
    CutCase c = crown();
    Work work =
        Operations.laid(c).works().stream()
            .filter(w -> w.operation().id().equals("reduce-occlusal"))
            .findFirst()
            .orElseThrow();
    CandidateSearch search =
        new CandidateSearch(c, DemoDrawer.full().instruments(), List.of(), OwnPace.NONE);
    Candidate against =
        search.on(work).candidates().stream()
            .filter(one -> one.stroke() == Stroke.AGAINST_ROTATION && one.loadN() >= 0.99)
            .findFirst()
            .orElseThrow();
    Candidate with =
        search
            .at(
                against.instrument().drawer(),
                against.handpiece(),
                work,
                against.setRpm(),
                1,
                Stroke.WITH_ROTATION)
            .candidate();
    double ratio = against.instrument().part().greatestForceRatio();
    assertEquals(Math.min(1, 0.25 / ratio), with.loadN(), 1e-12);
    assertTrue(with.loadN() < against.loadN());
  }
}
