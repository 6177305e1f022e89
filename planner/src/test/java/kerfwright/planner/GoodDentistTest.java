package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.operation.HeatTarget;
import kerfwright.catalogue.operation.Task;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.DepthFrom;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.Purpose;
import kerfwright.quantity.Finding;
import org.junit.jupiter.api.Test;

/**
 * Ten cases a good dentist would nod at, each with a drawer that can do it and with drawers one of
 * which cannot. Fields and numbers only, never words.
 */
class GoodDentistTest {
  private static final PlanOptions QUICK = new PlanOptions(8, 1);

  private static CutPlan plan(ACase aCase) {
    return plan(aCase, d -> true);
  }

  private static CutPlan plan(ACase aCase, Predicate<DrawerInstrument> drawer) {
    return Planner.plan(aCase.build(), DemoDrawer.only(drawer), QUICK);
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
    assertEquals(5.4, plan(molar().chamberOnFilm(6.4, 0.3)).access().stopMarkMm(), 0.05);
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
                    || what(d).shape() == ShapeFamily.ROUND
                        && d.properties().shank() == kerfwright.catalogue.instrument.ShankType.RA);
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
    CutPlan fast = plan(deepDecay(), d -> d.properties().shank().name().equals("FG"));
    assertTrue(fast.refused(), "decay over a living pulp wants a slow bur");
  }

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
    CutPlan touches = plan(deepDecay().water(0).handpieces("electric-1to1"), d -> true);
    for (PlannedStep step : touches.steps()) {
      assertTrue(step.setSpeedRpm() <= 40_000);
    }
    assertFalse(plan(molar()).refused());
  }

  private static ACase fibrePost() {
    return ACase.of(Procedure.POST_EXPOSURE)
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
    assertTrue(done.indexOf("remove-core") >= 0, done.toString());
    for (PlannedStep step : plan.steps()) {
      if (step.materialId().equals("fibre-post")) {
        assertTrue(step.speedUnderLoadRpm().typical() >= 790);
        assertTrue(step.speedUnderLoadRpm().typical() <= 5_001);
      }
    }
    assertNull(plan.pulp());
    assertNotNull(plan.root());
  }

  @Test
  void aRefusalIsTheFirstThingSaid() {
    CutPlan none = Planner.plan(molar().build(), new DrawerSnapshot(List.of()), QUICK);
    assertEquals(Finding.Severity.REFUSE, none.findings().get(0).severity());
  }
}
