package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.number.InstrumentResolver;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.heat.CutHeat;
import kerfwright.planner.heat.HeatInputs;
import kerfwright.planner.heat.PulpWall;
import kerfwright.planner.heat.SequenceHeat;
import kerfwright.planner.plan.PulpBand;
import kerfwright.planner.plan.Stroke;
import kerfwright.quantity.Finding;
import org.junit.jupiter.api.Test;

/** The classic mistakes are refused and computed; what is as good as the plan counts as right. */
class WhatHappensTest {
  private static final PlanOptions FEW = new PlanOptions(8, 1);

  private static final WhatHappens CROWN =
      of(
          ACase.of(Procedure.ACCESS_CAVITY)
              .restoration("metal-ceramic")
              .layer("feldspathic-porcelain", 1.2)
              .layer("co-cr-alloy", 0.4)
              .layer("dentine", 3)
              .keep("dentine", 0.5));

  private static WhatHappens of(ACase one) {
    return WhatHappens.of(one.build(), DemoDrawer.full(), FEW).orElseThrow();
  }

  private static WhatHappens aSlotInZirconia() {
    return of(
        ACase.of(Procedure.CROWN_SECTIONING)
            .restoration("zirconia-3y")
            .layer("zirconia-3y", 1.2)
            .layer("resin-cement", 0.1)
            .layer("dentine", 3)
            .outline(Outline.Shape.SLOT, 8, 1.6));
  }

  private static WhatHappens adhesive() {
    return of(
        ACase.of(Procedure.ADHESIVE_CLEAN_UP)
            .layer("adhesive-resin-aged", 0.3)
            .layer("enamel", 0.9)
            .layer("dentine", 2.6)
            .keepAll("enamel")
            .outline(Outline.Shape.PATCH, 4, 3.5));
  }

  private static int step(WhatHappens lesson, String operation) {
    List<Candidate> planned = lesson.planned();
    for (int i = 0; i < planned.size(); i++) {
      if (planned.get(i).work().operation().id().equals(operation)) {
        return i + 1;
      }
    }
    throw new AssertionError(operation);
  }

  private static OwnChoice asPlanned(Candidate c, double water) {
    return new OwnChoice(c.id(), c.handpiece().id(), c.setRpm(), c.stroke(), water);
  }

  private static Consequence.Step done(WhatHappens lesson, String operation, OwnChoice choice) {
    int step = step(lesson, operation);
    return lesson.of(Map.of(step, choice)).steps().get(step - 1);
  }

  private static void refuses(Consequence.Step step, String... codes) {
    List<String> broken = step.broken().stream().map(Finding::code).toList();
    assertTrue(broken.containsAll(List.of(codes)), broken.toString());
    step.broken().forEach(no -> assertFalse(no.sources().isEmpty(), no.code()));
    assertFalse(step.right());
  }

  @Test
  void whatThePlanDoesIsRightAndCostsTheSame() {
    Map<Integer, OwnChoice> all = new HashMap<>();
    for (int i = 0; i < CROWN.planned().size(); i++) {
      all.put(i + 1, asPlanned(CROWN.planned().get(i), 50));
    }
    Consequence same = CROWN.of(all);
    for (Consequence.Step step : same.steps()) {
      assertEquals(List.of(), step.broken());
      assertEquals(1, step.costRatio(), 1e-9);
    }
    assertTrue(same.right());
    assertTrue(CROWN.of(Map.of()).right());
  }

  @Test
  void carbideThroughCeramicChipsItAndSpoilsTheBur() {
    OwnChoice carbide = new OwnChoice("B05", "turbine", 380_000, Stroke.BRUSHING, 50);
    Consequence.Step step = done(CROWN, "open-porcelain", carbide);
    refuses(step, "blades-in-ceramic");
    Candidate did = step.done();
    assertNotNull(did);
    assertTrue(did.lives() > step.planned().lives() * 10, "the bur is spoilt");
    assertTrue(step.costRatio() > WhatHappens.MARGIN);
  }

  @Test
  void aDiamondThroughMetalTakesTwiceAsLongAndMore() {
    OwnChoice diamond = new OwnChoice("D22", "electric-1to5", 180_000, Stroke.AGAINST_ROTATION, 50);
    Consequence.Step step = done(CROWN, "pierce-metal", diamond);
    refuses(step, "diamond-in-metal");
    assertTrue(step.done() != null && step.done().cutS() > 2 * step.planned().cutS());
  }

