package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Reason;
import kerfwright.planner.plan.Stroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Facts of the trade as tests of the whole planner, with the full drawer unless said. All of them
 * are common practice with no source; where a published test speaks against one, the plan must show
 * it.
 */
class TradeFactsTest {
  private static final PlanOptions QUICK = new PlanOptions(16, 1);

  private static CutPlan plan(ACase aCase) {
    return plan(aCase, DemoDrawer.full());
  }

  private static CutPlan plan(ACase aCase, DrawerSnapshot drawer) {
    return Planner.plan(aCase.build(), drawer, QUICK);
  }

  private static List<PlannedStep> steps(CutPlan plan, String material) {
    return plan.steps().stream().filter(s -> s.materialId().equals(material)).toList();
  }

  private static InstrumentKind kind(PlannedStep step) {
    return step.instrument().properties().kind();
  }

  private static ACase accessThrough(String outer, double mm) {
    return ACase.of(Procedure.ACCESS_CAVITY)
        .layer(outer, mm)
        .layer("resin-cement", 0.1)
        .layer("dentine", 3)
        .keep("dentine", 0.5);
  }

  private static ACase metalCeramic(String alloy) {
    return ACase.of(Procedure.ACCESS_CAVITY)
        .layer("feldspathic-porcelain", 1.0, 1.2, 1.5)
        .layer(alloy, 0.4)
        .layer("zinc-phosphate", 0.1)
        .layer("dentine", 2.5, 3, 3.5)
        .keep("dentine", 0.5);
  }

  /** F1: only bladed instruments are called burs; an abrasive one is a diamond instrument. */
  @Test
  void onlyABladedInstrumentIsCalledABur() {
    for (InstrumentKind kind : InstrumentKind.values()) {
      assertEquals(kind.bladed(), kind.label().contains("bur"), kind.label());
      assertEquals(kind.isDiamond(), kind.label().contains("diamond instrument"), kind.label());
    }
  }

  /** F2: fewer blades cut faster, four fastest; rate and roughness fall from 4 to 8 to 12 to 30. */
  @ParameterizedTest
  @ValueSource(strings = {"dentine", "co-cr-alloy", "gold-alloy"})
  void fewerBladesCutFasterAndLeaveARougherSurface(String material) {
    List<PlannedStep> byBlades = new ArrayList<>();
    for (int blades : new int[] {4, 8, 12, 30}) {
      byBlades.add(onlyWith(blades(blades), material));
    }
    for (int i = 1; i < byBlades.size(); i++) {
      assertTrue(
          byBlades.get(i).removalMm3PerMin().typical()
              < byBlades.get(i - 1).removalMm3PerMin().typical());
      assertTrue(byBlades.get(i).raUm().typical() < byBlades.get(i - 1).raUm().typical());
    }
  }

  /** F3: coarser grit cuts, finer finishes: rate and roughness fall along the grit classes. */
  @ParameterizedTest
  @ValueSource(strings = {"enamel", "feldspathic-porcelain", "lithium-disilicate", "zirconia-3y"})
  void coarserGritCutsFasterAndLeavesARougherSurface(String material) {
    PlannedStep coarser = null;
    for (GritClass grit : GritClass.values()) {
      PlannedStep step = onlyWith(grit(grit), material);
      if (coarser != null) {
        assertTrue(
            step.removalMm3PerMin().typical() < coarser.removalMm3PerMin().typical(),
            grit + " in " + material);
        assertTrue(step.raUm().typical() < coarser.raUm().typical(), grit + " in " + material);
      }
      coarser = step;
    }
  }

  private static PlannedStep onlyWith(DrawerInstrument instrument, String material) {
    CutPlan plan =
        plan(
            ACase.of(Procedure.ACCESS_CAVITY)
                .layer(material, 1)
                .outline(Outline.Shape.SLOT, 6, 2)
                .pulp(kerfwright.planner.casework.PulpState.NON_VITAL),
            new DrawerSnapshot(List.of(instrument)));
    assertFalse(plan.refused(), plan.findings().toString());
    return plan.steps().stream().filter(s -> s.stroke() != Stroke.AXIAL).findFirst().orElseThrow();
  }

