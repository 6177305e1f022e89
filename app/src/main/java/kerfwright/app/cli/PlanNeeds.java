package kerfwright.app.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseFile;
import kerfwright.app.day.NeedsOfCase;
import kerfwright.app.input.BadInput;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.planner.plan.CutPlan;

/**
 * The instrument types a case's plan needs, for a day file. A type is named by what it is: kind,
 * grit or blades, shape, size in tenths of a millimetre, for example
 * diamond-coarse-taper-round-end-014.
 */
final class PlanNeeds implements NeedsOfCase {
  private static final int FEW_SAMPLES = 1;

  private final Wiring wiring;

  PlanNeeds(Wiring wiring) {
    this.wiring = wiring;
  }

  @Override
  public List<String> of(String caseFile) throws BadInput {
    CutPlan plan =
        wiring
            .plans()
            .plan(
                new CaseFile(wiring.cases()).read(Path.of(caseFile)),
                wiring.demoDrawer().read(),
                FEW_SAMPLES,
                1);
    if (plan.refused()) {
      throw new BadInput(caseFile, "its plan is refused: " + plan.findings().get(0).text());
    }
    return plan.steps().stream()
        .map(step -> typeOf(step.instrument().properties()))
        .distinct()
        .toList();
  }

  /** The name of a type of instrument. */
  static String typeOf(InstrumentProperties p) {
    GritClass grit = p.grit();
    String how = grit != null ? grit.label() : p.blades() == null ? "" : p.blades() + "-blade";
    String words =
        String.join(" ", p.kind().id(), how, p.shape().label())
            + String.format(Locale.ROOT, " %03.0f", p.headDiameter().millimetres() * 10);
    return words.trim().replaceAll("[^a-z0-9]+", "-");
  }
}
