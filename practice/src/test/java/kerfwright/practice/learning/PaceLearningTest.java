package kerfwright.practice.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.casework.OwnPace.Factor;
import kerfwright.planner.casework.OwnPace.Where;
import org.junit.jupiter.api.Test;

class PaceLearningTest {
  private static final Where ENAMEL = new Where("enamel", InstrumentKind.DIAMOND);
  private static final Where DENTINE = new Where("dentine", InstrumentKind.CARBIDE);
  private static final Where ZIRCONIA = new Where("zirconia-3y", InstrumentKind.DIAMOND);
  private static final List<Where> PLACES = List.of(ENAMEL, DENTINE, ZIRCONIA);

  private static LoggedCut cut(Where where, double ratio, double lives) {
    return new LoggedCut(where, 40, 40 * ratio, lives);
  }

  private static List<LoggedCut> cuts(
      Random chance, Where where, int count, double logFactor, double wear, double sd) {
    List<LoggedCut> cuts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double lives = wear == 0 ? 0 : chance.nextDouble() * Math.log(3);
      double log = logFactor + (wear - 1) * lives * (wear == 0 ? 0 : 1);
      cuts.add(cut(where, Math.exp(log + sd * chance.nextGaussian()), lives));
    }
    return cuts;
  }

  @Test
  void withoutALogTheLiteratureStands() {
    assertSame(OwnPace.NONE, PaceLearning.from(List.of()));
    assertEquals(Factor.ONE, OwnPace.NONE.time("enamel", InstrumentKind.DIAMOND));
  }

  @Test
  void oneCutMovesLittleAndManyMoveAll() {
    double one =
        PaceLearning.from(List.of(cut(ENAMEL, 0.5, 0)))
            .time("enamel", InstrumentKind.DIAMOND)
            .typical();
    assertTrue(one > 0.65 && one < 1, "" + one);
    List<LoggedCut> many = new ArrayList<>();
    for (int i = 0; i < 2000; i++) {
      many.add(cut(ENAMEL, 0.5, 0));
    }
    Factor all = PaceLearning.from(many).time("enamel", InstrumentKind.DIAMOND);
    assertEquals(0.5, all.typical(), 0.005);
    assertTrue(all.high() - all.low() < 0.02);
  }

  @Test
  void withoutWearItIsTheTwoLevelShrinkage() {
    // worked out level by level: groups of equal cuts have no scatter but the prior's
    Map<Where, double[]> groups =
        Map.of(ENAMEL, new double[] {6, 0.7}, DENTINE, new double[] {3, 1.2});
    List<LoggedCut> cuts = new ArrayList<>();
    groups.forEach(
        (where, one) -> {
          for (int i = 0; i < one[0]; i++) {
            cuts.add(cut(where, one[1], 0));
          }
        });
    double s2 =
        PaceLearning.SCATTER_COUNT
            * PaceLearning.SCATTER_SD
            * PaceLearning.SCATTER_SD
            / (PaceLearning.SCATTER_COUNT + 9 - 2);
    double t2 = PaceLearning.GROUP_SD * PaceLearning.GROUP_SD;
    double precision = 1 / (PaceLearning.PRACTICE_SD * PaceLearning.PRACTICE_SD);
    double sum = 0;
    for (double[] one : groups.values()) {
      double weight = 1 / (t2 + s2 / one[0]);
      precision += weight;
      sum += weight * Math.log(one[1]);
    }
    double practice = sum / precision;
    OwnPace pace = PaceLearning.from(cuts);
    assertEquals(Math.exp(practice), pace.overall().typical(), 1e-9);
    groups.forEach(
        (where, one) -> {
          double share = t2 / (t2 + s2 / one[0]);
          double mean = share * Math.log(one[1]) + (1 - share) * practice;
          double variance =
              share * s2 / one[0] + (1 - share) * (1 - share) / precision(groups, t2, s2);
          Factor factor = pace.time(where.materialId(), where.kind());
          assertEquals(Math.exp(mean), factor.typical(), 1e-9);
          assertEquals(Math.exp(mean + 1.6449 * Math.sqrt(variance)), factor.high(), 1e-9);
        });
  }

  private static double precision(Map<Where, double[]> groups, double t2, double s2) {
    return 1 / (PaceLearning.PRACTICE_SD * PaceLearning.PRACTICE_SD)
        + groups.values().stream().mapToDouble(one -> 1 / (t2 + s2 / one[0])).sum();
  }

  @Test
  void ninetyPercentIntervalsHoldTheTruthInNinetyOfAHundredPractices() {
    Random chance = new Random(17);
    int held = 0;
    int asked = 0;
    for (int practice = 0; practice < 1500; practice++) {
      double m = PaceLearning.PRACTICE_SD * chance.nextGaussian();
      List<LoggedCut> cuts = new ArrayList<>();
      double[] truth = new double[PLACES.size()];
      for (int g = 0; g < PLACES.size(); g++) {
        truth[g] = m + PaceLearning.GROUP_SD * chance.nextGaussian();
        int count = 1 + chance.nextInt(12);
        cuts.addAll(cuts(chance, PLACES.get(g), count, truth[g], 0, PaceLearning.SCATTER_SD));
      }
      OwnPace pace = PaceLearning.from(cuts);
      for (int g = 0; g < PLACES.size(); g++) {
        Factor factor = pace.time(PLACES.get(g).materialId(), PLACES.get(g).kind());
        asked++;
        held += Math.log(factor.low()) <= truth[g] && truth[g] <= Math.log(factor.high()) ? 1 : 0;
      }
    }
    // three standard errors of 4500 draws that hang together in threes
    assertEquals(0.90, held / (double) asked, 0.025);
  }

  @Test
  void knownFactorsOfPaceAndWearComeOutOfASimulatedLog() {
    int seeds = 200;
    int timeHeld = 0;
    int wearHeld = 0;
    double times = 0;
    double wears = 0;
    for (int seed = 0; seed < seeds; seed++) {
      Random chance = new Random(seed);
      List<LoggedCut> cuts = new ArrayList<>();
      cuts.addAll(cuts(chance, ENAMEL, 60, Math.log(0.8), 1.5, 0.3));
      cuts.addAll(cuts(chance, ZIRCONIA, 60, Math.log(0.9), 1.5, 0.3));
      cuts.addAll(cuts(chance, DENTINE, 60, Math.log(0.85), 1, 0.3));
      OwnPace pace = PaceLearning.from(cuts);
      Factor time = pace.time("enamel", InstrumentKind.DIAMOND);
      Factor wear = pace.wear(InstrumentKind.DIAMOND);
      timeHeld += time.low() <= 0.8 && 0.8 <= time.high() ? 1 : 0;
      wearHeld += wear.low() <= 1.5 && 1.5 <= wear.high() ? 1 : 0;
      times += time.typical() / seeds;
      wears += wear.typical() / seeds;
    }
    // shrinkage costs a little on the way to fixed factors: at least 85 of 100 nominal 90
    assertTrue(timeHeld >= 0.85 * seeds, timeHeld + " of " + seeds);
    assertTrue(wearHeld >= 0.85 * seeds, wearHeld + " of " + seeds);
    assertEquals(0.8, times, 0.04);
    assertEquals(1.5, wears, 0.1);
  }

  @Test
  void aClockLeftRunningTeachesNothing() {
    List<LoggedCut> cuts = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      cuts.add(cut(ENAMEL, 0.9, 0));
    }
    OwnPace before = PaceLearning.from(cuts);
    cuts.add(cut(ENAMEL, 90, 0));
    assertEquals(before, PaceLearning.from(cuts));
    assertEquals(20, before.logged());
  }

  @Test
  void noFactorPassesItsBounds() {
    List<LoggedCut> cuts = new ArrayList<>();
    for (int i = 0; i < 5000; i++) {
      cuts.add(cut(ENAMEL, i % 2 == 0 ? 4.9 : 4.8, 1));
    }
    OwnPace pace = PaceLearning.from(cuts);
    assertTrue(pace.time("enamel", InstrumentKind.DIAMOND).high() <= Factor.BOUND);
    assertTrue(pace.wear(InstrumentKind.DIAMOND).high() <= Factor.BOUND);
    assertEquals(1 / Factor.BOUND, new Factor(0, 0.1, 9).low(), 1e-12);
    assertEquals(1 / Factor.BOUND, new Factor(0, 0.1, 9).typical(), 1e-12);
  }

  @Test
  void aMaterialNotLoggedYetFollowsThePracticeWithAWiderInterval() {
    List<LoggedCut> cuts = cuts(new Random(1), ENAMEL, 40, Math.log(0.8), 0, 0.2);
    OwnPace pace = PaceLearning.from(cuts);
    Factor known = pace.time("enamel", InstrumentKind.DIAMOND);
    Factor unseen = pace.time("amalgam", InstrumentKind.CARBIDE);
    assertTrue(unseen.typical() < 1 && unseen.typical() > known.typical());
    assertTrue(unseen.high() / unseen.low() > known.high() / known.low());
  }
}
