package kerfwright.physics.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Function;
import java.util.function.Supplier;
import kerfwright.physics.material.Substance;
import kerfwright.physics.surface.Roughness;
import org.junit.jupiter.api.Test;

/** What holds for every tool, layer and operating point of the allowed space. */
class CuttingPropertyTest {
  private static final int CASES = 5000;
  private static final double ROUNDING = 1 - 1e-9;

  /** A tool of either kind with its layer and contact, waiting for an operating point. */
  private record Setting(Supplier<String> what, Function<OperatingPoint, CutResult> cut) {
    CutResult at(OperatingPoint point) {
      return cut.apply(point);
    }
  }

  private static Setting setting(RandomCuts draw, boolean bladed) {
    Substance work = draw.work();
    Engagement contact = draw.contact();
    if (bladed) {
      BladedTool tool = draw.bladed();
      return new Setting(
          () -> tool + " on " + work + " with " + contact,
          p -> BladedCutting.cut(tool, work, contact, p));
    }
    AbrasiveTool tool = draw.abrasive();
    return new Setting(
        () -> tool + " on " + work + " with " + contact,
        p -> AbrasiveCutting.cut(tool, work, contact, p));
  }

  private interface Property {
    void check(Setting setting, OperatingPoint point, RandomCuts draw);
  }

  private static void always(long seed, Property property) {
    RandomCuts draw = new RandomCuts(seed);
    for (int i = 0; i < CASES; i++) {
      property.check(setting(draw, i % 2 == 0), draw.point(), draw);
    }
  }

  @Test
  void everyResultIsFiniteNotNegativeAndSharesLieBetweenZeroAndOne() {
    always(
        61,
        (setting, point, draw) -> {
          CutResult cut = setting.at(point);
          Supplier<String> what = () -> setting.what().get() + " at " + point + " gives " + cut;
          for (double v :
              new double[] {
                cut.removalM3PerS(),
                cut.tangentialN(),
                cut.powerW(),
                cut.unitLoadN(),
                cut.chipThicknessM()
              }) {
            assertTrue(Double.isFinite(v) && v >= 0, what);
          }
          for (double share :
              new double[] {cut.brittleShare(), cut.cleanShare(), cut.chipShare()}) {
            assertTrue(share >= 0 && share <= 1, what);
          }
          assertTrue(cut.specificEnergyJPerM3() > 0 || cut.powerW() == 0, what);
        });
  }

  @Test
  void moreLoadNeverRemovesLess() {
    always(
        62,
        (setting, p, draw) -> {
          OperatingPoint more =
              new OperatingPoint(
                  p.loadN() * draw.factor(),
                  p.rimSpeedMPerS(),
                  p.coolantMlPerMin(),
                  p.sharpness(),
                  p.touchS());
          notLess(setting, p, more);
        });
  }

  @Test
  void moreWaterNeverRemovesLess() {
    always(
        63,
        (setting, p, draw) -> {
          OperatingPoint more =
              new OperatingPoint(
                  p.loadN(),
                  p.rimSpeedMPerS(),
                  p.coolantMlPerMin() + 20 * draw.factor(),
                  p.sharpness(),
                  p.touchS());
          notLess(setting, p, more);
        });
  }

  @Test
  void aSharperToolNeverRemovesLess() {
    always(
        64,
        (setting, p, draw) -> {
          OperatingPoint more =
              new OperatingPoint(
                  p.loadN(),
                  p.rimSpeedMPerS(),
                  p.coolantMlPerMin(),
                  Math.min(1, p.sharpness() * draw.factor()),
                  p.touchS());
          notLess(setting, p, more);
        });
  }

  private static void notLess(Setting setting, OperatingPoint from, OperatingPoint to) {
    double before = setting.at(from).removalM3PerS();
    double after = setting.at(to).removalM3PerS();
    assertTrue(
        after >= before * ROUNDING, () -> setting.what().get() + " from " + from + " to " + to);
  }

  @Test
  void powerIsProportionalToRimSpeedAtAGivenLoadAndRemovalRisesNoMoreThanThat() {
    always(
        65,
        (setting, p, draw) -> {
          double k = draw.factor();
          OperatingPoint faster =
              new OperatingPoint(
                  p.loadN(), p.rimSpeedMPerS() * k, p.coolantMlPerMin(), p.sharpness(), p.touchS());
          CutResult slow = setting.at(p);
          CutResult fast = setting.at(faster);
          double removal = k * slow.removalM3PerS();
          assertTrue(fast.removalM3PerS() <= removal / ROUNDING, setting.what());
          assertEquals(k * slow.powerW(), fast.powerW(), 1e-9 * k * slow.powerW());
          assertEquals(slow.unitLoadN(), fast.unitLoadN(), 1e-12 * slow.unitLoadN());
        });
  }

