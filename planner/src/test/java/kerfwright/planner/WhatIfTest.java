package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.sequence.CandidateSearch;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What one change does to a plan, and what is planned again after a swap. */
class WhatIfTest {
  private static final PlanOptions SOME = new PlanOptions(32, 7);
  private static final DrawerSnapshot DRAWER = DemoDrawer.full();
  private static CutCase access;
  private static CutPlan plan;
  private static WhatIf whatIf;

  @BeforeAll
  static void planOnce() {
    access =
        ACase.of(Procedure.ACCESS_CAVITY)
            .layer("feldspathic-porcelain", 1.0, 1.2, 1.5)
            .layer("co-cr-alloy", 0.3, 0.4, 0.5)
            .layer("zinc-phosphate", 0.1)
            .layer("dentine", 2.5, 3, 3.5)
            .build();
    plan = Planner.plan(access, DRAWER, SOME);
    whatIf = Planner.whatIf(access, DRAWER, SOME).orElseThrow();
  }

  @Test
  void withoutAChangeNothingDiffersFromThePlan() {
    for (PlannedStep step : plan.steps()) {
      Varied same = whatIf.ask(Variation.none(step.order()));
      assertEquals(same.before(), same.after());
      assertEquals(step.timeS().low(), same.before().stepTimeS().low(), 1e-9);
      assertEquals(step.instrument().id(), same.before().cut().id());
    }
    assertEquals(
        plan.totalTimeS().high(), whatIf.ask(Variation.none(1)).before().totalTimeS().high(), 1e-9);
  }

  @Test
  void aLighterHandIsSlowerAndAHeavierOneQuicker() {
    double load = whatIf.planned(1).loadN();
    Varied lighter = whatIf.ask(new Variation(1, null, null, load / 2, null, null, 0));
    assertNotNull(lighter.after());
    assertTrue(lighter.after().stepTimeS().typical() > lighter.before().stepTimeS().typical());
  }

  @Test
  void aBluntInstrumentIsSlowerAndAWornOneIsRefused() {
    Varied blunter = whatIf.ask(new Variation(1, null, null, null, null, null, 1));
    assertNotNull(blunter.after());
    assertTrue(blunter.after().stepTimeS().typical() > blunter.before().stepTimeS().typical());
    Varied wornOut = whatIf.ask(new Variation(1, null, null, null, null, null, 40));
    assertNull(wornOut.after());
    assertNotNull(wornOut.refusal());
    assertEquals("worn-out", wornOut.refusal().code());
  }

  @Test
  void noSpeedAboveTheHighestAllowedIsComputed() {
    double highest = WhatIf.highestRpm(whatIf.planned(1));
    Varied atTheLimit = whatIf.ask(new Variation(1, null, highest, null, null, null, 0));
    assertTrue(atTheLimit.refusal() == null || !atTheLimit.refusal().code().equals("too-fast"));
    Varied tooFast = whatIf.ask(new Variation(1, null, highest * 1.01, null, null, null, 0));
    assertNull(tooFast.after());
    assertNotNull(tooFast.refusal());
    assertEquals("too-fast", tooFast.refusal().code());
  }

  @Test
  void dryCuttingOverALivingPulpIsRefused() {
    Varied dry = whatIf.ask(new Variation(1, null, null, null, null, 0.0, 0));
    assertNull(dry.after());
    assertNotNull(dry.refusal());
  }

  @Test
  void anInstrumentNobodyAllowedIsRefusedAndAnAllowedOneComputed() {
    assertNull(whatIf.ask(new Variation(1, "nothing", null, null, null, null, 0)).after());
    List<Candidate> choices = whatIf.choices(1);
    assertEquals(
        choices.size(), choices.stream().map(Candidate::id).distinct().count(), "each once");
    Candidate other =
        choices.stream().filter(c -> !c.id().equals(whatIf.planned(1).id())).findFirst().get();
    Varied varied = whatIf.ask(new Variation(1, other.id(), null, null, null, null, 0));
    assertNotNull(varied.after());
    assertEquals(other.id(), varied.after().cut().id());
  }