  @Test
  void manyBladesAreNoBurForBulk() {
    List<DrawerInstrument> drawer = new ArrayList<>(DemoDrawer.full().instruments());
    Map<String, String> row =
        Map.of(
            "kind", "carbide", "shape", "round", "blades", "12", "head_mm", "1.4", "shank", "FG",
            "max_rpm", "400000");
    drawer.add(
        new DrawerInstrument(
            "U01",
            InstrumentResolver.resolve(new DrawerFields(row)).orThrow(),
            0,
            0,
            DrawerInstrument.State.CLEAN));
    WhatHappens bulk =
        WhatHappens.of(CROWN.cutCase(), new DrawerSnapshot(drawer), FEW).orElseThrow();
    OwnChoice many = new OwnChoice("U01", "electric-1to5", 200_000, Stroke.AXIAL, 50);
    Consequence.Step step = done(bulk, "deepen-dentine", many);
    refuses(step, "blades-not-for-this");
    assertTrue(step.costRatio() > WhatHappens.MARGIN, "and slow: " + step.costRatio());
  }

  @Test
  void aSlotHasNoSideWithRotation() {
    WhatHappens slot = aSlotInZirconia();
    Candidate planned = slot.planned().get(0);
    OwnChoice with =
        new OwnChoice(
            planned.id(), planned.handpiece().id(), planned.setRpm(), Stroke.WITH_ROTATION, 50);
    Consequence.Step step = slot.of(Map.of(1, with)).steps().get(0);
    refuses(step, "both-walls-of-a-slot");
    assertTrue(step.done() != null && step.done().loadN() < planned.loadN(), "the pull limits it");
  }

  @Test
  void aDiamondOnBracketAdhesiveScratchesTheEnamel() {
    OwnChoice diamond = new OwnChoice("D04", "electric-1to5", 100_000, Stroke.BRUSHING, 50);
    Consequence.Step step = done(adhesive(), "plane-remnant", diamond);
    refuses(step, "diamond-on-adhesive", "kept-surface-would-be-cut");
  }

  @Test
  void dryOnALivingToothIsRefusedAndToldInWords() {
    WhatHappens cavity =
        of(
            ACase.of(Procedure.CAVITY_PREPARATION)
                .layer("enamel", 1)
                .layer("carious-dentine", 1.2)
                .layer("dentine", 2));
    Map<Integer, OwnChoice> dry = new HashMap<>();
    for (int i = 0; i < cavity.planned().size(); i++) {
      dry.put(i + 1, asPlanned(cavity.planned().get(i), 0));
    }
    Consequence all = cavity.of(dry);
    refuses(all.steps().get(0), "dry-at-high-speed");
    Consequence.Pulp pulp = all.pulp();
    assertNotNull(pulp);
    assertTrue(pulp.dry());
    assertTrue(pulp.ownK().typical() > pulp.plannedK().typical());
    assertFalse(all.right());
    Consequence.Pulp wet = cavity.of(Map.of()).pulp();
    assertNotNull(wet);
    assertFalse(wet.dry());
    assertEquals(PulpBand.BELOW, wet.band());
    assertNull(wet.tooHot());
  }

  @Test
  void anotherInstrumentWithinTheMarginIsRightOneFarBehindIsNot() {
    int step = step(CROWN, "widen-metal");
    Candidate planned = CROWN.planned().get(step - 1);
    int right = 0;
    int tooDear = 0;
    for (String id : List.of("B01", "B02", "B03", "B04", "B05", "B10", "B12", "B13", "B20")) {
      for (double rpm : new double[] {200_000, 60_000, 10_000}) {
        OwnChoice other = new OwnChoice(id, "electric-1to5", rpm, Stroke.AGAINST_ROTATION, 50);
        Consequence.Step is = CROWN.of(Map.of(step, other)).steps().get(step - 1);
        boolean within =
            is.done() != null && is.done().costS() <= WhatHappens.most(planned.costS());
        assertEquals(within && is.broken().isEmpty(), is.right(), id);
        right += is.right() && !id.equals(planned.id()) ? 1 : 0;
        tooDear += is.broken().isEmpty() && !within ? 1 : 0;
      }
    }
    assertTrue(right > 0, "another choice is as good");
    assertTrue(tooDear > 0, "one is allowed and too dear");
  }

  @Test
  void waterThatDoesNotDifferIsThatOfTheWholeCase() {
    CutCase c = CROWN.cutCase();
    List<CutHeat> cuts =
        List.of(new CutHeat(20, 4, 1, 3, 0.5, 0), new CutHeat(30, 2, 1, 2, 0.7, 20));
    PulpWall wall = SequenceHeat.wall(c);
    LayeredColumn column = new LayeredColumn();
    double[] whole = wall.quick(column, cuts, HeatInputs.TYPICAL, 0.5).riseK();
    double[] each = wall.quick(column, cuts, List.of(50.0, 50.0), HeatInputs.TYPICAL, 0.5).riseK();
    assertEquals(whole.length, each.length);
    for (int i = 0; i < whole.length; i++) {
      assertEquals(whole[i], each[i], 1e-9);
    }
    double[] dry = wall.quick(column, cuts, List.of(50.0, 0.0), HeatInputs.TYPICAL, 0.5).riseK();
    assertTrue(dry[150] > whole[150] + 0.1, dry[150] + " dry, " + whole[150] + " wet");
    assertEquals(whole[20], dry[20], 1e-9, "the first cut is wet in both");
  }
}
