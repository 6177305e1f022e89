package kerfwright.app.cli;

import java.nio.file.Path;
import java.util.List;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseFile;
import kerfwright.app.day.NeedsOfCase;
import kerfwright.app.input.BadInput;
import kerfwright.planner.PlanOptions;
import kerfwright.planner.plan.CutPlan;
import kerfwright.practice.daylist.NeedsOfPlan;
import kerfwright.quantity.Message;
import kerfwright.schedule.Need;

/** What a case's plan needs, for a day file. */
final class PlanNeeds implements NeedsOfCase {
  private static final int FEW_SAMPLES = 1;

  private final Wiring wiring;

  PlanNeeds(Wiring wiring) {
    this.wiring = wiring;
  }

  @Override
  public List<Need> of(String caseFile) throws BadInput {
    CutPlan plan =
        wiring
            .plans()
            .plan(
                new CaseFile(wiring.cases()).read(Path.of(caseFile)),
                wiring.demoDrawer().read(),
                new PlanOptions(FEW_SAMPLES, 1));
    if (plan.refused()) {
      throw new BadInput(
          caseFile, Message.of("command.plan-refused", plan.findings().get(0).message()));
    }
    return NeedsOfPlan.of(plan);
  }
}