  private static DrawerInstrument blades(int blades) {
    return AnInstrument.carbide(blades);
  }

  private static DrawerInstrument grit(GritClass grit) {
    return AnInstrument.diamond(grit);
  }

  /** F4: against rotation removes most and is taken for bulk; finishing is with rotation. */
  @Test
  void bulkIsCutAgainstRotationAndFinishedWithRotation() {
    CutPlan plan =
        plan(
            ACase.of(Procedure.VENEER_PREPARATION)
                .layer("enamel", 0.9)
                .layer("dentine", 2.5)
                .outline(Outline.Shape.PATCH, 9, 8)
                .keep("enamel", 0.4));
    assertTrue(plan.steps().stream().anyMatch(s -> s.purpose() == Purpose.FINISH));
    for (PlannedStep step : plan.steps()) {
      if (step.purpose() == Purpose.BULK) {
        assertEquals(Stroke.AGAINST_ROTATION, step.stroke());
      }
      if (step.purpose() == Purpose.FINISH) {
        assertEquals(Stroke.WITH_ROTATION, step.stroke());
        assertTrue(
            step.reasons().stream()
                .anyMatch(r -> r.code().equals("practice-with-rotation-finish") && r.supports()),
            step.reasons().toString());
      }
    }
  }

  /** F5: enamel, ceramics and fresh composite are brittle: diamond. */
  @ParameterizedTest
  @CsvSource({
    "enamel,1.5",
    "feldspathic-porcelain,1.2",
    "leucite-glass-ceramic,1.5",
    "lithium-disilicate,1.5",
    "zirconia-3y,1.0",
    "zirconia-5y,1.0"
  })
  void brittleLayersAreCutWithDiamond(String material, double mm) {
    for (PlannedStep step : steps(plan(accessThrough(material, mm)), material)) {
      assertTrue(kind(step).isDiamond(), step.instrument().id() + " in " + material);
    }
  }

  /** F5: fresh composite: diamond by practice; the published cooler carbide is shown against it. */
  @Test
  void freshCompositeIsCutWithDiamondAndTheCoolerCarbideIsShown() {
    CutPlan plan =
        plan(
            ACase.of(Procedure.COMPOSITE_REMOVAL)
                .layer("composite", 2)
                .layer("dentine", 2.5)
                .outline(Outline.Shape.RECTANGLE, 5, 3));
    List<PlannedStep> cuts = steps(plan, "composite");
    assertFalse(cuts.isEmpty());
    for (PlannedStep step : cuts) {
      assertTrue(kind(step).isDiamond(), step.instrument().id());
      Reason cooler = reason(step, "test-carbide-cooler-in-composite");
      assertFalse(cooler.supports());
      assertEquals("mafrici-2024", cooler.sources().get(0).key());
      assertTrue(reason(step, "practice-diamond-for-brittle").supports());
    }
  }

  /** F5: dentine and metals are ductile: carbide. */
  @ParameterizedTest
  @ValueSource(strings = {"co-cr-alloy", "ni-cr-alloy", "gold-alloy", "pd-ag-alloy", "titanium"})
  void ductileLayersAreCutWithCarbide(String alloy) {
    CutPlan plan = plan(metalCeramic(alloy));
    for (String material : List.of(alloy, "dentine")) {
      assertFalse(steps(plan, material).isEmpty());
      for (PlannedStep step : steps(plan, material)) {
        assertEquals(InstrumentKind.CARBIDE, kind(step), step.instrument().id());
      }
    }
  }

  /** The published Ni-Cr test in which diamonds outran carbide stands against the choice. */
  @Test
  void thePublishedTestAgainstCarbideInNickelChromiumIsShown() {
    PlannedStep metal = steps(plan(metalCeramic("ni-cr-alloy")), "ni-cr-alloy").get(0);
    Reason against = reason(metal, "test-diamond-on-ni-cr");
    assertFalse(against.supports());
    assertEquals("sam-ni-cr", against.sources().get(0).key());
  }

