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

  private static ACase bevel() {
    return ACase.of(Procedure.ENAMEL_BEVEL)
        .tooth(11)
        .layer("enamel", 1.5)
        .layer("dentine", 2.5)
        .pulp(PulpState.NON_VITAL)
        .outline(Outline.Shape.BAND, 6, 1);
  }

  private static AnInstrument fine() {
    return AnInstrument.any("D1", InstrumentKind.DIAMOND, GritClass.FINE, null);
  }

  private static String refusal(CutPlan plan) {
    assertTrue(plan.refused(), "should be refused");
    assertTrue(plan.steps().isEmpty());
    return plan.findings().get(0).message().toString();
  }

  @Test
  void aPlainCaseIsAccepted() {
    assertFalse(plan(bevel(), fine().build()).refused());
  }

  @Test
  void anInstrumentWithoutAMaximumSpeedIsNeverUsed() {
    String said = refusal(plan(bevel(), fine().maximum(null).build()));
    assertTrue(said.contains("exclusion.maximum-speed-unknown"), said);
  }

  @ParameterizedTest
  @EnumSource(value = DrawerInstrument.State.class, names = "CLEAN", mode = EnumSource.Mode.EXCLUDE)
  void onlyCleanInstrumentsAreUsed(DrawerInstrument.State state) {
    String said = refusal(plan(bevel(), fine().state(state).build()));
    assertTrue(said.contains("exclusion.not-clean"), said);
  }

  @Test
  void theSetSpeedNeverPassesTheMakersMaximum() {
    CutPlan plan = plan(bevel(), fine().maximum(120_000.0).build());
    assertFalse(plan.steps().isEmpty());
    for (PlannedStep step : plan.steps()) {
      assertTrue(step.setSpeedRpm() <= 120_000);
      assertTrue(step.speedUnderLoadRpm().high() <= 120_000);
    }
  }

  @Test
  void theSetSpeedNeverPassesTheHandpiece() {
    CutPlan plan = plan(bevel().handpieces("electric-1to5"), fine().maximum(450_000.0).build());
    assertTrue(plan.steps().stream().allMatch(s -> s.setSpeedRpm() <= 200_000));
  }

  @Test
  void theShankMustFitAHandpiece() {
    String said =
        refusal(
            plan(
                bevel().handpieces("turbine"),
                fine().shank(ShankType.RA).size(1.2, 4, 22).build()));
    assertTrue(said.contains("exclusion.no-handpiece, values=[RA]"), said);
    assertFalse(plan(bevel().handpieces("electric-1to5"), fine().build()).refused());
  }

  @Test
  void theHeadMustFitTheOperation() {
    String said = refusal(plan(bevel(), fine().size(1.4, 4, 19).build()));
    assertTrue(said.contains("exclusion.head-too-wide, values=[1.4, 1.2]"), said);
    assertFalse(plan(bevel(), fine().size(1.0, 4, 19).build()).refused());
  }

  @Test
  void theInstrumentMustReachTheFloor() {
    ACase deep =
        ACase.of(Procedure.ACCESS_CAVITY)
            .layer("enamel", 2)
            .layer("dentine", 14)
            .outline(Outline.Shape.ELLIPSE, 4, 3);
    String said = refusal(Planner.plan(deep.build(), DemoDrawer.full(), QUICK));
    assertTrue(said.contains("exclusion.too-short"), said);
  }

  @Test
  void noSpeedPassesThreeQuartersOfTheWhirlSpeed() {
    DrawerInstrument slender = fine().size(0.8, 4, 30).maximum(450_000.0).build();
    Instrument worked = Instrument.of(slender);
    assertTrue(worked != null);
    double limit = worked.shaft().whirlLimit().rpm();
    assertTrue(limit < 400_000, "whirl binds before maker and handpiece: " + limit);
    CutPlan plan = plan(bevel(), slender);
    assertTrue(plan.steps().stream().allMatch(s -> s.setSpeedRpm() <= limit + 1));
    assertEquals(0.75, Shaft.WHIRL_SHARE);
  }

  @Test
  void aThinNeckIsStressedMore() {
    Instrument thin = Instrument.of(fine().size(0.5, 3, 25).build());
    Instrument stout = Instrument.of(fine().build());
    assertTrue(thin != null && stout != null);
    assertTrue(thin.shaft().neckStressPa(1, 0) > stout.shaft().neckStressPa(1, 0));
  }

  @Test
  void aWornOutInstrumentIsLeftOut() {
    assertFalse(plan(bevel(), fine().worn(4).build()).refused());
    String said = refusal(plan(bevel(), fine().worn(6).build()));
    assertTrue(said.contains("exclusion.worn-out"), said);
  }

  @Test
  void halfAMillimetreOfDentineStaysOverAVitalPulp() {
    assertEquals(
        "remaining-dentine",
        Planner.plan(decay(0.4).build(), DemoDrawer.full(), QUICK).findings().get(0).code());
    assertFalse(
        Planner.plan(decay(0.4).pulp(PulpState.NON_VITAL).build(), DemoDrawer.full(), QUICK)
            .refused());
    assertFalse(Planner.plan(decay(0.5).build(), DemoDrawer.full(), QUICK).refused());
  }

  private static ACase decay(double dentineMm) {
    return ACase.of(Procedure.CAVITY_PREPARATION)
        .layer("enamel", 1)
        .layer("carious-dentine", 1)
        .layer("dentine", dentineMm);
  }

  @Test
  void anUnknownPulpIsProtectedAsAVitalOne() {
    ACase thin = decay(0.4).pulp(PulpState.UNKNOWN);
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
            .water(0)
            .handpieces("turbine", "electric-1to5");
    String said = refusal(Planner.plan(dry.build(), DemoDrawer.full(), QUICK));
    assertTrue(said.contains("exclusion.dry-at-high-speed, values=[40000]"), said);
    assertFalse(Planner.plan(dry.water(50).build(), DemoDrawer.full(), QUICK).refused());
  }

  @Test
  void littleWaterIsMadeUpForUntilThePulpStaysBelowItsLimit() {
    CutPlan plan =
        Planner.plan(
            ACase.of(Procedure.AMALGAM_REMOVAL)
                .layer("amalgam", 2)
                .layer("dentine", 0.8)
                .keepAll("dentine")
                .outline(Outline.Shape.RECTANGLE, 4, 3)
                .water(11)
                .build(),
            DemoDrawer.full(),
            QUICK);
    if (plan.refused()) {
      assertEquals("pulp-heat", plan.findings().get(0).code());
    } else {
      assertTrue(plan.pulp().peakRiseK().typical() < 5.5);
    }
  }
}
