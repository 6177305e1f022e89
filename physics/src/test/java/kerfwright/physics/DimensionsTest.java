package kerfwright.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import kerfwright.physics.cutting.AbrasiveCutting;
import kerfwright.physics.cutting.AbrasiveTool;
import kerfwright.physics.cutting.BladedCutting;
import kerfwright.physics.cutting.BladedTool;
import kerfwright.physics.cutting.ChipGeometry;
import kerfwright.physics.cutting.CrackThreshold;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.CuttingConstants;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.GrainChip;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.physics.cutting.SpecificForce;
import kerfwright.physics.material.Substance;
import kerfwright.physics.shaft.NeckStress;
import kerfwright.physics.shaft.OverhungShaft;
import kerfwright.physics.surface.Roughness;
import kerfwright.physics.wear.EdgeWear;
import org.junit.jupiter.api.Test;

/**
 * Measured in other units of length, mass and time, every result must change as its dimension says.
 * A constant with a dimension breaks this; the ones there are stand here by name:
 *
 * <ul>
 *   <li>the millimetre in Kienzle's law, so also the chip of a bur;
 *   <li>the millimetre of edge in the unit load of a bur;
 *   <li>0.002 sqrt(m) of the lifted share, 1.6e6 1/sqrt(m) and 0.01 sqrt(m) of chip loading;
 *   <li>15 and 50 mL/min of water;
 *   <li>0.8 um and 4e3 1/sqrt(m) of blade roughness;
 *   <li>0.35 um of a tip's rounding, 15 um between the points of an edge, 0.7 g that run-out
 *       shakes: the tests carry these over;
 *   <li>12 lives a mm3 of edge wear; 3.5 GPa, 115 um, 15 m/s and 600 mm3 of grain wear.
 * </ul>
 *
 * <p>None of them holds a mass or a time beside the water and grain wear, so removal rates must
 * follow other units of mass and time exactly; and what comes before these constants must follow
 * other units of length too.
 */
class DimensionsTest {
  private static final int CASES = 2000;
  private final Random random = new Random(81);

  /** Units of length, mass and time, in SI. */
  private record Units(double length, double mass, double time) {
    double of(double l, double m, double t) {
      return Math.pow(length, l) * Math.pow(mass, m) * Math.pow(time, t);
    }

    double force() {
      return of(1, 1, -2);
    }

    double pressure() {
      return of(-1, 1, -2);
    }

    double speed() {
      return of(1, 0, -1);
    }
  }

  private double factor() {
    return TestSubstances.logUniform(random, 0.1, 10);
  }

  private Units any() {
    return new Units(factor(), factor(), factor());
  }

  private Units sameLength() {
    return new Units(1, factor(), factor());
  }

  private static Substance in(Units u, Substance s) {
    return new Substance(
        s.hardnessPa() * u.pressure(),
        s.youngPa() * u.pressure(),
        s.toughnessPaSqrtM() * u.of(-0.5, 1, -2),
        s.shortCrackToughnessPaSqrtM() * u.of(-0.5, 1, -2),
        s.densityKgPerM3() * u.of(-3, 1, 0),
        s.conductivityWPerMK() * u.of(1, 1, -3),
        s.specificHeatJPerKgK() * u.of(2, 0, -2),
        s.hardPhaseHardnessPa() * u.pressure(),
        s.hardPhaseShare());
  }

  private static Engagement in(Units u, Engagement e) {
    return new Engagement(
        e.diameterM() * u.length(), e.engagedLengthM() * u.length(), e.depthOfCutM() * u.length());
  }

  /** Water is a ratio to the reference flows and stays as it is. */
  private static OperatingPoint in(Units u, OperatingPoint p) {
    return new OperatingPoint(
        p.loadN() * u.force(),
        p.rimSpeedMPerS() * u.speed(),
        p.coolantMlPerMin(),
        p.sharpness(),
        p.touchS() * u.of(0, 0, 1));
  }

