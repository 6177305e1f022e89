package kerfwright.app.chairside;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kerfwright.app.drawing.strip.LayerStrip;
import kerfwright.app.plan.Figures;
import kerfwright.app.plan.PlanDrawings;
import kerfwright.app.plan.Words;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.planner.PlanOptions;
import kerfwright.planner.Planner;
import kerfwright.planner.WhatIf;
import kerfwright.planner.casework.ChamberDepth;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.Cue;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.RunnerUp;
import kerfwright.quantity.Finding;
import org.jspecify.annotations.Nullable;

/**
 * A plan as the chair shows it, as one JSON object: nothing has to be asked for while it is run, so
 * that a lost connection does not matter.
 */
public final class RunSheet {
  private static final int MOST_OTHERS = 6;
  private static final PlanOptions QUICK = new PlanOptions(8, 1);

  private final Say say;
  private final ChairStock stock;

  RunSheet(Say say, ChairStock stock) {
    this.say = say;
    this.stock = stock;
  }

  /** The sheet of a plan that is not refused. */
  ObjectNode json(CutPlan plan, String query, ObjectNode handpieces) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("case", plan.cutCase().reference());
    json.put("tooth", plan.cutCase().tooth().fdi());
    json.put("toothName", say.tooth(plan.cutCase().tooth()));
    json.put("procedure", Labels.procedure(say, plan.cutCase().procedure()));
    json.put("procedureId", plan.cutCase().procedure().id());
    json.put("query", query);
    json.put("total", Figures.time(say, plan.totalTimeS()));
    json.put("pulp", Figures.pulpWall(say, plan));
    var cautions = json.putArray("cautions");
    cautions(plan).forEach(one -> cautions.add(say.of(one.message())));
    WhatIf open =
        Planner.whatIf(plan.cutCase(), stock.withTwinsOf(labels(plan)).snapshot(), QUICK)
            .orElse(null);
    LayerStrip strip = PlanDrawings.strip(say, plan, LayerStrip.Place.CHAIR);
    json.put("stackKey", strip.key());
    var steps = json.putArray("steps");
    for (PlannedStep step : plan.steps()) {
      ObjectNode sheet =
          new StepSheet(say, plan, step)
              .json(strip, stock.item(step.instrument().id()).orElse(null));
      var others = sheet.putArray("others");
      others(open, plan, step).forEach(others::add);
      steps.add(sheet);
    }
    json.set("handpieces", handpieces);
    borders(json.putArray("borders"), plan.cutCase());
    json.put("entersPulp", plan.cutCase().procedure().equals(Procedure.ACCESS_CAVITY));
    var cues = json.putArray("cues");
    for (Cue cue : plan.cues()) {
      cues.addObject()
          .put("afterStep", cue.afterStep())
          .put("ifNeeded", cue.ifNeeded())
          .put("text", Words.cue(say, cue));
    }
    return json;
  }

  /** Where one layer ends and the next begins, and the roof of the chamber: what may be seen. */
  private void borders(ArrayNode all, CutCase c) {
    double mm = 0;
    for (int i = 0; i + 1 < c.layers().size(); i++) {
      mm += c.layers().get(i).thickness().typical().millimetres();
      all.addObject()
          .put("border", i)
          .put("mm", mm)
          .put(
              "words",
              say.at(
                  "chairside.border",
                  Labels.material(say, c.layers().get(i + 1).material().id()),
                  Figures.plain(say, mm)));
    }
    ChamberDepth roof = c.condition().chamber();
    if (roof != null) {
      double at = roof.below().typical().millimetres();
      all.addObject()
          .put("border", Seen.ROOF)
          .put("mm", at)
          .put("words", say.at("chairside.border-roof", Figures.plain(say, at)));
    }
  }

  /** Warnings of this plan alone. */
  public static List<Finding> warnings(CutPlan plan) {
    return plan.findings().stream().filter(one -> one.severity() != Finding.Severity.NOTE).toList();
  }

  /** Warnings of the plan and the standing cautions: read before the first cut. */
  private static List<Finding> cautions(CutPlan plan) {
    List<Finding> all = new ArrayList<>(warnings(plan));
    all.addAll(plan.cautions());
    return all;
  }

  private static Set<String> labels(CutPlan plan) {
    Set<String> labels = new HashSet<>();
    plan.steps().forEach(step -> labels.add(step.instrument().id()));
    return labels;
  }

  /** What may stand in for the step's instrument: a twin, the runner-up, then the cheapest. */
  private List<ObjectNode> others(@Nullable WhatIf open, CutPlan plan, PlannedStep step) {
    if (open == null || step.order() > open.steps()) {
      return List.of();
    }
    List<Candidate> choices = new ArrayList<>(open.choices(step.order()));
    Optional<Candidate> chosen =
        choices.stream().filter(c -> c.id().equals(step.instrument().id())).findFirst();
    double cost = chosen.map(Candidate::costS).orElse(open.planned(step.order()).costS());
    choices.removeIf(c -> c.id().equals(step.instrument().id()));
    String runnerUp =
        plan.runnersUp().stream()
            .filter(one -> one.step() == step.order())
            .map(RunnerUp::instrument)
            .map(one -> one.id())
            .findFirst()
            .orElse("");
    choices.sort(
        java.util.Comparator.comparing((Candidate c) -> !twin(c, step))
            .thenComparing(c -> !c.id().equals(runnerUp))
            .thenComparing(Candidate::costS));
    return choices.stream()
        .limit(MOST_OTHERS)
        .map(c -> other(c, step, runnerUp, c.costS() / Math.max(1e-9, cost)))
        .toList();
  }

  private static boolean twin(Candidate c, PlannedStep step) {
    return c.instrument().properties().equals(step.instrument().properties());
  }

  private ObjectNode other(Candidate c, PlannedStep step, String runnerUp, double ratio) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    StepSheet.named(json, c.id(), stock.item(c.id()).orElse(null));
    StepSheet.instrument(
        json, say, "step-" + step.order() + "-or-" + slug(c.id()), c.instrument().properties());
    json.put("handpiece", say.at("plan.drive-" + c.handpiece().id()));
    json.put("handpieceId", c.handpiece().id());
    json.put("stroke", Labels.stroke(say, c.stroke()));
    json.put("sameStroke", c.stroke() == step.stroke());
    json.put("rpm", say.whole(Math.round(c.setRpm())));
    json.put("setRpm", c.setRpm());
    json.put("load", Handful.words(say, c.loadN()));
    json.put("scales", Handful.scales(say, c.loadN()));
    json.put("typical", c.cutS() + c.pauseS());
    json.put(
        "why",
        twin(c, step)
            ? say.at("chairside.other-twin")
            : say.at(
                c.id().equals(runnerUp) ? "chairside.other-runner-up" : "chairside.other-clean",
                Figures.plain(say, ratio)));
    return json;
  }

  private static String slug(String label) {
    return label.replaceAll("[^A-Za-z0-9_-]", "-");
  }
}
