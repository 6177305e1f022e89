package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.material.Trait;
import kerfwright.catalogue.stack.UsualStacks;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.plan.Branch;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.quantity.Finding;
import org.junit.jupiter.api.Test;

/** A crown of unknown material is touched first; each material it may be has a plan of its own. */
class UnknownCrownTest {
  private static final PlanOptions FEW = new PlanOptions(4, 1);
  private static final CutPlan ACCESS = planned(access());
  private static final CutPlan SECTIONING = planned(sectioning());

  private static CutCase access() {
    return crowned(Procedure.ACCESS_CAVITY).chamberOnFilm(6.4, 0.3).build();
  }

  private static CutCase sectioning() {
    return crowned(Procedure.CROWN_SECTIONING).outline(Outline.Shape.SLOT, 11, 1.4).build();
  }

  private static ACase crowned(Procedure procedure) {
    return ACase.of(procedure)
        .tooth(36)
        .restoration("unknown-crown")
        .layer("feldspathic-porcelain", 1.25)
        .layer("co-cr-alloy", 0.25)
        .layer("zinc-phosphate", 0.12)
        .layer("dentine", 2.8);
  }

  private static CutPlan planned(CutCase c) {
    return Planner.plan(c, DemoDrawer.full(), FEW);
  }

  private static List<kerfwright.catalogue.stack.Branch> rows() {
    return UsualStacks.packaged().branches("unknown-crown", Procedure.ACCESS_CAVITY.id());
  }

  @Test
  void aLightTouchOfAFinerDiamondComesFirst() {
    for (CutPlan plan : List.of(ACCESS, SECTIONING)) {
      assertFalse(plan.refused(), plan.findings().toString());
      assertEquals(1, plan.steps().size());
      PlannedStep touch = plan.steps().get(0);
      assertEquals("first-touch", touch.operation().row().id());
      assertEquals(InstrumentKind.DIAMOND, touch.instrument().properties().kind());
      assertTrue(
          List.of(GritClass.FINE, GritClass.MEDIUM)
              .contains(touch.instrument().properties().grit()));
      assertTrue(touch.loadN().typical() <= 0.5);
      assertTrue(touch.toMm().typical() <= 0.1 + 1e-9);
      assertTrue(plan.findings().stream().anyMatch(f -> f.code().equals("branches")));
    }
  }

  @Test
  void thereIsABranchForEachMaterialItMayBe() {
    assertEquals(
        List.of(
            "metal-ceramic",
            "full-gold",
            "full-co-cr",
            "zirconia-3y",
            "lithium-disilicate",
            "composite"),
        ACCESS.branches().stream().map(Branch::restoration).toList());
    assertEquals(6, SECTIONING.branches().size());
    assertEquals(
        Procedure.COMPOSITE_REMOVAL, SECTIONING.branches().get(5).plan().cutCase().procedure());
  }

  @Test
  void eachBranchReachesTheRightFamily() {
    for (CutPlan plan : List.of(ACCESS, SECTIONING)) {
      for (Branch branch : plan.branches()) {
        String what = plan.cutCase().procedure().id() + " " + branch.id();
        assertFalse(branch.plan().refused(), () -> what + branch.plan().findings());
        boolean reached = false;
        for (PlannedStep step : branch.plan().steps()) {
          Material cut = Materials.packaged().get(step.materialId());
          InstrumentKind kind = step.instrument().properties().kind();
          if (cut.has(Trait.ALLOY)) {
            assertEquals(InstrumentKind.CARBIDE, kind, what);
          } else if (cut.has(Trait.CERAMIC)) {
            assertTrue(kind.isDiamond(), what);
          }
          reached |= cut.has(Trait.CROWN) || cut.has(Trait.RESIN);
        }
        assertTrue(reached, what);
      }
    }
  }

  @Test
  void anAccessOpensTheChamberInEveryBranch() {
    for (Branch branch : ACCESS.branches()) {
      assertTrue(
          branch.plan().steps().stream().anyMatch(s -> s.operation().row().id().contains("enter")),
          branch.id());
      assertTrue(branch.plan().access() != null, branch.id());
    }
  }

  @Test
  void aRowTakenOutIsABranchTakenOut() {
    List<kerfwright.catalogue.stack.Branch> fewer =
        rows().stream().filter(row -> !row.id().equals("zirconia")).toList();
    CutPlan plan = Branching.of(touch(), fewer, c -> touch());
    assertEquals(5, plan.branches().size());
    assertTrue(plan.branches().stream().noneMatch(b -> b.id().equals("zirconia")));
  }

  private static CutPlan touch() {
    return Branching.of(ACCESS, List.of(), c -> ACCESS);
  }

  private static CutPlan nothingFor(CutCase c) {
    return Planner.plan(c, new DrawerSnapshot(List.of()), FEW);
  }

  @Test
  void whereNoBranchCanBeDoneThePlanIsRefused() {
    CutPlan plan = Branching.of(touch(), rows(), UnknownCrownTest::nothingFor);
    assertTrue(plan.refused());
    assertEquals("no-branch", plan.findings().get(0).code());
  }

  @Test
  void aSingleBranchThatCannotBeDoneIsWarnedOf() {
    CutPlan plan =
        Branching.of(
            touch(),
            rows(),
            c -> Objects.equals(c.restoration(), "zirconia-3y") ? nothingFor(c) : touch());
    assertFalse(plan.refused());
    assertEquals(
        1, plan.findings().stream().filter(f -> f.code().equals("branch-refused")).count());
  }

  @Test
  void withoutAnInstrumentForTheTouchThereIsNoPlan() {
    CutPlan plan =
        Planner.plan(
            access(), DemoDrawer.only(i -> i.properties().kind() == InstrumentKind.POLYMER), FEW);
    assertTrue(plan.refused());
    assertEquals(List.of(), plan.branches());
  }

  @Test
  void whatEveryBranchMindsStandsWithThePlan() {
    Map<String, Finding> minded =
        ACCESS.cautions().stream()
            .collect(Collectors.toMap(Finding::code, f -> f, (one, same) -> one));
    for (Branch branch : ACCESS.branches()) {
      branch
          .plan()
          .cautions()
          .forEach(f -> assertTrue(minded.containsKey(f.code()), branch.id() + f.code()));
    }
  }
}
