package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.stack.UsualStacks;
import kerfwright.planner.casework.Contradictions;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.planner.plan.Branch;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A crown of unknown material: a first touch, then a branch for each material. */
class UnknownCrownTest {
  private static final PlanOptions QUICK = new PlanOptions(8, 1);
  private static final double TOUCH_MM = 0.2;
  private static final List<String> ORDER =
      List.of("metal-ceramic", "full-co-cr", "zirconia-3y", "lithium-disilicate");

  private static CutCase unknown(String procedure) {
    return ACase.of(new Procedure(procedure))
        .pulp(PulpState.NON_VITAL)
        .restoration(UsualStacks.UNKNOWN_CROWN)
        .layer("zirconia-3y", 1.25)
        .layer("resin-cement", 0.12)
        .layer("dentine", 3)
        .build();
  }

  private static CutPlan plan(String procedure) {
    return Planner.plan(unknown(procedure), DemoDrawer.full(), QUICK);
  }

  private static InstrumentKind kind(PlannedStep step) {
    return step.instrument().properties().kind();
  }

  private static List<InstrumentKind> kinds(Branch branch) {
    return branch.plan().steps().stream().map(UnknownCrownTest::kind).toList();
  }

  private static Branch branch(CutPlan plan, String restoration) {
    return plan.branches().stream()
        .filter(one -> one.restorationId().equals(restoration))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(strings = {"access-cavity", "crown-sectioning"})
  void nothingIsCutDeeperThanTheFirstTouchBeforeABranchIsChosen(String procedure) {
    CutPlan plan = plan(procedure);
    assertFalse(plan.refused(), plan.findings().toString());
    assertEquals(1, plan.steps().size());
    PlannedStep touch = plan.steps().get(0);
    assertEquals("unknown-crown.first-touch", touch.operation().row().id());
    assertTrue(touch.toMm().typical() <= TOUCH_MM + 1e-9, touch.toMm().toString());
    assertEquals(InstrumentKind.DIAMOND, kind(touch));
    assertEquals("unknown-crown.read-film", plan.cues().get(0).operation().id());
  }

  @ParameterizedTest
  @ValueSource(strings = {"access-cavity", "crown-sectioning"})
  void eachBranchIsAWholePlanOfItsOwnMaterial(String procedure) {
    CutPlan plan = plan(procedure);
    assertEquals(ORDER, plan.branches().stream().map(Branch::restorationId).toList());
    for (Branch branch : plan.branches()) {
      CutPlan its = branch.plan();
      assertFalse(its.refused(), branch.restorationId() + its.findings());
      assertEquals(branch.restorationId(), its.cutCase().restoration());
      assertTrue(its.branches().isEmpty());
      assertTrue(its.cutCase().filled("restoration").isPresent(), "marked as supposed");
      assertTrue(its.cutCase().stackFilledIn(), "usual layers");
      assertTrue(its.steps().size() > 1);
    }
    assertEquals(
        4, plan.branches().stream().map(Branch::sign).distinct().count(), "a sign of its own");
  }

  @ParameterizedTest
  @ValueSource(strings = {"access-cavity", "crown-sectioning"})
  void ceramicStartsWithDiamondAndMetalWithCarbide(String procedure) {
    CutPlan plan = plan(procedure);
    List<InstrumentKind> abrasive =
        List.of(InstrumentKind.DIAMOND, InstrumentKind.SINTERED_DIAMOND);
    assertEquals(
        List.of(InstrumentKind.DIAMOND, InstrumentKind.CARBIDE),
        kinds(branch(plan, "metal-ceramic")).subList(0, 2));
    assertEquals(InstrumentKind.CARBIDE, kinds(branch(plan, "full-co-cr")).get(0));
    assertTrue(abrasive.contains(kinds(branch(plan, "zirconia-3y")).get(0)));
    assertTrue(abrasive.contains(kinds(branch(plan, "lithium-disilicate")).get(0)));
  }

  @Test
  void theFirstTouchIsMadeWithADiamondABranchGoesOnWith() {
    CutPlan plan = plan("access-cavity");
    String first = plan.steps().get(0).instrument().id();
    List<String> next = new ArrayList<>();
    plan.branches().forEach(one -> next.add(one.plan().steps().get(0).instrument().id()));
    assertTrue(next.contains(first), first + " in " + next);
  }

  @Test
  void withoutCarbideTheMetalBranchesStayAndSayWhatIsMissing() {
    DrawerSnapshot drawer =
        DemoDrawer.only(one -> one.properties().kind() != InstrumentKind.CARBIDE);
    CutPlan plan = Planner.plan(unknown("crown-sectioning"), drawer, QUICK);
    assertEquals(ORDER, plan.branches().stream().map(Branch::restorationId).toList());
    assertFalse(plan.refused(), "the touch needs no carbide");
    for (String metal : List.of("metal-ceramic", "full-co-cr")) {
      CutPlan its = branch(plan, metal).plan();
      assertTrue(its.refused() && !its.unfilled().isEmpty(), metal + its.findings());
    }
    assertFalse(branch(plan, "zirconia-3y").plan().refused());
  }

  @Test
  void elsewhereTheMaterialMustBeKnown() {
    assertTrue(
        Contradictions.of(unknown("cavity-preparation")).stream()
            .anyMatch(one -> one.code().equals("unknown-crown-elsewhere")));
    assertTrue(
        Contradictions.of(unknown("access-cavity")).stream()
            .noneMatch(one -> one.field().equals("restoration")));
  }
}
