package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.tool.Instrument;
import kerfwright.planner.tool.Shaft;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Limits that always hold, one accepted and one refused. */
class HardLimitsTest {
  private static final PlanOptions QUICK = new PlanOptions(8, 1);

  private static CutPlan plan(ACase aCase, DrawerInstrument... drawer) {
    return Planner.plan(aCase.build(), new DrawerSnapshot(List.of(drawer)), QUICK);
  }

  private static ACase enamelOnly() {
    return ACase.of(Procedure.ACCESS_CAVITY).layer("enamel", 1.5).pulp(PulpState.NON_VITAL);
  }

  private static AnInstrument coarse() {
    return AnInstrument.any("D1", InstrumentKind.DIAMOND, GritClass.COARSE, null);
  }

  private static String refusal(CutPlan plan) {
    assertTrue(plan.refused(), "should be refused");
    assertTrue(plan.steps().isEmpty());
    return plan.findings().get(0).message().toString();
  }

  @Test
  void aPlainCaseIsAccepted() {
    assertFalse(plan(enamelOnly(), coarse().build()).refused());
  }

  @Test
  void anInstrumentWithoutAMaximumSpeedIsNeverUsed() {
    String said = refusal(plan(enamelOnly(), coarse().maximum(null).build()));
    assertTrue(said.contains("exclusion.maximum-speed-unknown"), said);
  }

  @ParameterizedTest
  @EnumSource(value = DrawerInstrument.State.class, names = "CLEAN", mode = EnumSource.Mode.EXCLUDE)
  void onlyCleanInstrumentsAreUsed(DrawerInstrument.State state) {
    String said = refusal(plan(enamelOnly(), coarse().state(state).build()));
    assertTrue(said.contains("exclusion.not-clean"), said);
  }

  @Test
  void theSetSpeedNeverPassesTheMakersMaximum() {
    CutPlan plan = plan(enamelOnly(), coarse().maximum(120_000.0).build());
    assertFalse(plan.steps().isEmpty());
    for (PlannedStep step : plan.steps()) {
      assertTrue(step.setSpeedRpm() <= 120_000);
      assertTrue(step.speedUnderLoadRpm().high() <= 120_000);
    }
  }

  @Test
  void theSetSpeedNeverPassesTheHandpiece() {
    CutPlan plan =
        plan(enamelOnly().handpieces("electric-1to5"), coarse().maximum(450_000.0).build());
    assertTrue(plan.steps().stream().allMatch(s -> s.setSpeedRpm() <= 200_000));
  }

  @Test
  void theShankMustFitAHandpiece() {
    String said =
        refusal(
            plan(
                enamelOnly().handpieces("turbine"),
                coarse().shank(ShankType.RA).size(1.4, 4, 22).build()));
    assertTrue(said.contains("exclusion.no-handpiece, values=[RA]"), said);
    assertFalse(
        plan(
                enamelOnly().handpieces("electric-1to1"),
                coarse().shank(ShankType.RA).size(1.4, 4, 22).build())
            .refused());
  }

  @Test
  void theHeadMustFitTheOpening() {
    ACase narrow = enamelOnly().outline(Outline.Shape.SLOT, 6, 1.2);
    String said = refusal(plan(narrow, coarse().build()));
    assertTrue(said.contains("exclusion.head-too-wide, values=[1.4, 1.2]"), said);
    assertFalse(plan(narrow, coarse().size(1.0, 4, 19).build()).refused());
  }

  @Test
  void theInstrumentMustReachTheFloor() {
    ACase deep =
        ACase.of(Procedure.ACCESS_CAVITY)
            .layer("enamel", 2)
            .layer("dentine", 8)
            .pulp(PulpState.NON_VITAL)
            .outline(Outline.Shape.CIRCLE, 1.5, 1.5);
    String said =
        refusal(
            plan(
                deep,
                AnInstrument.any("B1", InstrumentKind.CARBIDE, null, 6).size(1.2, 4, 19).build()));
    assertTrue(said.contains("exclusion.too-short"), said);
  }

  @Test
  void noSpeedPassesThreeQuartersOfTheWhirlSpeed() {
    DrawerInstrument slender = coarse().size(0.8, 4, 30).maximum(450_000.0).build();
    Instrument worked = Instrument.of(slender);
    assertTrue(worked != null);
    double limit = worked.shaft().whirlLimit().rpm();
    assertTrue(limit < 400_000, "whirl binds before maker and handpiece: " + limit);
    CutPlan plan = plan(enamelOnly(), slender);
    assertTrue(plan.steps().stream().allMatch(s -> s.setSpeedRpm() <= limit + 1));
    assertEquals(0.75, Shaft.WHIRL_SHARE);
  }

  @Test
  void aThinNeckTakesOnlyALightLoad() {
    CutPlan thin = plan(enamelOnly(), coarse().size(0.5, 3, 25).build());
    CutPlan stout = plan(enamelOnly(), coarse().build());
    double light =
        thin.refused()
            ? 0
            : thin.steps().stream().mapToDouble(s -> s.loadN().typical()).max().orElse(0);
    double heavy = stout.steps().stream().mapToDouble(s -> s.loadN().typical()).max().orElse(0);
    assertTrue(light < heavy, light + " against " + heavy);
  }