  private static CuttingConstants constants(Units u) {
    CuttingConstants usual = CuttingConstants.TYPICAL;
    return new CuttingConstants(
        usual.shakenMassKg() * u.mass(),
        usual.tipRoundingM() * u.length(),
        usual.freshShare(),
        usual.slidingFactor(),
        usual.crackVolume(),
        usual.edgePointSpacingM() * u.length());
  }

  private Engagement contact() {
    double diameter = TestSubstances.logUniform(random, 0.5e-3, 5e-3);
    return new Engagement(diameter, diameter * (0.1 + 3 * random.nextDouble()), diameter * 0.1);
  }

  private OperatingPoint point() {
    return new OperatingPoint(
        TestSubstances.logUniform(random, 0.05, 5),
        5 + 30 * random.nextDouble(),
        30,
        0.7,
        TestSubstances.logUniform(random, 0.1, 10));
  }

  private static void same(double expected, double actual, String what) {
    assertEquals(expected, actual, 1e-8 * Math.abs(expected), what);
  }

  @Test
  void materialMeasuresAndCrackThresholdFollowAllUnits() {
    for (int i = 0; i < CASES; i++) {
      Units u = any();
      Substance s = TestSubstances.any(random);
      Substance t = in(u, s);
      same(s.brittlenessPerM() * u.of(-1, 0, 0), t.brittlenessPerM(), "B_Q");
      same(s.brittlenessPerSqrtM() * u.of(-0.5, 0, 0), t.brittlenessPerSqrtM(), "B_LM");
      same(s.criticalDepthM() * u.length(), t.criticalDepthM(), "d_c");
      same(s.diffusivityM2PerS() * u.of(2, 0, -1), t.diffusivityM2PerS(), "alpha");
      same(CrackThreshold.loadN(s) * u.force(), CrackThreshold.loadN(t), "P_c");
      same(
          CrackThreshold.crackVolumePerLengthM2(s, 0.1) * u.of(2, 0, 0),
          CrackThreshold.crackVolumePerLengthM2(t, 0.1 * u.force()),
          "V");
      double ra = 1e-6 * random.nextDouble();
      same(
          Roughness.damageDepthM(ra, 0.1, 0.5, s) * u.length(),
          Roughness.damageDepthM(ra * u.length(), 0.1 * u.force(), 0.5, t),
          "damage");
    }
  }

  @Test
  void geometryShaftAndNeckFollowAllUnits() {
    for (int i = 0; i < CASES; i++) {
      Units u = any();
      double l = u.length();
      Engagement e = contact();
      same(e.areaM2() * l * l, in(u, e).areaM2(), "area");
      same(e.arcShare(), in(u, e).arcShare(), "arc");
      double feed = 1e-6 * random.nextDouble();
      same(
          ChipGeometry.meanM(feed, e.depthOfCutM(), e.diameterM(), 1) * l,
          ChipGeometry.meanM(feed * l, e.depthOfCutM() * l, e.diameterM() * l, 1),
          "chip");
      same(
          GrainChip.thicknessM(2e7, 1, 1e-3, 20, e.depthOfCutM(), e.diameterM()) * l,
          GrainChip.thicknessM(
              2e7 * u.of(-2, 0, 0),
              1,
              1e-3 * u.speed(),
              20 * u.speed(),
              e.depthOfCutM() * l,
              e.diameterM() * l),
          "grain chip");
      OverhungShaft s = new OverhungShaft(8e-3, 1.6e-3, 4e-3, 1e-3, 1e-5, 200e9, 7850);
      OverhungShaft t =
          new OverhungShaft(
              8e-3 * l,
              1.6e-3 * l,
              4e-3 * l,
              1e-3 * l,
              1e-5 * u.mass(),
              200e9 * u.pressure(),
              7850 * u.of(-3, 1, 0));
      same(s.firstWhirlPerS() / u.time(), t.firstWhirlPerS(), "whirl");
      same(s.tipStiffnessNPerM() * u.of(0, 1, -2), t.tipStiffnessNPerM(), "stiffness");
      same(
          NeckStress.equivalentPa(1, 5e-3, 1e-3, 1e-3) * u.pressure(),
          NeckStress.equivalentPa(u.force(), 5e-3 * l, 1e-3 * u.force() * l, 1e-3 * l),
          "neck");
      same(Roughness.ridgeM(3e-4, 6e-4) * l, Roughness.ridgeM(3e-4 * l, 6e-4 * l), "ridge");
    }
  }

