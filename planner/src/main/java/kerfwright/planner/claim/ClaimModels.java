package kerfwright.planner.claim;

import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.physics.cutting.CuttingConstants;
import kerfwright.physics.cutting.HardnessRatio;
import kerfwright.physics.cutting.RunOut;
import kerfwright.physics.cutting.StrokeForces;
import kerfwright.physics.cutting.StrokeForces.WorkSide;
import kerfwright.physics.wear.Sharpness;
import kerfwright.planner.bench.Bench;
import kerfwright.planner.tool.Instrument;
import kerfwright.planner.tool.WorkingPart;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.Torque;

/** Each claim computed, one method each, on the bench: 1 N, 160 000 1/min, 50 mL/min, 1.4 mm. */
public final class ClaimModels {
  private static final Bench BENCH = new Bench(material("enamel"), 1.4, 1, 160_000, 50);
  private static final WorkingPart GRIT = BENCH.diamond(GritClass.COARSE);
  private static final WorkingPart BUR = BENCH.carbide(6);

  private static final Map<String, Supplier<ModelSays>> BY_ID =
      Map.ofEntries(
          Map.entry("brittle-wants-grit", ClaimModels::brittleWantsGrit),
          Map.entry("ductile-wants-blades", ClaimModels::ductileWantsBlades),
          Map.entry("few-blades-cut-fast", ClaimModels::fewBladesCutFast),
          Map.entry("many-blades-stay-cool", ClaimModels::manyBladesStayCool),
          Map.entry("coarse-is-fast-and-rough", ClaimModels::coarseIsFastAndRough),
          Map.entry("zirconia-at-half-speed", ClaimModels::zirconiaAtHalfSpeed),
          Map.entry("pressing-harder-cuts-faster", ClaimModels::pressingHarderCutsFaster),
          Map.entry("faster-turns-cut-faster", ClaimModels::fasterTurnsCutFaster),
          Map.entry("water-makes-it-cut", ClaimModels::waterMakesItCut),
          Map.entry("go-against-rotation", ClaimModels::goAgainstRotation),
          Map.entry("polymer-stops-at-sound-dentine", ClaimModels::polymerStops),
          Map.entry("steam-dulls", ClaimModels::steamDulls),
          Map.entry("metal-is-slow-and-hot", ClaimModels::metalIsSlowAndHot),
          Map.entry("zirconia-takes-longer", ClaimModels::zirconiaTakesLonger),
          Map.entry("a-turbine-slows-under-load", ClaimModels::aTurbineSlows),
          Map.entry("wobble-costs-speed", ClaimModels::wobbleCostsSpeed),
          Map.entry("blades-finish-composite", ClaimModels::bladesFinishComposite));

  private ClaimModels() {}

  /** Claims the models have something to say to. */
  public static Set<String> ids() {
    return BY_ID.keySet();
  }

  public static ModelSays of(String claim) {
    Supplier<ModelSays> model = BY_ID.get(claim);
    if (model == null) {
      throw new IllegalArgumentException("No model for the claim " + claim);
    }
    return model.get();
  }

  private static Material material(String id) {
    return Materials.packaged().get(id);
  }

  private static Bench in(String layer) {
    return BENCH.in(material(layer));
  }

  private static ModelSays says(boolean agrees, String claim, double... figures) {
    Object[] rounded = new Object[figures.length];
    for (int i = 0; i < figures.length; i++) {
      rounded[i] = Rounded.figure(figures[i]);
    }
    return new ModelSays(agrees, Message.of("claim.model-" + claim, rounded));
  }

  private static double ratio(Bench bench, WorkingPart one, WorkingPart other) {
    return bench.rateMm3PerMin(one) / bench.rateMm3PerMin(other);
  }

  private static ModelSays brittleWantsGrit() {
    double faster = ratio(BENCH, GRIT, BUR);
    double edge = BENCH.lifeMm3(BUR);
    double lasts = BENCH.lifeMm3(GRIT);
    return says(faster > 1 && lasts > edge, "brittle-wants-grit", faster, lasts, edge);
  }

  private static ModelSays ductileWantsBlades() {
    WorkingPart bur = BENCH.carbide(4);
    double dentine = ratio(in("dentine"), bur, GRIT);
    double metal = ratio(in("ni-cr-alloy"), bur, GRIT);
    return says(dentine > 1 && metal > 1, "ductile-wants-blades", dentine, metal);
  }

  private static ModelSays fewBladesCutFast() {
    Bench dentine = in("dentine");
    WorkingPart many = dentine.carbide(30);
    double faster = ratio(dentine, BUR, many);
    double rougher = dentine.raUm(BUR) / dentine.raUm(many);
    return says(faster > 1 && rougher > 1, "few-blades-cut-fast", faster, rougher);
  }

  private static ModelSays manyBladesStayCool() {
    Bench resin = in("adhesive-resin-aged");
    double six = resin.cut(BUR).powerW();
    double forty = resin.cut(resin.carbide(40)).powerW();
    return says(forty < six, "many-blades-stay-cool", six, forty);
  }

  private static ModelSays coarseIsFastAndRough() {
    WorkingPart fine = BENCH.diamond(GritClass.FINE);
    double faster = ratio(BENCH, GRIT, fine);
    double rougher = BENCH.raUm(GRIT) / BENCH.raUm(fine);
    return says(faster > 1 && rougher > 1, "coarse-is-fast-and-rough", faster, rougher);
  }

