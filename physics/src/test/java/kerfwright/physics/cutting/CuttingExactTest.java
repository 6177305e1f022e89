package kerfwright.physics.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerfwright.physics.TestSubstances;
import kerfwright.physics.material.Substance;
import org.junit.jupiter.api.Test;

/** The stated equations worked out beside the product, term by term, at limits where they close. */
class CuttingExactTest {
  private static final Engagement SIDE = new Engagement(1.2e-3, 3e-3, 50e-6);
  private static final AbrasiveTool COARSE = new AbrasiveTool(137e-6, 0.4, 90e9, 1, 5e-6);

  /** F/(F + m e w^2), w = 2 v/D, with 0.7 g, 5 um and a head of 1.2 mm. */
  private static double held(double loadN, double speed) {
    double turning = speed / 0.6e-3;
    return loadN / (loadN + 0.7e-3 * 5e-6 * turning * turning);
  }

  /** s h/(h + 0.35 um), h from the load of a grain. */
  private static double efficiency(CutResult cut, double hardnessPa, double sharpness) {
    double bite = Math.sqrt(cut.unitLoadN() / (12 * hardnessPa));
    return sharpness * bite / (bite + 0.35e-6);
  }

  /** Gold: ductile enough that nothing cracks; lifted share and loading in closed form. */
  @Test
  void ploughingGrainsLiftTheirShareOfTheGroove() {
    Substance gold = TestSubstances.of(1.33, 90, 60, 1.33, 1);
    CutResult cut = AbrasiveCutting.cut(COARSE, gold, SIDE, new OperatingPoint(1, 20, 35, 0.5));
    double ductility = 60e6 / 1.33e9;
    double lifted = 0.15 + 0.45 / (1 + ductility / 2e-3);
    double rinse = 0.5 + 0.5 * 35 / 50;
    double efficiency = efficiency(cut, 1.33e9, 0.5);
    double clogged = 0.7 * efficiency * rinse * 20 * held(1, 20) * 0.3 * lifted / 1.33e9;
    double layer = clogged / (20 * 3e-3);
    double stuck = 1.6e6 * layer * ductility / (1 + ductility / 0.01);
    double clean = 1 / (1 + stuck / ((0.1 + 0.9 * 35 / 50) * 0.4 * 137e-6));
    assertEquals(0, cut.brittleShare(), 1e-12);
    assertEquals(lifted, cut.chipShare(), 1e-12);
    assertEquals(clean, cut.cleanShare(), 1e-9);
    assertEquals(clogged * clean, cut.removalM3PerS(), 1e-9 * clogged);
    assertEquals(0.2 + 0.4 * efficiency, cut.tangentialN(), 1e-12);
    assertEquals(20 * cut.tangentialN(), cut.powerW(), 1e-9);
    assertEquals(
        cut.tangentialN(),
        AbrasiveCutting.forceRatio(CuttingConstants.TYPICAL, COARSE, gold, SIDE, 1, 0.5),
        1e-12);
    assertEquals(0.6, AbrasiveCutting.greatestForceRatio(), 1e-15);
  }

  /** Glass so brittle that every grain cracks: P_m and the power law remain. */
  @Test
  void crackingGrainsLiftTheirShareOfTheCrackVolume() {
    Substance glass = TestSubstances.withShortCracks(TestSubstances.of(8, 80, 3, 8, 1), 0.01);
    CutResult cut = AbrasiveCutting.cut(COARSE, glass, SIDE, new OperatingPoint(1, 20, 50, 1));
    double threshold = CrackThreshold.loadN(glass);
    double x = Math.sqrt(2 * threshold / cut.unitLoadN());
    double polynomial = x * x / 2 + x + 1;
    double cracking = Math.exp(-x) * polynomial;
    assertTrue(cracking > 0.99999, "the case is meant to crack, got " + cracking);
    assertEquals(cracking, cut.brittleShare(), 1e-12);
    double mean = cut.unitLoadN() * polynomial;
    double lifted = 0.03 * CrackThreshold.crackVolumePerLengthM2(glass, mean) / mean;
    double rinse = 0.5 + 0.5 * 50.0 / 65;
    double free = 0.7 * efficiency(cut, 8e9, 1) * rinse * 20 * held(1, 20) * lifted * cracking;
    assertEquals(free * cut.cleanShare(), cut.removalM3PerS(), 1e-4 * free);
  }

