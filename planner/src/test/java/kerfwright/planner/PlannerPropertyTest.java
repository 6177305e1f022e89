package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PlannedStep;
import org.junit.jupiter.api.Test;

/**
 * Any case a form or file may hold, however odd, gives a plan whose figures are finite and ordered,
 * or a refusal with a reason. Seeded; materials, thicknesses, outlines, water, pulp and handpieces
 * are drawn from all that is allowed.
 */
class PlannerPropertyTest {
  private static final int CASES = 100;
  private static final PlanOptions FEW = new PlanOptions(6, 3);

  private final Random random = new Random(20_260_101);
  private final List<Material> materials = Materials.packaged().all();

  @Test
  void everyPlanIsFiniteAndOrderedOrRefusedWithAReason() throws ReflectiveOperationException {
    int planned = 0;
    for (int n = 0; n < CASES; n++) {
      ACase any = any();
      CutPlan plan =
          assertTimeoutPreemptively(
              Duration.ofSeconds(60), () -> Planner.plan(any.build(), DemoDrawer.full(), FEW));
      String what = "case " + n + ": " + plan.cutCase();
      assertFalse(plan.refused() && plan.findings().isEmpty(), what);
      assertEquals(plan.refused(), plan.steps().isEmpty(), what);
      checked(plan.totalTimeS(), what);
      for (PlannedStep step : plan.steps()) {
        figures(step, what + ", step " + step.order());
      }
      if (plan.pulp() != null) {
        figures(plan.pulp(), what);
      }
      planned += plan.refused() ? 0 : 1;
    }
    assertTrue(planned > CASES / 10, "only " + planned + " were not refused");
  }

  private ACase any() {
    List<Procedure> procedures = Procedure.all();
    ACase built = ACase.of(procedures.get(random.nextInt(procedures.size())));
    int layers = 1 + random.nextInt(5);
    for (int l = 0; l < layers; l++) {
      double typical = decades(0.02, 6);
      built.layer(
          l == layers - 1 && random.nextBoolean() ? "dentine" : anyMaterial(),
          typical * (1 - 0.5 * random.nextDouble()),
          typical,
          typical * (1 + random.nextDouble()));
    }
    Outline.Shape[] shapes = Outline.Shape.values();
    double length = decades(0.6, 20);
    built.outline(shapes[random.nextInt(shapes.length)], length, Math.min(length, decades(0.6, 9)));
    built.water(random.nextInt(4) == 0 ? 0 : decades(1, 200));
    PulpState[] states = PulpState.values();
    built.pulp(states[random.nextInt(states.length)]);
    if (random.nextBoolean()) {
      built.keep("dentine", decades(0.05, 3));
    }
    return switch (random.nextInt(4)) {
      case 0 -> built.handpieces("turbine");
      case 1 -> built.handpieces("electric-1to1", "straight");
      default -> built;
    };
  }

  private String anyMaterial() {
    return materials.get(random.nextInt(materials.size())).id();
  }

  private double decades(double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }

  private static void figures(Record holder, String what) throws ReflectiveOperationException {
    for (RecordComponent component : holder.getClass().getRecordComponents()) {
      if (component.getType() == Estimate.class) {
        checked(
            (Estimate) component.getAccessor().invoke(holder), what + ", " + component.getName());
      }
    }
  }

  private static void checked(Estimate e, String what) {
    assertTrue(Double.isFinite(e.low()) && Double.isFinite(e.high()), what + ": " + e);
    assertTrue(e.low() <= e.typical() && e.typical() <= e.high(), what + ": " + e);
  }
}
