package kerfwright.app.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseFile;
import kerfwright.planner.PlanOptions;
import kerfwright.planner.Planner;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.plan.CutPlan;
import kerfwright.quantity.Finding;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tooth and procedure are enough: the chamber of every kind of tooth is reached. */
class EveryToothTest {
  private static final Wiring WIRING = Wiring.production();

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(ints = {11, 12, 13, 14, 15, 16, 17, 31, 32, 33, 34, 35, 36, 37, 41, 42})
  void anAccessIsPlannedWithTheDemoDrawer(int fdi) throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("case.yaml"),
            "case: K-1\ntooth: {fdi: "
                + fdi
                + "}\nprocedure: access-cavity\npulp: vital\n"
                + "handpieces: [turbine, electric-1to5, electric-1to1]\n");
    CutCase c = new CaseFile(WIRING.cases()).read(file);
    CutPlan plan = Planner.plan(c, WIRING.demoDrawer().read(), new PlanOptions(4, 1, true));
    assertEquals(
        java.util.List.of(),
        plan.findings().stream().filter(one -> one.severity() == Finding.Severity.REFUSE).toList());
    assertTrue(
        plan.steps().stream()
            .anyMatch(step -> step.operation().row().id().equals("enter-chamber")));
  }
}