  /** Half of the load cracks: both terms count, as the stated sum. */
  @Test
  void betweenTheTwoTheTermsAddByTheirShareOfTheLoad() {
    CutResult cut =
        AbrasiveCutting.cut(
            COARSE, TestSubstances.ENAMEL, SIDE, new OperatingPoint(0.8, 18, 50, 1));
    Substance enamel = TestSubstances.ENAMEL;
    double c = cut.brittleShare();
    assertTrue(c > 0.1 && c < 0.8, "cracks " + c);
    double x = Math.sqrt(2 * CrackThreshold.loadN(enamel) / cut.unitLoadN());
    double mean = cut.unitLoadN() * (x * x / 2 + x + 1);
    double cracked = 0.03 * CrackThreshold.crackVolumePerLengthM2(enamel, mean) / mean * c;
    double ploughed = 0.3 * cut.chipShare() * (1 - c) / enamel.hardnessPa();
    double work = 0.8 * 18 * held(0.8, 18) * (0.5 + 0.5 * 50.0 / 65);
    double free = 0.7 * efficiency(cut, 3.5e9, 1) * work * (ploughed + cracked);
    assertEquals(free * cut.cleanShare(), cut.removalM3PerS(), 1e-9 * free);
  }

  @Test
  void lightLoadsBringGrainsInHeavyLoadsPressOnAllOfThem() {
    Substance enamel = TestSubstances.ENAMEL;
    double sole = 24 * 3.5e9 * Math.pow(0.005 * 137e-6, 2);
    double all = SIDE.areaM2() / Math.pow(1.6 * 137e-6, 2);
    CutResult light =
        AbrasiveCutting.cut(COARSE, enamel, SIDE, new OperatingPoint(1e-6, 20, 50, 1));
    assertEquals(sole, light.unitLoadN(), 1e-5 * sole);
    CutResult heavy = AbrasiveCutting.cut(COARSE, enamel, SIDE, new OperatingPoint(50, 20, 50, 1));
    assertEquals(50 / all, heavy.unitLoadN(), 1e-3 * 50 / all);
    assertEquals(Math.sqrt(heavy.unitLoadN() / (12 * 3.5e9)), heavy.chipThicknessM(), 1e-9);
  }

  @Test
  void aContactSmallerThanOneGrainStillHasOneGrain() {
    Engagement tiny = new Engagement(0.3e-3, 0.02e-3, 1e-6);
    AbrasiveTool large = new AbrasiveTool(250e-6, 0.4, 90e9, 1, 5e-6);
    CutResult cut =
        AbrasiveCutting.cut(large, TestSubstances.ENAMEL, tiny, new OperatingPoint(5, 10, 50, 1));
    assertEquals(5, cut.unitLoadN(), 5e-3);
  }

  @Test
  void anElasticBondBitesLessAndRemovesLess() {
    OperatingPoint point = new OperatingPoint(0.05, 10, 50, 1);
    CutResult rigid = AbrasiveCutting.cut(COARSE, TestSubstances.ENAMEL, SIDE, point);
    AbrasiveTool cup = new AbrasiveTool(137e-6, 0.4, 90e9, 0.15, 5e-6);
    CutResult elastic = AbrasiveCutting.cut(cup, TestSubstances.ENAMEL, SIDE, point);
    assertTrue(elastic.unitLoadN() < rigid.unitLoadN());
    assertTrue(elastic.removalM3PerS() < 0.15 * rigid.removalM3PerS());
  }