  @Test
  void theForceAlongTheRimIsTheForceRatioOfTheLoad() {
    always(
        66,
        (setting, p, draw) -> {
          CutResult cut = setting.at(p);
          assertTrue(cut.tangentialN() >= 0.2 * p.loadN() * ROUNDING, setting.what());
          assertTrue(cut.tangentialN() <= 0.6 * p.loadN() / ROUNDING, setting.what());
          assertEquals(cut.tangentialN() * p.rimSpeedMPerS(), cut.powerW(), 1e-9);
        });
  }

  @Test
  void coarserGrainsCarryMoreEachAndCrackMore() {
    RandomCuts draw = new RandomCuts(67);
    for (int i = 0; i < CASES; i++) {
      Substance work = draw.work();
      Engagement contact = draw.contact();
      OperatingPoint point = draw.point();
      AbrasiveTool fine = draw.abrasive();
      AbrasiveTool coarse =
          new AbrasiveTool(
              fine.grainSizeM() * draw.factor(),
              fine.protrusionShare(),
              fine.grainHardnessPa(),
              fine.rigidity(),
              fine.runOutM());
      CutResult small = AbrasiveCutting.cut(fine, work, contact, point);
      CutResult large = AbrasiveCutting.cut(coarse, work, contact, point);
      assertTrue(large.brittleShare() >= small.brittleShare() * ROUNDING);
      assertTrue(large.unitLoadN() >= small.unitLoadN() * ROUNDING);
      assertTrue(large.chipThicknessM() >= small.chipThicknessM() * ROUNDING);
      double rough = Roughness.ofAbrasiveM(coarse.grainSizeM(), coarse.rigidity(), large);
      assertTrue(rough > Roughness.ofAbrasiveM(fine.grainSizeM(), fine.rigidity(), small));
    }
  }

  /** A grain bears at most the whole load unless fewer than one would touch, and F/N0 at least. */
  @Test
  void theLoadOnAGrainLiesBetweenAnEvenShareAndWhatOneGrainOfTheWholeContactBears() {
    RandomCuts draw = new RandomCuts(68);
    for (int i = 0; i < CASES; i++) {
      Substance work = draw.work();
      Engagement contact = draw.contact();
      OperatingPoint point = draw.point();
      AbrasiveTool tool = draw.abrasive();
      double grains = Math.max(1, contact.areaM2() / Math.pow(1.6 * tool.grainSizeM(), 2));
      double height = 0.005 * tool.grainSizeM() * tool.rigidity();
      double sole = 2 * 12 * work.hardnessPa() * height * height;
      double load = AbrasiveCutting.cut(tool, work, contact, point).unitLoadN();
      if (point.loadN() == 0) {
        assertEquals(0, load);
      } else {
        assertTrue(load >= point.loadN() / grains * ROUNDING);
        assertTrue(load >= sole * ROUNDING);
        // F/(1 - exp(-F/S)) is at most F + S
        assertTrue(load <= (point.loadN() / grains + sole) / ROUNDING);
      }
    }
  }

  @Test
  void bladesThatCutLieBetweenOneAndAllAndGrowWithLoad() {
    RandomCuts draw = new RandomCuts(69);
    for (int i = 0; i < CASES; i++) {
      BladedTool tool = draw.bladed();
      double load = draw.point().loadN();
      double some = BladedCutting.cuttingBlades(tool, load);
      double more = BladedCutting.cuttingBlades(tool, load * draw.factor());
      assertTrue(some >= 1 && some <= tool.blades() / ROUNDING && more >= some * ROUNDING);
    }
  }

  @Test
  void aToolTooSoftForTheLayerRemovesNothing() {
    RandomCuts draw = new RandomCuts(70);
    for (int i = 0; i < CASES; i++) {
      Substance work = draw.work();
      double soft = work.hardnessPa() / draw.factor();
      AbrasiveTool a = draw.abrasive();
      BladedTool b = draw.bladed();
      Engagement contact = draw.contact();
      OperatingPoint point = draw.point();
      AbrasiveTool grains =
          new AbrasiveTool(a.grainSizeM(), a.protrusionShare(), soft, 1, a.runOutM());
      BladedTool blades =
          new BladedTool(
              b.blades(), b.edgeRadiusM(), b.edgeShare(), soft, b.runOutM(), b.stiffnessNPerM());
      CutResult rubbed = AbrasiveCutting.cut(grains, work, contact, point);
      assertEquals(0, rubbed.removalM3PerS());
      assertEquals(Double.POSITIVE_INFINITY, rubbed.specificEnergyJPerM3());
      assertEquals(0, BladedCutting.cut(blades, work, contact, point).removalM3PerS());
    }
  }
}