  private static Reason reason(PlannedStep step, String code) {
    return step.reasons().stream()
        .filter(r -> r.code().equals(code))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no reason " + code + " in " + step.reasons()));
  }

  /** F6: enamel already broken: a 6- to 8-blade carbide of the 245 form, punch and walls. */
  @Test
  void aBrokenCavityIsPunchedAndWalledWithASixToEightBladeCarbide() {
    CutPlan plan =
        plan(
            ACase.of(Procedure.CAVITY_PREPARATION)
                .layer("carious-dentine", 0.8, 1.0, 1.4)
                .layer("dentine", 2.5, 3, 3.5)
                .keep("dentine", 2.8));
    assertEquals(Stroke.AXIAL, plan.steps().get(0).stroke());
    for (PlannedStep step : plan.steps()) {
      assertEquals(InstrumentKind.CARBIDE, kind(step));
      Integer blades = step.instrument().properties().blades();
      assertTrue(blades != null && blades >= 6 && blades <= 8, step.instrument().id());
      assertEquals(ShapeFamily.PEAR_ELONGATED, step.instrument().properties().shape());
      assertTrue(step.raUm().typical() <= 1.0, "walls are smooth");
    }
  }

  /** F6: an enamel bevel: diamond. */
  @Test
  void anEnamelBevelIsCutWithDiamond() {
    CutPlan plan =
        plan(
            ACase.of(Procedure.ENAMEL_BEVEL)
                .layer("enamel", 1)
                .layer("dentine", 2.5)
                .outline(Outline.Shape.BAND, 6, 1)
                .keep("enamel", 0.5));
    assertFalse(plan.steps().isEmpty());
    plan.steps().forEach(s -> assertTrue(kind(s).isDiamond(), s.instrument().id()));
  }

  /** F7: coarse diamond through the ceramic, then a few-bladed carbide through the metal. */
  @Test
  void aMetalCeramicCrownIsCutWithCoarseDiamondThenFewBladedCarbide() {
    CutPlan plan = plan(metalCeramic("co-cr-alloy"));
    for (PlannedStep step : steps(plan, "feldspathic-porcelain")) {
      assertTrue(kind(step).isDiamond());
      assertEquals(GritClass.COARSE, step.instrument().properties().grit());
    }
    for (PlannedStep step : steps(plan, "co-cr-alloy")) {
      assertEquals(InstrumentKind.CARBIDE, kind(step));
      Integer blades = step.instrument().properties().blades();
      assertTrue(blades != null && blades <= 8, step.instrument().id());
    }
  }

  /** F7, forced the wrong way round: the figures and warnings show what each does there. */
  @Test
  void carbideForcedThroughCeramicBreaksItsEdges() {
    CutPlan right = plan(metalCeramic("co-cr-alloy"));
    CutPlan wrong = plan(metalCeramic("co-cr-alloy"), DemoDrawer.only(bladed()));
    assertTrue(lives(wrong, "feldspathic-porcelain") > 1, "more than one carbide is used up");
    assertTrue(lives(wrong, "feldspathic-porcelain") > 10 * lives(right, "feldspathic-porcelain"));
    assertTrue(hasWarning(wrong, "better-instrument-missing"), wrong.findings().toString());
    assertTrue(
        steps(wrong, "feldspathic-porcelain").stream()
            .flatMap(s -> s.cautions().stream())
            .anyMatch(f -> f.code().equals("worn-out-in-step")));
  }

  @Test
  void diamondForcedThroughMetalTakesLong() {
    CutPlan right = plan(metalCeramic("co-cr-alloy"));
    CutPlan wrong = plan(metalCeramic("co-cr-alloy"), DemoDrawer.only(bladed().negate()));
    assertTrue(time(wrong, "co-cr-alloy") > 3 * time(right, "co-cr-alloy"));
    assertTrue(hasWarning(wrong, "better-instrument-missing"), wrong.findings().toString());
  }