  @Test
  void noLoadAndNoSpeedDoNothing() {
    OperatingPoint hovering = new OperatingPoint(0, 20, 50, 1);
    OperatingPoint standing = new OperatingPoint(1, 0, 50, 1);
    BladedTool bur = new BladedTool(8, 3e-6, 1, 15e9, 5e-6, 2e5);
    for (Substance work : TestSubstances.ALL) {
      CutResult a = AbrasiveCutting.cut(COARSE, work, SIDE, hovering);
      CutResult b = BladedCutting.cut(bur, work, SIDE, hovering);
      for (CutResult cut : new CutResult[] {a, b}) {
        assertEquals(0, cut.removalM3PerS());
        assertEquals(0, cut.unitLoadN());
        assertEquals(0, cut.chipThicknessM());
        assertEquals(0, cut.powerW());
        assertEquals(0, cut.brittleShare(), 1e-15);
        assertEquals(1, cut.cleanShare());
      }
      for (CutResult cut :
          new CutResult[] {
            AbrasiveCutting.cut(COARSE, work, SIDE, standing),
            BladedCutting.cut(bur, work, SIDE, standing)
          }) {
        assertEquals(0, cut.removalM3PerS());
        assertEquals(0, cut.powerW());
        assertEquals(1, cut.cleanShare());
      }
    }
  }

  @Test
  void bladesShareTheForceByTheStatedEquations() {
    Substance dentine = TestSubstances.DENTINE;
    BladedTool bur = new BladedTool(8, 3e-6, 0.6, 0.75e9, 5e-6, 2e5);
    CutResult cut = BladedCutting.cut(bur, dentine, SIDE, new OperatingPoint(1, 12, 50, 0.5));
    double deflection = 1 / 2e5;
    double blades = 1 + 7 * deflection / (deflection + 5e-6);
    assertEquals(4.5, blades, 1e-9);
    assertEquals(blades, BladedCutting.cuttingBlades(bur, 1), 1e-12);
    double arc = Math.acos(1 - 2 * 50e-6 / 1.2e-3) / (2 * Math.PI);
    double edge = blades * arc * 3e-3 * 0.6;
    double chip = 0.6 / edge / (1.2 * 0.6e9 * Math.pow(3e-3, -0.27));
    double sunk = 1 / edge / (0.6e9 * 6e-6);
    double share = sunk / (sunk + 0.5) * (0.25 / 0.4);
    double free = edge * chip * 12 * held(1, 12) * share;
    double room = 0.3 * Math.PI * 1.2e-3 / 8;
    double ductility = 3.1e6 / 0.6e9;
    double layer = free / (12 * 3e-3);
    double clean = 1 / (1 + 1.6e6 * layer * ductility / (1 + ductility / 0.01) / room);
    assertEquals(chip, cut.chipThicknessM(), 1e-9 * chip);
    assertEquals(share, cut.chipShare(), 1e-9);
    assertEquals(clean, cut.cleanShare(), 1e-9);
    assertEquals(free * clean, cut.removalM3PerS(), 1e-9 * free);
    assertEquals(1e-3 / edge, cut.unitLoadN(), 1e-9);
    assertEquals(0, cut.brittleShare(), 1e-12);
    double lifting = sunk / (sunk + 0.5);
    assertEquals(0.2 + 0.4 * lifting, cut.tangentialN(), 1e-9);
    assertEquals(12 * cut.tangentialN(), cut.powerW(), 1e-9);
    assertEquals(cut.tangentialN(), BladedCutting.forceRatio(bur, dentine, SIDE, 1, 0.5), 1e-12);
    assertEquals(0.6, BladedCutting.greatestForceRatio());
  }

  /** Glass under an edge: no chip remains, the cracks of its points do not heed a blunt edge. */
  @Test
  void anEdgeInGlassRestsOnPointsThatCrackIt() {
    Substance glass = TestSubstances.of(5.5, 72, 0.1, 5.5, 1);
    BladedTool bur = new BladedTool(6, 3e-6, 1, 15e9, 5e-6, 2e5);
    CutResult cut = BladedCutting.cut(bur, glass, SIDE, new OperatingPoint(1, 12, 1e6, 1));
    CutResult blunt = BladedCutting.cut(bur, glass, SIDE, new OperatingPoint(1, 12, 1e6, 0.3));
    double point = cut.unitLoadN() * 1e3 * 15e-6;
    double x = Math.sqrt(2 * CrackThreshold.loadN(glass) / point);
    double above = x * x / 2 + x + 1;
    double share = Math.exp(-x) * above;
    assertTrue(share > 0.99, "the case is meant to crack, got " + share);
    assertEquals(share, cut.brittleShare(), 1e-12);
    double lifted = CrackThreshold.crackVolumePerLengthM2(glass, point * above) / above / point;
    double free = 0.7 * 0.03 * share * lifted * 12 * held(1, 12);
    assertEquals(free, cut.removalM3PerS() / cut.cleanShare(), 1e-3 * free);
    assertEquals(cut.removalM3PerS(), blunt.removalM3PerS(), 1e-3 * free);
  }

