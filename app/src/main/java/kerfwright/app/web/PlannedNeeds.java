package kerfwright.app.web;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseFile;
import kerfwright.app.daypage.CaseNeeds;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.SourceText;
import kerfwright.app.kept.Sitting;
import kerfwright.app.storage.cases.KeptCases;
import kerfwright.app.web.caseform.CaseForm;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.plan.CutPlan;
import kerfwright.practice.daylist.NeedsOfPlan;
import kerfwright.practice.daylist.PieceNeed;
import kerfwright.practice.kept.KeptCase;
import kerfwright.schedule.Need;

/** Needs of a case by its plan with the clean stock of the drawer. */
record PlannedNeeds(Wiring wiring, PlanService service, KeptCases kept) implements CaseNeeds {
  private static final int FEW_SAMPLES = 1;

  @Override
  public Asked of(String caseText) throws BadInput {
    List<UUID> sitting = Sitting.ids(caseText);
    if (sitting.isEmpty()) {
      return needs(file(caseText));
    }
    List<List<Need>> plans = new ArrayList<>();
    List<List<PieceNeed>> pieces = new ArrayList<>();
    for (UUID id : sitting) {
      String form = kept.find(id).map(KeptCase::form).orElse("");
      Asked one = needs(service.read(CaseForm.ofQuery(form).toNode()));
      plans.add(one.needs());
      pieces.add(one.pieces());
    }
    return new Asked(Sitting.tray(plans), PieceNeed.tray(pieces));
  }

  private CutCase file(String caseText) throws BadInput {
    SourceText source;
    try {
      source =
          SourceText.of(
              "case", new ByteArrayInputStream(caseText.getBytes(StandardCharsets.UTF_8)));
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return new CaseFile(wiring.cases()).yaml(source);
  }

  private Asked needs(CutCase cutCase) throws BadInput {
    CutPlan plan = service.plan(cutCase, FEW_SAMPLES, PlanService.SEED);
    if (plan.refused()) {
      throw new BadInput("case", plan.findings().get(0).message());
    }
    return new Asked(NeedsOfPlan.of(plan), PieceNeed.of(plan));
  }
}