  private static Predicate<DrawerInstrument> bladed() {
    return d -> d.properties().kind().bladed();
  }

  private static double lives(CutPlan plan, String material) {
    return steps(plan, material).stream().mapToDouble(s -> s.lifeUsed().typical()).sum();
  }

  private static double time(CutPlan plan, String material) {
    return steps(plan, material).stream().mapToDouble(s -> s.timeS().typical()).sum();
  }

  private static boolean hasWarning(CutPlan plan, String code) {
    return plan.findings().stream().anyMatch(f -> f.code().equals(code));
  }

  /**
   * F8: lithium disilicate and zirconia: coarse diamond, sintered for zirconia where there is one.
   */
  @ParameterizedTest
  @CsvSource({"lithium-disilicate,1.5", "zirconia-3y,1.0", "zirconia-5y,1.0"})
  void hardCeramicsAreCutWithCoarseDiamond(String material, double mm) {
    List<PlannedStep> cuts = steps(plan(accessThrough(material, mm)), material);
    cuts.forEach(s -> assertEquals(GritClass.COARSE, s.instrument().properties().grit()));
    if (material.startsWith("zirconia")) {
      PlannedStep longest =
          cuts.stream().max(Comparator.comparingDouble(s -> s.timeS().typical())).orElseThrow();
      assertEquals(InstrumentKind.SINTERED_DIAMOND, kind(longest), longest.instrument().id());
    }
  }

  /** F9: bracket adhesive: a 30-blade carbide, then soft discs or cups; never a diamond. */
  @Test
  void bracketAdhesiveIsTakenOffWithThirtyBladesAndPolished() {
    CutPlan plan = plan(adhesive());
    PlannedStep first = plan.steps().get(0);
    assertEquals(InstrumentKind.CARBIDE, kind(first));
    assertEquals(30, first.instrument().properties().blades());
    PlannedStep last = plan.steps().get(plan.steps().size() - 1);
    assertEquals(Purpose.POLISH, last.purpose());
    assertTrue(Set.of(InstrumentKind.DISC, InstrumentKind.POLISHER).contains(kind(last)));
    assertTrue(plan.steps().stream().noneMatch(s -> kind(s).isDiamond()));
  }

  @Test
  void diamondsAloneAreRefusedOnAdhesiveOverEnamel() {
    CutPlan plan = plan(adhesive(), DemoDrawer.only(d -> d.properties().kind().isDiamond()));
    assertTrue(plan.refused());
    assertTrue(
        plan.findings().get(0).message().keys().anyMatch("exclusion.diamond-on-adhesive"::equals),
        plan.findings().toString());
  }

  @Test
  void aPolymerBurRemovesResinOnly() {
    CutPlan resin =
        plan(adhesive(), DemoDrawer.only(d -> d.properties().kind() == InstrumentKind.POLYMER));
    assertFalse(resin.refused(), resin.findings().toString());
    assertEquals(InstrumentKind.POLYMER, kind(resin.steps().get(0)));
    CutPlan enamel =
        plan(
            accessThrough("enamel", 1.5),
            DemoDrawer.only(d -> d.properties().kind() == InstrumentKind.POLYMER));
    assertTrue(enamel.refused());
    assertTrue(
        enamel
            .findings()
            .get(0)
            .message()
            .keys()
            .anyMatch("exclusion.softer-than-the-work"::equals),
        enamel.findings().toString());
  }

  private static ACase adhesive() {
    return ACase.of(Procedure.ADHESIVE_CLEAN_UP)
        .layer("adhesive-resin-aged", 0.2, 0.3, 0.5)
        .layer("enamel", 1)
        .layer("dentine", 2.5)
        .outline(Outline.Shape.PATCH, 4, 3)
        .keepAll("enamel");
  }
}