  /** The work of an ideal cone and its friction is the least a groove costs: (H/f_ab) 4/3. */
  @Test
  void aGrooveNeverCostsLessThanAnIdealCone() {
    for (double grain : new double[] {5e-6, 25e-6, 115e-6, 250e-6}) {
      for (double sharpness : new double[] {0.05, 0.5, 1}) {
        Substance gold = TestSubstances.of(1.33, 90, 60, 1.33, 1);
        AbrasiveTool grit = new AbrasiveTool(grain, 0.4, 90e9, 1, 0);
        CutResult cut =
            AbrasiveCutting.cut(grit, gold, SIDE, new OperatingPoint(1, 5, 1e6, sharpness));
        double ideal = 1.33e9 / cut.chipShare() * (4.0 / 3);
        assertTrue(cut.specificEnergyJPerM3() > ideal, grain + " m, " + sharpness);
      }
    }
  }

  /** Fine or blunt grit is held by less force along the rim than coarse and new. */
  @Test
  void theForceRatioRisesWithTheBite() {
    double before = 0.2;
    for (double grain : new double[] {1e-9, 10e-6, 58e-6, 115e-6, 180e-6}) {
      AbrasiveTool grit = new AbrasiveTool(grain, 0.4, 90e9, 1, 5e-6);
      double ratio = ratio(grit, 1);
      assertTrue(ratio > before && ratio < 0.6, grain + " m: " + ratio);
      assertTrue(ratio(grit, 0.5) < ratio);
      before = ratio;
    }
    // 0.24/0.60 to 1.77/2.93 in leucite glass-ceramic with 106 to 125 um (DC037, DC038)
    assertEquals(0.5, ratio(new AbrasiveTool(115e-6, 0.4, 90e9, 1, 5e-6), 1), 0.05);
    assertEquals(
        0.2,
        AbrasiveCutting.forceRatio(
            CuttingConstants.TYPICAL, COARSE, TestSubstances.ENAMEL, SIDE, 0, 1));
  }

  private static double ratio(AbrasiveTool grit, double sharpness) {
    Substance leucite = TestSubstances.of(6.2, 65, 1.3, 6.2, 1);
    return AbrasiveCutting.forceRatio(CuttingConstants.TYPICAL, grit, leucite, SIDE, 1, sharpness);
  }

  @Test
  void aBluntOrManyBladedEdgeRubsWithLessForceAlongTheRim() {
    Substance resin = TestSubstances.of(0.3, 5, 1, 0.3, 0);
    double before = 0.6;
    for (int blades : new int[] {6, 12, 40}) {
      BladedTool bur = new BladedTool(blades, 3e-6, 1, 15e9, 5e-6, 2e5);
      double ratio = BladedCutting.forceRatio(bur, resin, SIDE, 0.5, 1);
      assertTrue(ratio < before && ratio > 0.2, blades + " blades: " + ratio);
      assertTrue(BladedCutting.forceRatio(bur, resin, SIDE, 0.5, 0.5) < ratio);
      assertTrue(BladedCutting.forceRatio(bur, resin, SIDE, 1, 1) > ratio);
      before = ratio;
    }
    BladedTool bur = new BladedTool(6, 3e-6, 1, 15e9, 5e-6, 2e5);
    assertEquals(0.2, BladedCutting.forceRatio(bur, resin, SIDE, 0, 1));
  }