  @Test
  void aWornOutInstrumentIsLeftOut() {
    assertFalse(plan(enamelOnly(), coarse().worn(4).build()).refused());
    String said = refusal(plan(enamelOnly(), coarse().worn(6).build()));
    assertTrue(said.contains("exclusion.worn-out"), said);
  }

  @Test
  void aDriveTooWeakIsReportedAsStalled() {
    CutPlan plan =
        plan(
            ACase.of(Procedure.CROWN_PREPARATION)
                .layer("enamel", 1)
                .layer("dentine", 3)
                .outline(Outline.Shape.BAND, 20, 4)
                .keep("dentine", 3)
                .handpieces("turbine"),
            coarse().size(12, 4, 19).build());
    String said = refusal(plan);
    assertTrue(said.contains("exclusion.stalls"), said);
  }

  @Test
  void halfAMillimetreOfDentineStaysOverAVitalPulp() {
    ACase thin =
        ACase.of(Procedure.CAVITY_PREPARATION)
            .layer("carious-dentine", 1)
            .layer("dentine", 0.6)
            .keep("dentine", 0.3);
    CutPlan refused = Planner.plan(thin.build(), DemoDrawer.full(), QUICK);
    assertEquals("remaining-dentine", refused.findings().get(0).code());
    assertFalse(
        Planner.plan(thin.pulp(PulpState.NON_VITAL).build(), DemoDrawer.full(), QUICK).refused());
    assertFalse(
        Planner.plan(
                thin.pulp(PulpState.VITAL).keep("dentine", 0.5).build(), DemoDrawer.full(), QUICK)
            .refused());
  }

  @Test
  void anUnknownPulpIsProtectedAsAVitalOne() {
    ACase thin =
        ACase.of(Procedure.CAVITY_PREPARATION)
            .layer("carious-dentine", 1)
            .layer("dentine", 0.6)
            .keep("dentine", 0.3)
            .pulp(PulpState.UNKNOWN);
    assertTrue(Planner.plan(thin.build(), DemoDrawer.full(), QUICK).refused());
  }

  @Test
  void whatMustStayIsNeverPlannedToBeCut() {
    CutPlan plan =
        Planner.plan(
            ACase.of(Procedure.COMPOSITE_REMOVAL)
                .layer("composite-aged", 2)
                .layer("enamel", 1)
                .layer("dentine", 2)
                .keepAll("enamel")
                .build(),
            DemoDrawer.full(),
            QUICK);
    assertTrue(plan.steps().stream().allMatch(s -> s.materialId().equals("composite-aged")));
    assertTrue(plan.steps().stream().allMatch(s -> s.toMm().typical() <= 2.001));
  }

  @Test
  void nothingToCutIsRefusedWithAReason() {
    String said =
        refusal(
            Planner.plan(
                ACase.of(Procedure.ENAMEL_BEVEL).layer("enamel", 1).keepAll("enamel").build(),
                DemoDrawer.full(),
                QUICK));
    assertTrue(said.contains("finding.nothing-to-cut"), said);
  }

  @Test
  void aRefusalSaysWhatWouldHelp() {
    String said =
        refusal(
            plan(
                ACase.of(Procedure.CROWN_SECTIONING)
                    .layer("co-cr-alloy", 0.8)
                    .layer("dentine", 3)
                    .outline(Outline.Shape.SLOT, 6, 1.6),
                AnInstrument.any("P1", InstrumentKind.POLYMER, null, 8).build()));
    assertTrue(
        said.contains(
            "finding.ordinary-few-blades, values=[Message[key=label.shank-fg, values=[]], Message[key=label.kind-carbide, values=[]]"),
        said);
  }

  @Test
  void aLivingToothIsNotCutDryWithATurbine() {
    ACase dry =
        ACase.of(Procedure.ACCESS_CAVITY)
            .layer("enamel", 1.5)
            .layer("dentine", 4)
            .keep("dentine", 0.5)
            .water(0)
            .handpieces("turbine");
    String said = refusal(Planner.plan(dry.build(), DemoDrawer.full(), QUICK));
    assertTrue(said.contains("exclusion.dry-at-high-speed, values=[40000]"), said);
    assertFalse(Planner.plan(dry.water(50).build(), DemoDrawer.full(), QUICK).refused());
  }

  @Test
  void littleWaterIsMadeUpForUntilThePulpStaysBelowItsLimit() {
    DrawerSnapshot diamonds =
        new DrawerSnapshot(
            DemoDrawer.full().instruments().stream()
                .filter(d -> d.properties().kind().isDiamond())
                .toList());
    CutPlan plan =
        Planner.plan(
            ACase.of(Procedure.ACCESS_CAVITY)
                .layer("enamel", 1.5)
                .layer("dentine", 4)
                .keep("dentine", 0.5)
                .water(11)
                .build(),
            diamonds,
            QUICK);
    if (plan.refused()) {
      assertEquals("pulp-heat", plan.findings().get(0).code());
    } else {
      assertTrue(plan.pulp().peakRiseK().typical() < 5.5);
    }
    assertTrue(
        plan.findings().stream()
            .anyMatch(f -> f.code().equals("heat-remedies") || f.code().equals("pulp-heat")),
        plan.findings().toString());
  }
}
