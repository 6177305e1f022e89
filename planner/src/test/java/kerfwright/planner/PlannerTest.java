package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kerfwright.catalogue.source.Sources;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.quantity.Finding;
import org.junit.jupiter.api.Test;

/** What holds for every plan. */
class PlannerTest {
  private static final PlanOptions SOME = new PlanOptions(32, 7);

  private static ACase metalCeramic() {
    return ACase.of(Procedure.ACCESS_CAVITY)
        .layer("feldspathic-porcelain", 1.0, 1.2, 1.5)
        .layer("co-cr-alloy", 0.3, 0.4, 0.5)
        .layer("zinc-phosphate", 0.1)
        .layer("dentine", 2.5, 3, 3.5);
  }

  @Test
  void theSameSeedGivesTheSamePlan() {
    CutPlan one = Planner.plan(metalCeramic().build(), DemoDrawer.full(), SOME);
    CutPlan two = Planner.plan(metalCeramic().build(), DemoDrawer.full(), SOME);
    assertEquals(one, two);
  }

  @Test
  void anotherSeedMovesTheSpreadButNotTheChoice() {
    CutPlan one = Planner.plan(metalCeramic().build(), DemoDrawer.full(), SOME);
    CutPlan two = Planner.plan(metalCeramic().build(), DemoDrawer.full(), new PlanOptions(32, 8));
    assertNotEquals(one.totalTimeS(), two.totalTimeS());
    assertEquals(
        one.steps().stream().map(s -> s.instrument().id()).toList(),
        two.steps().stream().map(s -> s.instrument().id()).toList());
  }

  @Test
  void stepsFollowEachOtherFromOutsideToTheFloor() {
    CutPlan plan = Planner.plan(metalCeramic().build(), DemoDrawer.full(), SOME);
    double deepest = 0;
    int order = 0;
    for (PlannedStep step : plan.steps()) {
      assertEquals(++order, step.order());
      assertTrue(step.fromMm().typical() <= deepest + 1e-6, "no layer is skipped");
      assertTrue(step.toMm().typical() >= step.fromMm().typical());
      deepest = Math.max(deepest, step.toMm().typical());
    }
    assertEquals(1.2 + 0.4 + 0.1 + 3, deepest, 0.01, "into the chamber");
  }

  @Test
  void everyFigureIsFiniteAndEveryStepHasReasonsForItsChoice() {
    CutPlan plan = Planner.plan(metalCeramic().build(), DemoDrawer.full(), SOME);
    for (PlannedStep s : plan.steps()) {
      for (Estimate e :
          List.of(
              s.speedUnderLoadRpm(),
              s.rimSpeedMPerS(),
              s.loadN(),
              s.removalMm3PerMin(),
              s.powerW(),
              s.raUm(),
              s.timeS(),
              s.lifeUsed())) {
        assertTrue(Double.isFinite(e.low()) && Double.isFinite(e.high()) && e.low() >= 0);
      }
      assertTrue(s.reasons().stream().anyMatch(r -> r.supports()), s.instrument().id());
      assertTrue(s.operation().endCue().keys().anyMatch(k -> k.startsWith("operation.")));
    }
  }

  @Test
  void everyChoiceShowsItsRunnerUpAndNoRunnerUpIsCheaper() {
    CutPlan plan = Planner.plan(metalCeramic().build(), DemoDrawer.full(), SOME);
    assertTrue(plan.runnersUp().size() >= plan.steps().size() / 2);
    plan.runnersUp().forEach(r -> assertTrue(r.costRatio() >= 0.999, r.toString()));
  }

  @Test
  void theStandingCautionsAreAlwaysThere() {
    for (DrawerSnapshot drawer : List.of(DemoDrawer.full(), new DrawerSnapshot(List.of()))) {
      CutPlan plan = Planner.plan(metalCeramic().build(), drawer, SOME);
      Set<String> codes = new HashSet<>();
      plan.cautions().forEach(f -> codes.add(f.code()));
      for (String always :
          List.of("c01", "c02", "c03", "c04", "c05", "c06", "c08", "c14", "c15", "c16")) {
        assertTrue(codes.contains("caution-" + always), always + " in " + codes);
      }
    }
  }

  @Test
  void everySourceNamedInAPlanStandsInTheRegister() {
    CutPlan plan = Planner.plan(metalCeramic().build(), DemoDrawer.full(), SOME);
    Set<String> known = new HashSet<>();
    Sources.packaged().all().forEach(s -> known.add(s.key().key()));
    plan.steps().stream()
        .flatMap(s -> s.reasons().stream())
        .flatMap(r -> r.sources().stream())
        .forEach(k -> assertTrue(known.contains(k.key()), k.key()));
    plan.findings().stream()
        .flatMap(f -> f.sources().stream())
        .forEach(k -> assertTrue(known.contains(k.key()), k.key()));
  }

  @Test
  void moreWaterAndThickerDentineKeepThePulpCooler() {
    double dry = peak(20, 3);
    double wet = peak(50, 3);
    assertTrue(wet <= dry);
    assertTrue(peak(20, 4.5) <= dry + 0.05);
  }

  private static double peak(double water, double dentineMm) {
    CutPlan plan =
        Planner.plan(
            ACase.of(Procedure.AMALGAM_REMOVAL)
                .layer("amalgam", 1.5)
                .layer("dentine", dentineMm)
                .keepAll("dentine")
                .outline(Outline.Shape.RECTANGLE, 4, 3)
                .water(water)
                .build(),
            DemoDrawer.full(),
            new PlanOptions(4, 1));
    assertFalse(plan.refused(), plan.findings().toString());
    return plan.pulp().peakRiseK().typical();
  }

  @Test
  void aBiggerDrawerNeverMakesAWorsePlan() {
    List<DrawerInstrument> all = DemoDrawer.full().instruments();
    DrawerSnapshot half =
        new DrawerSnapshot(
            java.util.stream.IntStream.range(0, all.size())
                .filter(i -> i % 2 == 0)
                .mapToObj(all::get)
                .toList());
    CutPlan few = Planner.plan(metalCeramic().build(), half, new PlanOptions(4, 1));
    CutPlan many = Planner.plan(metalCeramic().build(), DemoDrawer.full(), new PlanOptions(4, 1));
    assertFalse(many.refused());
    if (!few.refused()) {
      assertTrue(many.totalTimeS().typical() <= 1.2 * few.totalTimeS().typical());
    }
  }

  @Test
  void littleWaterIsWarnedOf() {
    CutPlan plan = Planner.plan(metalCeramic().water(30).build(), DemoDrawer.full(), SOME);
    assertTrue(
        plan.findings().stream()
            .anyMatch(
                f -> f.code().equals("little-water") && f.severity() == Finding.Severity.WARN));
  }

  @Test
  void aPlanNobodyWaitsForStops() {
    Thread.currentThread().interrupt();
    try {
      assertThrows(
          IllegalStateException.class,
          () -> Planner.plan(metalCeramic().build(), DemoDrawer.full(), SOME));
    } finally {
      Thread.interrupted();
    }
  }
}