  /** Where the operation leaves it open another stroke is computed; where it does not, refused. */
  @Test
  void anotherStrokeIsComputedOrRefusedByTheOperation() {
    boolean open = false;
    boolean told = false;
    for (int step = 1; step <= whatIf.steps(); step++) {
      Candidate planned = whatIf.planned(step);
      for (Stroke stroke : Stroke.values()) {
        Varied varied = whatIf.ask(new Variation(step, null, null, null, stroke, null, 0));
        if (CandidateSearch.againstStroke(planned.work(), stroke).isPresent()) {
          assertNotNull(varied.refusal());
          assertEquals("stroke-not-for-this", varied.refusal().code());
          told = true;
        } else if (varied.after() != null && stroke != planned.stroke()) {
          assertEquals(stroke, varied.after().cut().stroke());
          open = true;
        }
      }
    }
    assertTrue(open && told);
  }

  @Test
  void aRefusedCaseAnswersNoQuestions() {
    assertTrue(Planner.whatIf(access, new DrawerSnapshot(List.of()), SOME).isEmpty());
  }

  @Test
  void afterASwapTheDoneStepsStandAndTheSwappedOutInstrumentIsNotPlannedWithAgain() {
    int swapped = 2;
    PlannedStep done = plan.steps().get(0);
    PlannedStep gone = plan.steps().get(swapped - 1);
    Candidate substitute =
        whatIf.choices(swapped).stream()
            .filter(c -> !c.id().equals(gone.instrument().id()))
            .findFirst()
            .orElseThrow();
    CutPlan rest =
        Planner.plan(
            access,
            DRAWER,
            SOME,
            new FixedSteps(
                List.of(
                    new FixedSteps.Taken(done.instrument().id(), done.handpiece().id()),
                    new FixedSteps.Taken(substitute.id(), substitute.handpiece().id())),
                Set.of(gone.instrument().id())));
    assertFalse(rest.refused());
    assertEquals(done.instrument(), rest.steps().get(0).instrument());
    assertEquals(substitute.id(), rest.steps().get(1).instrument().id());
    assertEquals(gone.fromMm().typical(), rest.steps().get(1).fromMm().typical(), 1e-9);
    for (PlannedStep step : rest.steps().subList(swapped, rest.steps().size())) {
      assertNotEquals(gone.instrument().id(), step.instrument().id());
    }
  }

  @Test
  void aSwapAmongFinishingPassesKeepsThePassesBefore() {
    CutCase finish =
        ACase.of(Procedure.FINISH_COMPOSITE)
            .layer("composite", 1.5)
            .layer("dentine", 2)
            .outline(kerfwright.planner.casework.Outline.Shape.PATCH, 5, 4)
            .build();
    CutPlan first = Planner.plan(finish, DRAWER, SOME);
    assertTrue(first.steps().size() >= 2, "a finish and a pass after it");
    int last = first.steps().size();
    PlannedStep gone = first.steps().get(last - 1);
    List<FixedSteps.Taken> done =
        first.steps().subList(0, last - 1).stream()
            .map(s -> new FixedSteps.Taken(s.instrument().id(), s.handpiece().id()))
            .toList();
    CutPlan rest =
        Planner.plan(finish, DRAWER, SOME, new FixedSteps(done, Set.of(gone.instrument().id())));
    assertEquals(
        first.steps().subList(0, last - 1).stream().map(s -> s.instrument().id()).toList(),
        rest.steps().subList(0, last - 1).stream().map(s -> s.instrument().id()).toList());
    for (PlannedStep step : rest.steps().subList(last - 1, rest.steps().size())) {
      assertNotEquals(gone.instrument().id(), step.instrument().id());
    }
  }

  @Test
  void aSettledInstrumentThatIsNotAllowedIsRefused() {
    CutPlan rest =
        Planner.plan(
            access,
            DRAWER,
            SOME,
            new FixedSteps(List.of(new FixedSteps.Taken("nothing", "turbine")), Set.of()));
    assertTrue(rest.refused());
  }
}
