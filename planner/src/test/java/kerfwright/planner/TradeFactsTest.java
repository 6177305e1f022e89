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
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.operation.Work;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Reason;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.sequence.CandidateSearch;
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
        .layer("dentine", 3);
  }

  private static ACase metalCeramic(String alloy) {
    return ACase.of(Procedure.ACCESS_CAVITY)
        .layer("feldspathic-porcelain", 1.0, 1.2, 1.5)
        .layer(alloy, 0.4)
        .layer("zinc-phosphate", 0.1)
        .layer("dentine", 2.5, 3, 3.5);
  }

  /** F1: only bladed instruments are called burs; an abrasive one is a diamond instrument. */
  @Test
  void onlyABladedInstrumentIsCalledABur() {
    for (InstrumentKind kind : InstrumentKind.values()) {
      assertEquals(kind.bladed(), kind.label().contains("bur"), kind.label());
      assertEquals(kind.isDiamond(), kind.label().contains("diamond instrument"), kind.label());
    }
  }

  /** What one instrument does in the walls of an opening, its kind and size left open. */
  private static Candidate alone(DrawerInstrument instrument, String material) {
    CutCase c =
        ACase.of(Procedure.CROWN_SECTIONING)
            .layer(material, 1)
            .layer("dentine", 2.5)
            .outline(Outline.Shape.SLOT, 8, 1.6)
            .handpieces("electric-1to5")
            .build();
    Work work = Operations.laid(c).works().get(0);
    return new CandidateSearch(c, List.of(instrument), List.of(), OwnPace.NONE, true)
        .on(work)
        .candidates()
        .get(0);
  }

  private static double rate(Candidate c) {
    return c.cut().removalM3PerS();
  }

  /** F2: fewer blades cut faster; rate and roughness fall from 4 to 8 to 12 to 30. */
  @ParameterizedTest
  @ValueSource(strings = {"co-cr-alloy", "gold-alloy"})
  void fewerBladesCutFasterAndLeaveARougherSurface(String material) {
    List<Candidate> byBlades = new ArrayList<>();
    for (int blades : new int[] {4, 8, 12, 30}) {
      byBlades.add(alone(AnInstrument.carbide(blades), material));
    }
    for (int i = 1; i < byBlades.size(); i++) {
      assertTrue(rate(byBlades.get(i)) < rate(byBlades.get(i - 1)));
      assertTrue(byBlades.get(i).raM() < byBlades.get(i - 1).raM());
    }
  }

  /** F3: coarser grit cuts, finer finishes: rate and roughness fall along the grit classes. */
  @ParameterizedTest
  @ValueSource(strings = {"leucite-glass-ceramic", "lithium-disilicate", "zirconia-3y"})
  void coarserGritCutsFasterAndLeavesARougherSurface(String material) {
    Candidate coarser = null;
    for (GritClass grit : GritClass.values()) {
      Candidate c = alone(AnInstrument.diamond(grit), material);
      if (coarser != null) {
        assertTrue(rate(c) < rate(coarser), grit + " in " + material);
        assertTrue(c.raM() < coarser.raM(), grit + " in " + material);
      }
      coarser = c;
    }
  }

  /** F4: walls are cut against rotation, finishing is with rotation. */
  @Test
  void wallsAreCutAgainstRotationAndFinishedWithRotation() {
    CutPlan plan =
        plan(
            ACase.of(Procedure.CROWN_PREPARATION)
                .intended("metal-ceramic")
                .layer("enamel", 1.2)
                .layer("dentine", 3)
                .outline(Outline.Shape.PATCH, 9, 6));
    assertFalse(plan.refused(), plan.findings().toString());
    for (PlannedStep step : plan.steps()) {
      assertTrue(
          step.purpose() == Purpose.FINISH || step.stroke() != Stroke.WITH_ROTATION,
          step.operation().row().id());
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
    List<PlannedStep> cuts = steps(plan(accessThrough(material, mm)), material);
    assertFalse(cuts.isEmpty());
    for (PlannedStep step : cuts) {
      assertTrue(kind(step).isDiamond(), step.instrument().id() + " in " + material);
    }
  }

  /** F5: in fresh composite the published cooler carbide is shown, for it or against. */
  @Test
  void theCoolerCarbideInCompositeIsShown() {
    CutPlan plan =
        plan(
            ACase.of(Procedure.COMPOSITE_REMOVAL)
                .layer("composite", 2)
                .layer("dentine", 2.5)
                .outline(Outline.Shape.RECTANGLE, 5, 3));
    List<PlannedStep> cuts = steps(plan, "composite");
    assertFalse(cuts.isEmpty());
    for (PlannedStep step : cuts) {
      Reason cooler = reason(step, "test-carbide-cooler-in-composite");
      assertEquals(kind(step) == InstrumentKind.CARBIDE, cooler.supports());
      assertEquals("mafrici-2024", cooler.sources().get(0).key());
    }
  }

  /** F5: metals are ductile: a carbide of few blades. */
  @ParameterizedTest
  @ValueSource(strings = {"co-cr-alloy", "ni-cr-alloy", "gold-alloy", "pd-ag-alloy", "titanium"})
  void metalsAreCutWithFewBladedCarbide(String alloy) {
    CutPlan plan = plan(metalCeramic(alloy));
    assertFalse(steps(plan, alloy).isEmpty(), plan.findings().toString());
    for (PlannedStep step : steps(plan, alloy)) {
      assertEquals(InstrumentKind.CARBIDE, kind(step), step.instrument().id());
      Integer blades = step.instrument().properties().blades();
      assertTrue(blades != null && blades <= 8, step.instrument().id());
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

  /** F7, forced the wrong way round: the first line says so, and the bur wears out. */
  @Test
  void carbideForcedThroughCeramicIsSaidFirst() {
    CutPlan right = plan(metalCeramic("co-cr-alloy"));
    CutPlan wrong =
        plan(
            metalCeramic("co-cr-alloy"),
            DemoDrawer.only(bladed().or(d -> d.properties().safeEnd())));
    assertEquals("blades-in-ceramic", wrong.findings().get(0).code());
    assertTrue(lives(wrong, "feldspathic-porcelain") > 10 * lives(right, "feldspathic-porcelain"));
    assertTrue(
        steps(wrong, "feldspathic-porcelain").stream()
            .flatMap(s -> s.cautions().stream())
            .anyMatch(f -> f.code().equals("worn-out-in-step")));
  }

  @Test
  void diamondForcedThroughMetalIsSaidFirst() {
    CutPlan wrong =
        plan(
            metalCeramic("co-cr-alloy"),
            DemoDrawer.only(
                d ->
                    !bladed().test(d)
                        || !d.properties().shape().label().startsWith("cylinder")
                            && !d.properties().crossCut()
                            && d.properties().headDiameter().millimetres() > 1.3));
    assertFalse(wrong.refused(), wrong.findings().toString());
    assertEquals("diamond-in-metal", wrong.findings().get(0).code());
  }

  private static Predicate<DrawerInstrument> bladed() {
    return d -> d.properties().kind().bladed();
  }

  private static double lives(CutPlan plan, String material) {
    return steps(plan, material).stream().mapToDouble(s -> s.lifeUsed().typical()).sum();
  }

  /** F8: zirconia is cut by coarse or medium diamond at reduced speed. */
  @Test
  void zirconiaIsCutWithDiamondBelowTurbineSpeed() {
    List<PlannedStep> cuts = steps(plan(accessThrough("zirconia-3y", 1)), "zirconia-3y");
    PlannedStep longest =
        cuts.stream().max(Comparator.comparingDouble(s -> s.timeS().typical())).orElseThrow();
    assertTrue(longest.speedUnderLoadRpm().typical() <= 200_001);
    assertTrue(
        Set.of(GritClass.COARSE, GritClass.MEDIUM)
            .contains(longest.instrument().properties().grit()));
  }

  /** F9: bracket adhesive: many blades, then rubber or discs; never a diamond. */
  @Test
  void bracketAdhesiveIsTakenOffWithManyBladesAndPolished() {
    CutPlan plan = plan(adhesive());
    assertFalse(plan.refused(), plan.findings().toString());
    PlannedStep first = plan.steps().get(0);
    Integer blades = first.instrument().properties().blades();
    assertTrue(blades != null && blades >= 12, first.instrument().id());
    PlannedStep last = plan.steps().get(plan.steps().size() - 1);
    assertEquals(Purpose.POLISH, last.purpose());
    assertTrue(plan.steps().stream().noneMatch(s -> kind(s).isDiamond()));
    assertTrue(plan(adhesive(), DemoDrawer.only(d -> d.properties().kind().isDiamond())).refused());
  }

  /** F8: zirconia is cut well below the speed of a turbine. */
  @ParameterizedTest
  @ValueSource(strings = {"zirconia-3y", "zirconia-5y"})
  void zirconiaIsCutSlowly(String material) {
    for (PlannedStep step : steps(plan(accessThrough(material, 1)), material)) {
      double rpm = step.speedUnderLoadRpm().typical();
      assertTrue(rpm >= 100_000 && rpm <= 160_000, rpm + " 1/min");
    }
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
