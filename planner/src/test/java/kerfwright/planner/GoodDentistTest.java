package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.operation.HeatTarget;
import kerfwright.catalogue.operation.Task;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.operation.Pace;
import kerfwright.planner.plan.Cue;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.DepthFrom;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.rule.Vetoes;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.quantity.Finding;
import org.junit.jupiter.api.Test;

/**
 * Ten cases a good dentist would nod at, each with three drawers, one of which cannot do it. Fields
 * and numbers only, never words.
 */
class GoodDentistTest {
  private static final PlanOptions QUICK = new PlanOptions(8, 1);

  private static CutPlan plan(ACase aCase) {
    return plan(aCase, d -> true);
  }

  private static CutPlan plan(ACase aCase, Predicate<DrawerInstrument> drawer) {
    CutPlan plan = Planner.plan(aCase.build(), DemoDrawer.only(drawer), QUICK);
    CutPlan.PlanTimes times = plan.times();
    assertTrue(times.cutS().typical() <= times.withChangesS().typical(), times.toString());
    assertTrue(times.withChangesS().typical() <= times.chairS().typical(), times.toString());
    return plan;
  }

  /** A drawer of nothing but what a plan takes. */
  private static Predicate<DrawerInstrument> takenBy(CutPlan plan) {
    Set<String> ids =
        plan.steps().stream().map(s -> s.instrument().id()).collect(Collectors.toSet());
    return d -> ids.contains(d.id());
  }

  private static InstrumentProperties what(DrawerInstrument d) {
    return d.properties();
  }

  private static InstrumentProperties what(PlannedStep step) {
    return what(step.instrument());
  }

