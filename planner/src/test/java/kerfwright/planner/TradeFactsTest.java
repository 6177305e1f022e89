package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShankType;
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
 * Facts of the trade as tests of the whole planner, with the full drawer unless said; what the
 * models say with no operation's window stands in FreeModelsTest. All of them are common practice
 * with no source; where a published test speaks against one, the plan must show it.
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

  /** F4: finishing is with rotation wherever the operation leaves the stroke open. */
  @Test
  void finishingIsWithRotationWhereTheOperationLeavesItOpen() {
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
        assertNotEquals(Stroke.WITH_ROTATION, step.stroke(), "takes the instrument away");
      }
      if (step.purpose() == Purpose.FINISH
          && step.operation().row().operating().stroke().isEmpty()) {
        assertEquals(Stroke.WITH_ROTATION, step.stroke());
        assertTrue(reason(step, "practice-with-rotation-finish").supports());
      }
    }
  }

  /** F5: enamel and ceramics are brittle: diamond. */
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

  /** F5: fresh composite: a bur, which a study found cooler; the habit of diamond is shown. */
  @Test
  void freshCompositeIsCutWithTheCoolerCarbideAndTheHabitOfDiamondIsShown() {
    CutPlan plan =
        plan(
            ACase.of(Procedure.COMPOSITE_REMOVAL)
                .layer("composite", 2)
                .layer("dentine", 2.5)
                .outline(Outline.Shape.RECTANGLE, 5, 3));
    assertFalse(steps(plan, "composite").isEmpty());
    for (PlannedStep step : steps(plan, "composite")) {
      assertEquals(InstrumentKind.CARBIDE, kind(step), step.instrument().id());
      Reason cooler = reason(step, "test-carbide-cooler-in-composite");
      assertTrue(cooler.supports());
      assertEquals("mafrici-2024", cooler.sources().get(0).key());
      assertFalse(reason(step, "practice-diamond-for-brittle").supports());
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

  /** F7: diamond through the ceramic, then a few-bladed carbide through the metal. */
  @Test
  void aMetalCeramicCrownIsCutWithDiamondThenFewBladedCarbide() {
    CutPlan plan = plan(metalCeramic("co-cr-alloy"));
    for (PlannedStep step : steps(plan, "feldspathic-porcelain")) {
      assertTrue(kind(step).isDiamond());
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
    CutPlan wrong =
        plan(
            metalCeramic("co-cr-alloy"),
            DemoDrawer.only(bladed().negate().or(d -> d.properties().shank() == ShankType.RA)));
    assertFalse(steps(wrong, "co-cr-alloy").isEmpty(), wrong.findings().toString());
    steps(wrong, "co-cr-alloy").forEach(s -> assertTrue(kind(s).isDiamond()));
    assertTrue(time(wrong, "co-cr-alloy") > time(right, "co-cr-alloy"));
    assertTrue(hasWarning(wrong, "diamond-in-metal"), wrong.findings().toString());
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
   * F8: zirconia: coarse diamond, sintered where there is one, well below the speed of a turbine.
   */
  @ParameterizedTest
  @ValueSource(strings = {"zirconia-3y", "zirconia-5y"})
  void zirconiaIsCutSlowlyWithCoarseDiamond(String material) {
    List<PlannedStep> cuts = steps(plan(accessThrough(material, 1)), material);
    for (PlannedStep step : cuts) {
      assertEquals(GritClass.COARSE, step.instrument().properties().grit());
      double rpm = step.speedUnderLoadRpm().typical();
      assertTrue(rpm >= 100_000 && rpm <= 160_000, rpm + " 1/min");
    }
    PlannedStep longest =
        cuts.stream().max(Comparator.comparingDouble(s -> s.timeS().typical())).orElseThrow();
    assertEquals(InstrumentKind.SINTERED_DIAMOND, kind(longest), longest.instrument().id());
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
