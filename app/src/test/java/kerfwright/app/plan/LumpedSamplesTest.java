package kerfwright.app.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseFile;
import kerfwright.app.input.BadInput;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.planner.PlanOptions;
import kerfwright.planner.Planner;
import kerfwright.planner.WhatIf;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.heat.CoolSequence;
import kerfwright.planner.heat.SequenceHeat;
import kerfwright.planner.operation.Pace;
import kerfwright.planner.sequence.TimedCut;
import kerfwright.planner.uncertainty.SampledPlan;
import kerfwright.planner.uncertainty.Sampler;
import org.junit.jupiter.api.Test;

/** The samples of a plan lump strokes that repeat; here every stroke is followed beside them. */
class LumpedSamplesTest {
  private static final Path EXAMPLES = Path.of("../examples");
  private static final int SAMPLES = 16;

  /** 0.4 K: a thirtieth of the fall and rise that the examples go through. */
  private static final double WITHIN_K = 0.4;

  @Test
  void overAllExamplesTheBandIsThatOfEveryStroke() throws Exception {
    Wiring wiring = Wiring.production();
    DrawerSnapshot drawer = wiring.demoDrawer().read();
    int judged = 0;
    try (var files = Files.list(EXAMPLES)) {
      for (Path file : files.sorted().toList()) {
        Optional<CutCase> read = read(wiring, file);
        if (read.isPresent() && compared(read.get(), drawer, file.getFileName().toString())) {
          judged++;
        }
      }
    }
    assertTrue(judged > 20, judged + " plans over a living pulp");
  }

  private static Optional<CutCase> read(Wiring wiring, Path file) throws Exception {
    if (!file.toString().endsWith(".yaml")) {
      return Optional.empty();
    }
    try {
      return Optional.of(new CaseFile(wiring.cases()).read(file));
    } catch (BadInput notACase) {
      return Optional.empty();
    }
  }

  private static boolean compared(CutCase c, DrawerSnapshot drawer, String name) {
    WhatIf plan = Planner.whatIf(c, drawer, new PlanOptions(1, 1, true)).orElse(null);
    if (plan == null || !c.pulp().protectsPulp()) {
      return false;
    }
    List<TimedCut> sequence = new ArrayList<>();
    double flow = c.coolant().millilitresPerMinute();
    for (int i = 1; i <= plan.steps(); i++) {
      sequence.add(
          new TimedCut(plan.planned(i), Pace.of(plan.planned(i).work().operation(), flow)));
    }
    if (!SequenceHeat.atThePulp(sequence)) {
      return false;
    }
    SampledPlan every = sampled(c, sequence, LayeredColumn::new);
    SampledPlan lumped = sampled(c, sequence, LayeredColumn::lumping);
    assertEquals(every.peakK().low(), lumped.peakK().low(), WITHIN_K, name);
    assertEquals(every.peakK().typical(), lumped.peakK().typical(), WITHIN_K, name);
    assertEquals(every.peakK().high(), lumped.peakK().high(), WITHIN_K, name);
    for (int i = 0; i < every.curveTimesS().length; i++) {
      String where = name + " at " + every.curveTimesS()[i] + " s";
      assertEquals(every.curveLowK()[i], lumped.curveLowK()[i], WITHIN_K, where);
      assertEquals(every.curveHighK()[i], lumped.curveHighK()[i], WITHIN_K, where);
    }
    return true;
  }

  private static SampledPlan sampled(
      CutCase c, List<TimedCut> sequence, Supplier<LayeredColumn> columns) {
    double lasts = CoolSequence.lastsS(sequence);
    return new Sampler(c, sequence, SAMPLES, lasts, OwnPace.NONE).run(1, columns);
  }
}
