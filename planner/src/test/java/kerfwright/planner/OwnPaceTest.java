package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import kerfwright.catalogue.evidence.Family;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.casework.OwnPace.Factor;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.heat.WallHistory;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import org.junit.jupiter.api.Test;

/** A practice's own pace changes times and wear, and nothing that protects the patient. */
class OwnPaceTest {
  private static CutCase removal() {
    return ACase.of(Procedure.COMPOSITE_REMOVAL)
        .layer("composite-aged", 1.2, 1.5, 1.8)
        .layer("dentine", 2.5, 3, 3.5)
        .keepAll("dentine")
        .build();
  }

  private static CutPlan plan(OwnPace pace) {
    return Planner.plan(removal(), DemoDrawer.full(), new PlanOptions(32, 7, false, pace));
  }

  private static OwnPace overall(double factor) {
    Factor own = new Factor(0.9 * factor, factor, 1.1 * factor);
    return new OwnPace(
        Map.of(Family.ABRASIVE_RATE, own, Family.BLADE_RATE, own), Map.of(), Map.of(), 30);
  }

  private static List<String> instruments(CutPlan plan) {
    return plan.steps().stream().map(step -> step.instrument().id()).toList();
  }

  @Test
  void withoutOneThePlanIsAsItWas() {
    assertEquals(
        Planner.plan(removal(), DemoDrawer.full(), new PlanOptions(32, 7)), plan(OwnPace.NONE));
    assertTrue(plan(OwnPace.NONE).findings().stream().noneMatch(f -> f.code().equals("own-pace")));
  }

  @Test
  void aFasterPracticeIsPlannedFasterAtTheSameLoadsAndSpeedsAndNoCooler() {
    CutPlan literature = plan(OwnPace.NONE);
    CutPlan own = plan(overall(0.8));
    assertEquals(
        instruments(literature), instruments(own), "the same choice, so that steps compare");
    for (int i = 0; i < own.steps().size(); i++) {
      PlannedStep before = literature.steps().get(i);
      PlannedStep after = own.steps().get(i);
      assertEquals(0.8, after.ownPace());
      assertEquals(before.loadN().typical(), after.loadN().typical());
      assertEquals(before.setSpeedRpm(), after.setSpeedRpm());
      assertEquals(before.lifeUsed(), after.lifeUsed());
      assertTrue(after.timeS().typical() < before.timeS().typical());
      assertTrue(after.timeS().typical() > 0.7 * before.timeS().typical());
    }
    assertEquals(literature.pulp().peakRiseK().typical(), own.pulp().peakRiseK().typical(), 1e-9);
    assertTrue(own.findings().stream().anyMatch(f -> f.code().equals("own-pace")));
  }

  @Test
  void aSlowerPracticeHeatsLongerAndStaysBelowTheLimit() {
    CutPlan literature = plan(OwnPace.NONE);
    CutPlan own = plan(overall(2));
    assertFalse(own.refused());
    assertTrue(
        own.steps().get(0).timeS().typical() > 1.3 * literature.steps().get(0).timeS().typical());
    assertTrue(own.pulp().peakRiseK().typical() < WallHistory.LIMIT_K);
    assertTrue(
        own.pulp().secondsAboveLimit().typical()
            >= literature.pulp().secondsAboveLimit().typical());
  }

  @Test
  void wearScalesTheLifeAStepUses() {
    OwnPace pace =
        new OwnPace(
            Map.of(),
            Map.of(),
            Map.of(
                InstrumentKind.DIAMOND,
                new Factor(2, 2, 2),
                InstrumentKind.CARBIDE,
                new Factor(2, 2, 2)),
            30);
    CutPlan literature = plan(OwnPace.NONE);
    CutPlan own = plan(pace);
    PlannedStep before = literature.steps().get(0);
    PlannedStep after = own.steps().get(0);
    assertEquals(before.instrument().id(), after.instrument().id());
    assertEquals(2, after.lifeUsed().typical() / before.lifeUsed().typical(), 0.05);
  }

  @Test
  void aBluntInstrumentIsSlowerWhereItWearsFaster() {
    OwnPace pace =
        new OwnPace(Map.of(), Map.of(), Map.of(InstrumentKind.DIAMOND, new Factor(1, 1.5, 2)), 9);
    assertEquals(1, pace.time("enamel", InstrumentKind.DIAMOND, 0), 1e-12);
    assertEquals(
        Math.exp(0.5 * Math.log(3)), pace.time("enamel", InstrumentKind.DIAMOND, 5), 1e-12);
    assertEquals(Factor.BOUND, pace.time("enamel", InstrumentKind.DIAMOND, 1000), 1e-12);
  }

  @Test
  void ownCutsNarrowTheBandsOfTheirInstrumentsAndNoOthers() {
    Factor own = new Factor(0.8, 1, 1.25);
    CutPlan literature = plan(OwnPace.NONE);
    CutPlan narrowed = plan(new OwnPace(Map.of(Family.ABRASIVE_RATE, own), Map.of(), Map.of(), 5));
    assertEquals(instruments(literature), instruments(narrowed));
    for (int i = 0; i < narrowed.steps().size(); i++) {
      PlannedStep before = literature.steps().get(i);
      PlannedStep after = narrowed.steps().get(i);
      double was = before.removalMm3PerMin().high() / before.removalMm3PerMin().low();
      double is = after.removalMm3PerMin().high() / after.removalMm3PerMin().low();
      if (after.instrument().properties().kind().bladed()) {
        assertEquals(was, is, 1e-9);
      } else {
        assertTrue(is < 0.5 * was, is + " of " + was);
      }
    }
  }
}