  private static ModelSays zirconiaAtHalfSpeed() {
    Bench slow = in("zirconia-3y").atRpm(100_000);
    Bench fast = slow.atRpm(200_000);
    double power = fast.cut(GRIT).powerW() / slow.cut(GRIT).powerW();
    double faster = fast.rateMm3PerMin(GRIT) / slow.rateMm3PerMin(GRIT);
    return says(power > faster, "zirconia-at-half-speed", power, faster);
  }

  /** Twice the load; it pays where the rate rises by at least a half. */
  private static ModelSays pressingHarderCutsFaster() {
    WorkingPart grit = BENCH.diamond(GritClass.MEDIUM);
    double faster = BENCH.atLoad(2).rateMm3PerMin(grit) / BENCH.rateMm3PerMin(grit);
    double warmer = BENCH.atLoad(2).cut(grit).powerW() / BENCH.cut(grit).powerW();
    return says(faster > 1.5, "pressing-harder-cuts-faster", faster, warmer);
  }

  private static ModelSays fasterTurnsCutFaster() {
    double slow = BENCH.atRpm(100_000).rateMm3PerMin(GRIT);
    double usual = BENCH.atRpm(200_000).rateMm3PerMin(GRIT);
    double fast = BENCH.atRpm(400_000).rateMm3PerMin(GRIT);
    return says(
        fast > usual && usual > slow, "faster-turns-cut-faster", usual / slow, fast / usual);
  }

  private static ModelSays waterMakesItCut() {
    WorkingPart grit = BENCH.diamond(GritClass.MEDIUM);
    double faster =
        BENCH.withWater(44).rateMm3PerMin(grit) / BENCH.withWater(15).rateMm3PerMin(grit);
    return says(faster > 1, "water-makes-it-cut", faster);
  }

  private static ModelSays goAgainstRotation() {
    Bench dentine = in("dentine");
    double rim = dentine.cut(BUR).tangentialN();
    double against = StrokeForces.alongTravelN(WorkSide.LEFT, rim, dentine.contact());
    double with = StrokeForces.alongTravelN(WorkSide.RIGHT, rim, dentine.contact());
    return says(against < 0 && with > 0, "go-against-rotation", -against, with);
  }

  private static ModelSays polymerStops() {
    double polymer = Instrument.material(InstrumentKind.POLYMER).hardness().typical().pascals();
    double soft = material("carious-dentine").typical().hardnessPa();
    double sound = material("dentine").typical().hardnessPa();
    boolean stops = HardnessRatio.canCut(polymer, soft) && !HardnessRatio.canCut(polymer, sound);
    return says(stops, "polymer-stops-at-sound-dentine", polymer / soft, polymer / sound);
  }

  private static ModelSays steamDulls() {
    double diamond = 100 * (1 - Sharpness.ofDiamondAfterCycles(5));
    double carbide = 100 * (1 - Sharpness.ofCarbideAfterCycles(5));
    return says(diamond > 5, "steam-dulls", diamond, carbide);
  }

  private static ModelSays metalIsSlowAndHot() {
    Bench metal = in("co-cr-alloy");
    Bench dentine = in("dentine");
    double slower = dentine.rateMm3PerMin(BUR) / metal.rateMm3PerMin(BUR);
    double dearer = metal.cut(BUR).specificEnergyJPerM3() / dentine.cut(BUR).specificEnergyJPerM3();
    return says(slower > 1 && dearer > 1, "metal-is-slow-and-hot", slower, dearer);
  }

  private static ModelSays zirconiaTakesLonger() {
    double zirconia = in("zirconia-3y").rateMm3PerMin(GRIT);
    double glass = in("leucite-glass-ceramic").rateMm3PerMin(GRIT) / zirconia;
    double composite = in("composite").rateMm3PerMin(GRIT) / zirconia;
    return says(glass > 1 && composite > 1, "zirconia-takes-longer", glass, composite);
  }

  /** The speed that is left under 2 N at the rim of a coarse diamond instrument in enamel. */
  private static ModelSays aTurbineSlows() {
    Bench firm = BENCH.atLoad(2);
    double force = firm.cut(GRIT).tangentialN();
    Torque torque = new Torque(force * firm.diameterMm() * 1e-3 / 2);
    double turbine = left("turbine", torque);
    double electric = left("electric-1to5", torque);
    return says(turbine < electric, "a-turbine-slows-under-load", turbine, electric);
  }

  private static double left(String handpiece, Torque torque) {
    var drive = Handpieces.byId(handpiece).orElseThrow().drive();
    return 100 * drive.speedUnder(torque, drive.freeSpeed()).rpm() / drive.freeSpeed().rpm();
  }

  private static ModelSays wobbleCostsSpeed() {
    double mass = CuttingConstants.TYPICAL.shakenMassKg();
    double rim = BENCH.atRpm(320_000).rimMPerS();
    double d = BENCH.contact().diameterM();
    double lost =
        RunOut.cuttingShare(1, rim, d, 3.5e-6, mass) / RunOut.cuttingShare(1, rim, d, 6e-6, mass);
    return says(lost > 1, "wobble-costs-speed", lost);
  }

  private static ModelSays bladesFinishComposite() {
    Bench composite = in("composite");
    double blades = composite.raUm(composite.carbide(16));
    double grit = composite.raUm(composite.diamond(GritClass.FINE));
    return says(blades < grit, "blades-finish-composite", blades, grit);
  }
}
