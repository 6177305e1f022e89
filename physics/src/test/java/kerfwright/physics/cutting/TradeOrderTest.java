package kerfwright.physics.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerfwright.physics.TestSubstances;
import kerfwright.physics.material.Substance;
import kerfwright.physics.surface.Roughness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Orders of the trade that must come out of the models (common practice, no source). */
class TradeOrderTest {
  /**
   * Typical grain of the six grit classes, um (two trade texts; see the catalogue's grit table).
   */
  private static final double[] GRIT_UM = {165, 137, 115, 58, 25, 15};

  private static final int[] BLADES = {4, 6, 8, 12, 30};
  private static final Engagement SIDE = new Engagement(1.2e-3, 3e-3, 50e-6);

  private static CutResult diamond(double grainUm, Substance work, double loadN) {
    return AbrasiveCutting.cut(
        new AbrasiveTool(grainUm * 1e-6, 0.4, 90e9, 1, 5e-6),
        work,
        SIDE,
        new OperatingPoint(loadN, 18, 50, 1));
  }

  private static CutResult bur(int blades, Substance work, double loadN) {
    return BladedCutting.cut(
        new BladedTool(blades, 3e-6, 1, 15e9, 5e-6, 2e5),
        work,
        SIDE,
        new OperatingPoint(loadN, 12, 50, 1));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.2, 0.5, 1, 1.5})
  void finerGritRemovesLessAndLeavesASmootherSurfaceInToothAndCeramic(double loadN) {
    for (Substance work :
        List.of(
            TestSubstances.ENAMEL,
            TestSubstances.PORCELAIN,
            TestSubstances.DENTINE,
            TestSubstances.ZIRCONIA)) {
      double rate = Double.POSITIVE_INFINITY;
      double ra = Double.POSITIVE_INFINITY;
      for (double grain : GRIT_UM) {
        CutResult cut = diamond(grain, work, loadN);
        double rough = Roughness.ofAbrasiveM(grain * 1e-6, 1, cut);
        assertTrue(cut.removalM3PerS() < rate, work + " at " + grain + " um");
        assertTrue(rough < ra, work + " at " + grain + " um");
        rate = cut.removalM3PerS();
        ra = rough;
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.2, 0.5, 1, 1.5})
  void moreBladesRemoveLessAndLeaveASmootherSurfaceInDentineAndMetal(double loadN) {
    for (Substance work : List.of(TestSubstances.DENTINE, TestSubstances.COBALT_CHROMIUM)) {
      double rate = Double.POSITIVE_INFINITY;
      double ra = Double.POSITIVE_INFINITY;
      for (int blades : BLADES) {
        double removal = bur(blades, work, loadN).removalM3PerS();
        double rough = Roughness.ofBladesM(blades, work);
        assertTrue(removal < rate && rough < ra, work + " with " + blades + " blades");
        rate = removal;
        ra = rough;
      }
    }
  }

  @Test
  void brittleLayersFavourDiamondAndDuctileLayersCarbide() {
    assertTrue(faster(TestSubstances.ENAMEL) < 1);
    assertTrue(faster(TestSubstances.PORCELAIN) < 1);
    assertTrue(faster(TestSubstances.ZIRCONIA) < 1);
    assertTrue(faster(TestSubstances.DENTINE) > 1);
    assertTrue(faster(TestSubstances.COBALT_CHROMIUM) > 1);
  }

  /** Carbide with four blades over coarse diamond at the same load and speed. */
  private static double faster(Substance work) {
    OperatingPoint point = new OperatingPoint(1, 18, 50, 1);
    CutResult carbide =
        BladedCutting.cut(new BladedTool(4, 3e-6, 1, 15e9, 5e-6, 2e5), work, SIDE, point);
    return carbide.removalM3PerS() / diamond(137, work, 1).removalM3PerS();
  }

  @Test
  void coarseGritCracksEnamelAndPorcelainAndPloughsDentineAndMetal() {
    assertTrue(diamond(137, TestSubstances.PORCELAIN, 1).brittleShare() > 0.5);
    assertTrue(diamond(137, TestSubstances.ENAMEL, 1).brittleShare() > 0.3);
    assertTrue(diamond(137, TestSubstances.DENTINE, 1).brittleShare() < 1e-6);
    assertTrue(diamond(137, TestSubstances.COBALT_CHROMIUM, 1).brittleShare() < 1e-6);
    assertTrue(diamond(15, TestSubstances.ENAMEL, 1).brittleShare() < 1e-3);
  }

  /** What cracks under a blunt edge as under a sharp one is the steady share of its rate. */
  @Test
  void theSteadyShareOfARateIsWhatABluntEdgeKeeps() {
    for (Substance work : List.of(TestSubstances.PORCELAIN, TestSubstances.DENTINE)) {
      CutResult sharp = burAt(work, 1);
      CutResult blunt = burAt(work, 0.4);
      assertEquals(
          sharp.steadyShare() * sharp.removalM3PerS() / sharp.cleanShare(),
          blunt.steadyShare() * blunt.removalM3PerS() / blunt.cleanShare(),
          1e-9 * sharp.removalM3PerS());
      assertTrue(blunt.removalM3PerS() < sharp.removalM3PerS());
    }
    assertTrue(burAt(TestSubstances.PORCELAIN, 1).steadyShare() > 0.5);
    assertEquals(0, burAt(TestSubstances.DENTINE, 1).steadyShare(), 1e-9);
    assertEquals(0, diamond(137, TestSubstances.PORCELAIN, 1).steadyShare());
  }

  private static CutResult burAt(Substance work, double sharpness) {
    return BladedCutting.cut(
        new BladedTool(6, 3e-6, 1, 15e9, 5e-6, 2e5),
        work,
        SIDE,
        new OperatingPoint(1, 12, 50, sharpness));
  }

  /**
   * A slow bur turns some 330 times in a touch of 5 s; then only what the touch cuts can stick. At
   * 200 000 1/min the same touch is long enough for all that ever sticks.
   */
  @Test
  void noMoreSticksThanATouchCuts() {
    for (int blades : new int[] {6, 8}) {
      double endless = slow(blades, Double.POSITIVE_INFINITY).cleanShare();
      assertEquals(endless, slow(blades, 1e6).cleanShare());
      assertEquals(1, slow(blades, 1e-9).cleanShare(), 1e-9);
      CutResult touch = slow(blades, 5);
      assertTrue(touch.cleanShare() > endless);
      assertTrue(touch.cleanShare() < slow(blades, 4).cleanShare());
      double clear = slow(blades, 1e-9).removalM3PerS();
      double layer = clear * 5 / (Math.PI * SIDE.diameterM() * SIDE.engagedLengthM());
      double flute = 0.3 * Math.PI * SIDE.diameterM() / blades;
      assertEquals(1 / (1 + layer / flute), touch.cleanShare(), 1e-12);
    }
    OperatingPoint fast = new OperatingPoint(1, Math.PI * SIDE.diameterM() * 200_000 / 60, 50, 1);
    OperatingPoint touched = new OperatingPoint(1, fast.rimSpeedMPerS(), 50, 1, 5);
    assertEquals(
        BladedCutting.cut(slowBur(6), TestSubstances.DENTINE, SIDE, fast),
        BladedCutting.cut(slowBur(6), TestSubstances.DENTINE, SIDE, touched));
  }

  private static CutResult slow(int blades, double touchS) {
    return BladedCutting.cut(
        slowBur(blades),
        TestSubstances.DENTINE,
        SIDE,
        new OperatingPoint(1, Math.PI * SIDE.diameterM() * 4000 / 60, 50, 1, touchS));
  }

  private static BladedTool slowBur(int blades) {
    return new BladedTool(blades, 3e-6, 1, 15e9, 5e-6, 2e5);
  }

  /** Chip loading: soft ductile work clogs, porcelain does not (Siegel and von Fraunhofer 1997). */
  @Test
  void dentineClogsGritMoreThanEnamelAndPorcelain() {
    double dentine = diamond(58, TestSubstances.DENTINE, 1).cleanShare();
    assertTrue(dentine < diamond(58, TestSubstances.ENAMEL, 1).cleanShare());
    assertTrue(dentine < diamond(58, TestSubstances.PORCELAIN, 1).cleanShare());
  }

  /** J Mech Behav Biomed Mater 2019, abstract: chips of carbide in enamel are of nanometres. */
  @Test
  void carbideLiftsChipsOfNanometresFromEnamel() {
    double chip = bur(6, TestSubstances.ENAMEL, 1).chipThicknessM();
    assertTrue(chip > 1e-9 && chip < 100e-9, chip + " m");
  }
}