  private static PlannedStep step(CutPlan plan, String operation) {
    return plan.steps().stream()
        .filter(s -> s.operation().row().id().equals(operation))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + operation + " in " + operations(plan)));
  }

  private static List<String> operations(CutPlan plan) {
    return plan.steps().stream().map(s -> s.operation().row().id()).toList();
  }

  private static boolean said(CutPlan plan, String code) {
    return plan.findings().stream().anyMatch(f -> f.code().equals(code));
  }

  private static ACase molar() {
    return ACase.of(Procedure.ACCESS_CAVITY)
        .tooth(46)
        .layer("enamel", 0.98)
        .layer("dentine", 3.42)
        .outline(Outline.Shape.RECTANGLE, 4, 3);
  }

  @Test
  void case1TheChamberOfAVitalMolarIsOpenedAndItsRoofTakenOff() {
    CutPlan plan = plan(molar());
    assertFalse(plan.refused(), plan.findings().toString());
    List<Task> tasks = plan.steps().stream().map(s -> s.operation().row().task()).toList();
    assertTrue(tasks.indexOf(Task.ENTER) < tasks.indexOf(Task.DEROOF), tasks.toString());
    assertEquals(
        0, step(plan, "enter-chamber").operation().pulpDistanceMm().typical(), 1e-6, "no dentine");
    for (String walls : List.of("remove-roof", "straighten-walls")) {
      InstrumentProperties p = what(step(plan, walls));
      assertTrue(p.safeEnd() || p.shape() == ShapeFamily.ROUND, p.toString());
    }
    assertNull(plan.pulp(), "the pulp is not to live");
    assertNotNull(plan.root());
    assertEquals(10, plan.root().limitK(), 1e-6);
    plan.steps().forEach(s -> assertEquals(HeatTarget.ROOT_SURFACE, s.operation().heat()));
    assertTrue(plan(molar(), d -> !what(d).safeEnd()).refused(), "walls want a smooth tip");
    assertTrue(plan(molar(), d -> what(d).kind().isDiamond()).refused(), "the roof wants a bur");
  }

  @Test
  void case2TheDepthIsToldFromTheCuspTip() {
    CutPlan plan = plan(molar().chamberOnFilm(6.4, 0.3));
    DepthFrom depth = plan.access();
    assertNotNull(depth);
    assertEquals(6.4, depth.mm(), 0.05);
    assertEquals(5.4, depth.stopMarkMm(), 0.05);
    assertEquals(7.4, depth.filmAtMm(), 0.05);
    assertFalse(said(plan, "film-first"));
    PlannedStep bulk = step(plan, "deepen-dentine");
    PlannedStep approach = step(plan, "approach-roof");
    assertTrue(approach.speedUnderLoadRpm().typical() <= bulk.speedUnderLoadRpm().typical());
    assertTrue(approach.rimSpeedMPerS().typical() <= bulk.rimSpeedMPerS().typical());
    assertTrue(approach.loadN().typical() <= bulk.loadN().typical());
    CutPlan few = plan(molar().chamberOnFilm(6.4, 0.3), takenBy(plan));
    assertEquals(operations(plan), operations(few));
    assertEquals(5.4, few.access().stopMarkMm(), 0.05);
    CutPlan discs = plan(molar().chamberOnFilm(6.4, 0.3), d -> !what(d).kind().bladed());
    assertTrue(discs.refused(), "no bur for the last millimetre");
    assertNull(discs.access());
    assertEquals(4.9, plan(molar().chamberOnFilm(6.4, 0.5)).access().stopMarkMm(), 0.05);
  }

  private static ACase metalCeramic() {
    return ACase.of(Procedure.ACCESS_CAVITY)
        .tooth(26)
        .restoration("metal-ceramic")
        .layer("feldspathic-porcelain", 1.2)
        .layer("co-cr-alloy", 0.4)
        .layer("zinc-phosphate", 0.1)
        .layer("dentine", 3.4)
        .outline(Outline.Shape.ELLIPSE, 4, 3);
  }

  @Test
  void case3DiamondInPorcelainCarbideInMetalAndNoStepForCement() {
    CutPlan plan = plan(metalCeramic());
    for (PlannedStep step : plan.steps()) {
      if (step.materialId().equals("feldspathic-porcelain")) {
        assertTrue(what(step).kind().isDiamond(), step.instrument().id());
      }
      if (step.materialId().equals("co-cr-alloy")) {
        assertEquals(InstrumentKind.CARBIDE, what(step).kind());
      }
      assertFalse(step.materialId().equals("zinc-phosphate"), "cement is no step of its own");
    }
    double porcelain = step(plan, "open-porcelain").operation().volumeMm3();
    double area = Math.PI / 4 * 12;
    assertTrue(porcelain > 1.2 * area * 1.1, "the porcelain is opened wider than the metal");
    CutPlan burs = plan(metalCeramic(), d -> !what(d).kind().isDiamond() || what(d).safeEnd());
    assertEquals("blades-in-ceramic", burs.findings().get(0).code(), burs.findings().toString());
    CutPlan diamonds =
        plan(
            metalCeramic(),
            d ->
                !what(d).kind().bladed()
                    || what(d).shape() == ShapeFamily.ROUND && what(d).shank() == ShankType.RA);
    assertTrue(
        diamonds.refused() || said(diamonds, "diamond-in-metal"), diamonds.findings().toString());
  }

  private static ACase zirconiaCrown() {
    return ACase.of(Procedure.CROWN_SECTIONING)
        .tooth(36)
        .restoration("zirconia-3y")
        .layer("zirconia-3y", 1.0)
        .layer("resin-cement", 0.08)
        .layer("dentine", 2.5)
        .keepAll("dentine")
        .outline(Outline.Shape.SLOT, 11, 1.4);
  }

  @Test
  void case4AZirconiaCrownIsSlitWithANarrowHeadAtHalfSpeed() {
    CutPlan plan = plan(zirconiaCrown());
    assertFalse(plan.refused(), plan.findings().toString());
    for (PlannedStep slot : plan.steps()) {
      if (slot.materialId().equals("zirconia-3y")) {
        assertTrue(what(slot).headDiameter().millimetres() <= 1.21, slot.instrument().id());
        assertTrue(slot.speedUnderLoadRpm().typical() >= 79_000);
        assertTrue(slot.speedUnderLoadRpm().typical() <= 201_000);
        assertFalse(slot.stroke().id().equals("against-rotation"));
      }
      if (slot.atFullPedal()) {
        assertTrue(slot.maxRpm() >= slot.handpiece().drive().freeSpeed().rpm());
      }
    }
    assertTrue(plan.cues().stream().anyMatch(c -> c.row().id().equals("spread-crown")));
    CutPlan wide =
        plan(
            zirconiaCrown(),
            d ->
                what(d).headDiameter().millimetres() > 1.3
                    || what(d).headDiameter().millimetres() < 0.9
                    || what(d).grit() == GritClass.FINE);
    assertTrue(said(wide, "slot-as-wide-as-head"), wide.findings().toString());
    assertTrue(plan(zirconiaCrown(), d -> what(d).kind().bladed()).refused());
  }

  private static ACase deepDecay() {
    return ACase.of(Procedure.CAVITY_PREPARATION)
        .tooth(36)
        .deepDecay()
        .layer("enamel", 1.0)
        .layer("carious-dentine", 1.8)
        .layer("dentine", 0.9)
        .outline(Outline.Shape.ELLIPSE, 4.5, 3.5);
  }

  @Test
  void case5DeepDecayIsTakenSlowlyAndNothingSoundFromTheFloor() {
    CutPlan plan = plan(deepDecay());
    assertFalse(plan.refused(), plan.findings().toString());
    for (PlannedStep step : plan.steps()) {
      boolean decay =
          step.operation().layers().stream()
              .anyMatch(l -> l.materialId().equals("carious-dentine"));
      if (decay) {
        assertTrue(step.setSpeedRpm() <= 4_001, step.operation().row().id());
        assertTrue(what(step).kind().bladed());
        assertEquals(ShapeFamily.ROUND, what(step).shape());
      }
      assertTrue(step.toMm().typical() <= 2.8 + 1e-6, "sound dentine of the floor stays");
    }
    boolean byHand =
        plan.cues().stream().anyMatch(c -> c.row().id().equals("excavate-over-pulp"))
            || step(plan, "excavate-over-pulp").operation().row().window().otherTools().size() > 0;
    assertTrue(byHand, "hand first near the pulp");
    CutPlan soft =
        plan(
            deepDecay(),
            d -> what(d).kind() != InstrumentKind.CARBIDE || what(d).shank() == ShankType.FG);
    assertFalse(soft.refused(), soft.findings().toString());
    for (PlannedStep step : soft.steps()) {
      boolean decay = step.materialId().equals("carious-dentine");
      assertTrue(!decay || step.setSpeedRpm() <= 4_001 && what(step).kind().bladed());
    }
    CutPlan fast = plan(deepDecay(), d -> what(d).shank() == ShankType.FG);
    assertTrue(fast.refused(), "decay over a living pulp wants a slow bur");
  }

  private static final Set<String> ON_TOP =
      Set.of("functional-cusp-bevel", "open-contacts", "finish-line", "round-angles");

  private static ACase crown() {
    return ACase.of(Procedure.CROWN_PREPARATION)
        .tooth(16)
        .intended("metal-ceramic")
        .layer("enamel", 1.2)
        .layer("dentine", 3.2)
        .outline(Outline.Shape.PATCH, 9, 6);
  }

  @Test
  void case6ACrownIsGroovedReducedLinedAndSmoothed() {
    CutPlan plan = plan(crown());
    assertFalse(plan.refused(), plan.findings().toString());
    List<String> done = operations(plan);
    assertTrue(done.size() >= 10, done.toString());
    assertTrue(done.indexOf("occlusal-grooves") < done.indexOf("reduce-occlusal"));
    assertTrue(done.indexOf("axial-grooves") < done.indexOf("facial-gingival-plane"));
    assertTrue(done.indexOf("finish-line") < done.indexOf("finish-walls"));
    double taken =
        plan.steps().stream()
            .filter(s -> !ON_TOP.contains(s.operation().row().id()))
            .mapToDouble(s -> s.operation().volumeMm3())
            .sum();
    // occlusal, facial, lingual and two proximal faces of a first upper molar, mm2, times 1.4 mm
    // over the cusps, 1.2 + 0.15 facial, 0.6 lingual and 0.9 proximal
    double faces = 82 * 1.4 + 60 * 1.35 + 36 * 0.6 + 2 * 27 * 0.9;
    assertEquals(faces, taken, 0.1 * faces);
    double bulk = step(plan, "reduce-occlusal").speedUnderLoadRpm().typical();
    assertTrue(step(plan, "finish-line").speedUnderLoadRpm().typical() < bulk);
    assertTrue(step(plan, "finish-walls").speedUnderLoadRpm().typical() < bulk);
    for (PlannedStep step : plan.steps()) {
      if (step.purpose() == Purpose.FINISH) {
        InstrumentProperties p = what(step);
        Integer blades = p.blades();
        GritClass grit = p.grit();
        assertTrue(
            blades != null ? blades >= 12 : grit != null && grit.compareTo(GritClass.FINE) >= 0,
            step.instrument().id());
        double least = 2 * step.operation().areaMm2() / (8 * 3);
        assertTrue(step.times().cutS().typical() >= least, "passes over the surface");
      }
    }
    CutPlan diamonds = plan(crown(), d -> what(d).kind().isDiamond());
    assertFalse(diamonds.refused(), diamonds.findings().toString());
    assertTrue(plan(crown(), d -> !what(d).kind().isDiamond()).refused(), "enamel wants diamond");
  }

  private static ACase highSpot() {
    return ACase.of(Procedure.OCCLUSAL_ADJUSTMENT)
        .tooth(16)
        .restoration("zirconia-3y")
        .layer("zirconia-3y", 1.0)
        .layer("resin-cement", 0.1)
        .layer("dentine", 3.0)
        .outline(Outline.Shape.PATCH, 1.5, 1.2);
  }

  @Test
  void case7AHighSpotOnZirconiaIsMarkedReducedAndPolishedWithDiamond() {
    CutPlan plan = plan(highSpot());
    assertFalse(plan.refused(), plan.findings().toString());
    PlannedStep reduce = step(plan, "reduce-mark");
    assertTrue(reduce.operation().row().repeatMost() > 1, "marked again");
    var left = reduce.operation().remaining().get(0);
    assertEquals("zirconia-3y", left.materialId());
    assertTrue(left.mm().typical() >= 0.5);
    assertEquals(0.5, left.leastMm());
    List<PlannedStep> polishing =
        plan.steps().stream().filter(s -> s.purpose() == Purpose.POLISH).toList();
    assertTrue(polishing.size() >= 2);
    for (PlannedStep step : polishing) {
      assertEquals("diamond", what(step).abrasive(), step.instrument().id());
      assertTrue(
          Set.of(ShapeFamily.FLAME, ShapeFamily.CUP, ShapeFamily.WHEEL)
              .contains(what(step).shape()));
      assertTrue(step.times().cutS().typical() >= 20);
    }
    CutPlan noCups = plan(highSpot(), d -> what(d).shape() != ShapeFamily.CUP);
    assertFalse(noCups.refused(), noCups.findings().toString());
    assertTrue(
        noCups.steps().stream()
            .filter(s -> s.purpose() == Purpose.POLISH)
            .allMatch(s -> what(s).abrasive().equals("diamond")));
    assertTrue(plan(highSpot(), d -> !what(d).abrasive().equals("diamond")).refused());
  }

  private static ACase filling() {
    return ACase.of(Procedure.FINISH_COMPOSITE)
        .tooth(16)
        .layer("composite", 2)
        .layer("dentine", 2)
        .outline(Outline.Shape.PATCH, 5, 4);
  }

  @Test
  void case8ADrawerWithoutFinishersSaysSo() {
    assertFalse(plan(filling()).refused());
    CutPlan burs = plan(filling(), d -> !what(d).kind().isDiamond());
    assertFalse(burs.refused(), burs.findings().toString());
    for (PlannedStep step : burs.steps()) {
      Integer blades = what(step).blades();
      assertTrue(blades == null || blades >= 12, step.instrument().id());
    }
    CutPlan eight =
        plan(
            filling(),
            d ->
                !what(d).kind().isDiamond() && (what(d).blades() == null || what(d).blades() <= 8));
    assertTrue(eight.refused(), "8 blades are no finisher");
    assertTrue(eight.unfilled().get(0).essential());
    assertEquals(Task.FINISH, eight.unfilled().get(0).row().task());
  }

  @Test
  void case9ALivingToothIsNotCutDryAtHighSpeed() {
    CutPlan dry = plan(molar().water(0).handpieces("turbine", "electric-1to5"));
    assertTrue(dry.refused());
    List<Candidate> touches = inDecay(DemoDrawer.full());
    assertFalse(touches.isEmpty(), "slow dry touches are allowed");
    for (Candidate touch : touches) {
      assertTrue(touch.setRpm() <= 4_001, touch.id());
      Pace pace = Pace.of(touch.work().operation(), 0);
      assertTrue(pace.cutS() <= 5 && pace.pauseS() > 0, "five seconds at most, then a pause");
    }
    assertFalse(inDecay(DemoDrawer.only(d -> what(d).kind() == InstrumentKind.STEEL)).isEmpty());
    assertTrue(inDecay(DemoDrawer.only(d -> what(d).shank() == ShankType.FG)).isEmpty());
    assertFalse(plan(molar()).refused());
  }

  /** What may take decay without water, by turbine or at low speed. */
  private static List<Candidate> inDecay(DrawerSnapshot drawer) {
    CutCase c = openDecay().water(0).handpieces("turbine", "electric-1to1").build();
    CandidateSearch search =
        new CandidateSearch(c, drawer.instruments(), Vetoes.all(), OwnPace.NONE);
    return Operations.laid(c).works().stream()
        .filter(w -> w.operation().fromLayer().equals("#carious"))
        .flatMap(w -> search.on(w).candidates().stream())
        .toList();
  }

  private static ACase openDecay() {
    return ACase.of(Procedure.CAVITY_PREPARATION)
        .tooth(36)
        .layer("carious-dentine", 1.2)
        .layer("dentine", 2.4)
        .outline(Outline.Shape.ELLIPSE, 3.5, 2.5);
  }

  private static ACase fibrePost() {
    return ACase.of(Procedure.POST_REMOVAL)
        .tooth(36)
        .pulp(PulpState.NON_VITAL)
        .layer("composite", 3)
        .layer("resin-cement", 0.1)
        .layer("fibre-post", 8)
        .outline(Outline.Shape.CIRCLE, 3, 3);
  }

  @Test
  void case10AFibrePostIsHollowedSlowly() {
    CutPlan plan = plan(fibrePost());
    assertFalse(plan.refused(), plan.findings().toString());
    List<String> done = operations(plan);
    assertTrue(done.indexOf("remove-core") < done.indexOf("expose-collar"), done.toString());
    assertTrue(done.indexOf("expose-collar") < done.indexOf("pilot-hole"), done.toString());
    // a round bur would take more than half an hour at this load and speed: the reamer does it
    Cue hollow =
        plan.cues().stream()
            .filter(c -> c.row().id().equals("hollow-post"))
            .findFirst()
            .orElseThrow();
    assertEquals(plan.steps().size(), hollow.afterStep());
    assertEquals("canal-reamer", hollow.tool());
    assertEquals(new BigDecimal("5.0"), hollow.says().values().get(0), "film at 5 mm");
    double others = plan.times().withChangesS().typical();
    assertTrue(plan.times().chairS().low() >= 58, "from 1 min");
    assertTrue(plan.times().chairS().high() >= 1006, "to 17 min");
    assertTrue(plan.times().chairS().typical() > others, "cutting and chair stay apart");
    for (PlannedStep step : plan.steps()) {
      if (step.materialId().equals("fibre-post")) {
        assertTrue(step.speedUnderLoadRpm().typical() >= 790);
        assertTrue(step.speedUnderLoadRpm().typical() <= 5_001);
      }
    }
    assertNull(plan.pulp());
    assertNotNull(plan.root());
    assertEquals(10, plan.root().limitK(), 1e-6);
    assertEquals(done, operations(plan(fibrePost(), takenBy(plan))));
    CutPlan slow = plan(fibrePost(), d -> what(d).shank() != ShankType.FG);
    assertTrue(slow.refused(), "nothing cuts the core");
  }

  @Test
  void aRefusalIsTheFirstThingSaid() {
    CutPlan none = Planner.plan(molar().build(), new DrawerSnapshot(List.of()), QUICK);
    assertEquals(Finding.Severity.REFUSE, none.findings().get(0).severity());
  }
}