  @Test
  void withoutRunOutAllBladesCutAndAStiffShankLeavesOne() {
    BladedTool round = new BladedTool(12, 3e-6, 1, 15e9, 0, 2e5);
    assertEquals(12, BladedCutting.cuttingBlades(round, 0));
    assertEquals(12, BladedCutting.cuttingBlades(round, 1), 1e-12);
    BladedTool stiff = new BladedTool(12, 3e-6, 1, 15e9, 5e-6, 1e15);
    assertEquals(1, BladedCutting.cuttingBlades(stiff, 1), 1e-6);
    assertEquals(1, BladedCutting.cuttingBlades(stiff, 0));
  }

  @Test
  void energyOverVolumeIsPowerOverRate() {
    assertEquals(25e9, new CutResult(0.2e-9, 1, 5, 0, 0, 0, 1, 1, 0).specificEnergyJPerM3(), 1);
    assertEquals(
        Double.POSITIVE_INFINITY, new CutResult(0, 1, 5, 0, 0, 0, 1, 1, 0).specificEnergyJPerM3());
  }

  @Test
  void impossibleToolsAndPointsAreRefusedByName() {
    refused("Grain size must be above zero and finite, got 0.0 m", () -> grains(0, 1, 1, 1));
    refused("Protrusion of the grains", () -> grains(1, 0, 1, 1));
    refused("Hardness of the grains", () -> grains(1, 1, 0, 1));
    refused("Rigidity of the bond", () -> grains(1, 1, 1, Double.NaN));
    refused("Run-out", () -> new AbrasiveTool(1, 1, 1, 1, -1));
    refused("Mass shaken", () -> new CuttingConstants(-1, 0, 1, 1, 0, 1));
    refused("Rounding", () -> new CuttingConstants(0, -1, 1, 1, 0, 1));
    refused("fresh ground", () -> new CuttingConstants(0, 0, 0, 1, 0, 1));
    refused("Sliding factor", () -> new CuttingConstants(0, 0, 1, 0, 0, 1));
    refused("crack volume", () -> new CuttingConstants(0, 0, 1, 1, -1, 1));
    refused("points of an edge", () -> new CuttingConstants(0, 0, 1, 1, 0, 0));
    assertEquals(0, new CuttingConstants(0, 0, 1, 1, 0, 1).shakenMassKg());
    refused("at least one blade, got 0", () -> new BladedTool(0, 1, 1, 1, 0, 1));
    refused("Edge radius", () -> new BladedTool(1, 0, 1, 1, 0, 1));
    refused("Cutting share of the edge", () -> new BladedTool(1, 1, 0, 1, 0, 1));
    refused("Hardness of the blades", () -> new BladedTool(1, 1, 1, 0, 0, 1));
    refused("Run-out must be zero or more and finite", () -> new BladedTool(1, 1, 1, 1, -1, 1));
    refused("Stiffness at the head", () -> new BladedTool(1, 1, 1, 1, 0, 0));
    refused("Load must be zero or more and finite, got -1.0 N", () -> point(-1, 1, 1, 1));
    refused("Load", () -> point(Double.POSITIVE_INFINITY, 1, 1, 1));
    refused("Rim speed", () -> point(1, -1, 1, 1));
    refused("Coolant", () -> point(1, 1, Double.NaN, 1));
    refused("Sharpness", () -> point(1, 1, 1, 0));
    refused("Sharpness", () -> point(1, 1, 1, 1.01));
    refused("A touch must last above 0 s", () -> new OperatingPoint(1, 1, 1, 1, 0));
    assertEquals(1, new BladedTool(1, 1, 1, 1, 0, 1).blades());
    assertEquals(1, point(0, 0, 0, 1).sharpness());
  }

  private static AbrasiveTool grains(double size, double out, double hardness, double rigidity) {
    return new AbrasiveTool(size, out, hardness, rigidity, 0);
  }

  private static OperatingPoint point(double load, double speed, double water, double sharpness) {
    return new OperatingPoint(load, speed, water, sharpness);
  }

  private static void refused(String why, Runnable build) {
    IllegalArgumentException e = assertThrows(IllegalArgumentException.class, build::run);
    assertTrue(e.getMessage().contains(why), e.getMessage());
  }
}