  /** k_c1.1 belongs to one millimetre: in other units of length it takes l^m with it. */
  @Test
  void kienzlesLawFollowsAllUnitsOnceItsMillimetreIsMinded() {
    for (int i = 0; i < CASES; i++) {
      Units u = any();
      SpecificForce s = new SpecificForce(2e9, 0.27);
      SpecificForce t = new SpecificForce(2e9 * u.pressure() * u.of(0.27, 0, 0), 0.27);
      same(s.atPa(1e-6) * u.pressure(), t.atPa(1e-6 * u.length()), "k_c");
      same(s.chipThicknessM(500) * u.length(), t.chipThicknessM(500 * u.of(0, 1, -2)), "chip");
    }
  }

  @Test
  void loadCrackingAndBiteOfGrainsFollowAllUnitsAndRemovalMassAndTime() {
    for (int i = 0; i < CASES; i++) {
      Substance work = TestSubstances.any(random);
      Engagement contact = contact();
      OperatingPoint point = point();
      double grain = TestSubstances.logUniform(random, 10e-6, 200e-6);
      CutResult one = AbrasiveCutting.cut(grains(grain, new Units(1, 1, 1)), work, contact, point);
      Units u = any();
      CutResult two =
          AbrasiveCutting.cut(
              constants(u),
              grains(grain * u.length(), u),
              in(u, work),
              in(u, contact),
              in(u, point));
      same(one.unitLoadN() * u.force(), two.unitLoadN(), "load of a grain");
      same(one.brittleShare(), two.brittleShare(), "crack share");
      same(one.chipThicknessM() * u.length(), two.chipThicknessM(), "bite");
      same(one.powerW() * u.of(2, 1, -3), two.powerW(), "power");
      Units mt = sameLength();
      CutResult three =
          AbrasiveCutting.cut(
              constants(mt), grains(grain, mt), in(mt, work), contact, in(mt, point));
      same(one.removalM3PerS() / mt.time(), three.removalM3PerS(), "removal");
      same(one.cleanShare(), three.cleanShare(), "clean share");
      same(one.chipShare(), three.chipShare(), "lifted share");
    }
  }

  private static AbrasiveTool grains(double sizeM, Units u) {
    return new AbrasiveTool(sizeM, 0.4, 90e9 * u.pressure(), 1, 5e-6 * u.length());
  }

  @Test
  void burFollowsMassAndTime() {
    for (int i = 0; i < CASES; i++) {
      Substance work = TestSubstances.any(random);
      Engagement contact = contact();
      OperatingPoint point = point();
      Units u = sameLength();
      CutResult one = BladedCutting.cut(bur(new Units(1, 1, 1)), work, contact, point);
      CutResult two = BladedCutting.cut(constants(u), bur(u), in(u, work), contact, in(u, point));
      same(one.removalM3PerS() / u.time(), two.removalM3PerS(), "removal");
      same(one.chipThicknessM(), two.chipThicknessM(), "chip");
      same(one.chipShare(), two.chipShare(), "chip share");
      same(one.unitLoadN() * u.force(), two.unitLoadN(), "load on a millimetre of edge");
      same(one.powerW() * u.of(2, 1, -3), two.powerW(), "power");
      same(
          EdgeWear.livesPerM3(work, 15e9),
          EdgeWear.livesPerM3(in(u, work), 15e9 * u.pressure()),
          "edge wear");
    }
  }

  private static BladedTool bur(Units u) {
    return new BladedTool(8, 3e-6, 1, 15e9 * u.pressure(), 5e-6, 2e5 * u.of(0, 1, -2));
  }
}
