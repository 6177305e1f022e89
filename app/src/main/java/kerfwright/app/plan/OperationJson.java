package kerfwright.app.plan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import kerfwright.app.json.JsonText;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.operation.Operation;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.explain.OperationWords;
import kerfwright.planner.plan.Cue;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.DepthFrom;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.RootRise;
import kerfwright.planner.plan.StepOperation;
import kerfwright.planner.plan.Unfilled;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** What a plan and its steps say of operations, as fields of {@code plan/1}. */
final class OperationJson {
  private static final Say ENGLISH = Say.in(Language.ENGLISH);
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private OperationJson() {}

  static void addTo(ObjectNode json, PlannedStep step) {
    StepOperation done = step.operation();
    Operation row = done.row();
    json.put("operation", row.id());
    json.put("variant", row.variant());
    json.put("task", row.task().id());
    json.put("operationName", ENGLISH.of(OperationWords.name(row)));
    json.put("endCue", ENGLISH.of(done.endCue()));
    json.put("stopIf", ENGLISH.maybe(done.stopIf()).orElse(null));
    json.put("heatTarget", done.heat().id());
    ArrayNode layers = json.putArray("layers");
    for (StepOperation.LayerCut cut : done.layers()) {
      ObjectNode one = layers.addObject();
      one.put("layer", cut.layer());
      one.put("material", cut.materialId());
      one.set("volumeMm3", JsonText.number(cut.mm3()));
    }
    json.set("volumeMm3", JsonText.number(done.volumeMm3()));
    json.set("areaMm2", JsonText.number(done.areaMm2()));
    json.put("face", row.geometry().face().isEmpty() ? null : row.geometry().face());
    json.set("slotWidthMm", number(done.slotWidthMm()));
    json.set("freeSpeedRpm", JsonText.number(step.handpiece().drive().freeSpeed().rpm()));
    json.set("maxRpm", number(step.maxRpm()));
    if (row.repeatMost() > 1) {
      ObjectNode repeat = json.putObject("repeat");
      repeat.put("until", ENGLISH.of(done.endCue()));
      repeat.put("max", row.repeatMost());
    } else {
      json.putNull("repeat");
    }
    ArrayNode remaining = json.putArray("remaining");
    for (StepOperation.Remaining left : done.remaining()) {
      ObjectNode one = remaining.addObject();
      one.put("material", left.materialId());
      one.set("mm", PlanJson.estimate(left.mm()));
      one.set("leastMm", number(left.leastMm()));
    }
    Estimate pulp = done.pulpDistanceMm();
    json.set("pulpDistanceMm", pulp == null ? NODES.nullNode() : PlanJson.estimate(pulp));
    json.set("cutTimeS", PlanJson.estimate(step.times().cutS()));
    json.set("chairTimeS", PlanJson.estimate(step.times().chairS()));
    json.put("chairTimePublished", step.times().chairPublished());
  }

  static void addTo(ObjectNode json, CutPlan plan) {
    DepthFrom depth = plan.access();
    if (depth == null) {
      json.putNull("depthFrom");
      json.putNull("stopMarkMm");
      json.putNull("filmAtMm");
    } else {
      ObjectNode from = json.putObject("depthFrom");
      from.put("landmark", ENGLISH.of(depth.landmark()));
      from.set("mm", JsonText.number(depth.mm()));
      from.set("plusMinusMm", JsonText.number(depth.plusMinusMm()));
      from.put("basis", depth.basis());
      json.set("stopMarkMm", JsonText.number(depth.stopMarkMm()));
      json.set("filmAtMm", JsonText.number(depth.filmAtMm()));
    }
    Outline outline = plan.cutCase().outline();
    ArrayNode opening = json.putArray("openingMm");
    opening.add(JsonText.number(outline.length().millimetres()));
    opening.add(JsonText.number(outline.width().millimetres()));
    ArrayNode cues = json.putArray("cues");
    for (Cue cue : plan.cues()) {
      ObjectNode one = cues.addObject();
      one.put("afterStep", cue.afterStep());
      one.put("operation", cue.row().id());
      one.put("name", ENGLISH.of(OperationWords.name(cue.row())));
      one.put("task", cue.row().task().id());
      one.put("tool", cue.tool().isEmpty() ? null : cue.tool());
      one.put("ifNeeded", cue.ifNeeded());
      one.put("text", ENGLISH.of(cue.says()));
    }
    root(json, plan.root());
    ArrayNode removed = json.putArray("removed");
    for (Map.Entry<String, Double> one : plan.removedMm3().entrySet()) {
      ObjectNode material = removed.addObject();
      material.put("material", one.getKey());
      material.set("mm3", JsonText.number(one.getValue()));
    }
    ArrayNode unfilled = json.putArray("unfilled");
    for (Unfilled one : plan.unfilled()) {
      ObjectNode missing = unfilled.addObject();
      missing.put("operation", one.row().id());
      missing.put("needs", ENGLISH.of(one.needs()));
      missing.put("essential", one.essential());
    }
  }

  private static void root(ObjectNode json, @Nullable RootRise root) {
    if (root == null) {
      json.putNull("rootSurface");
      return;
    }
    ObjectNode one = json.putObject("rootSurface");
    Estimate peak = root.peakRiseK();
    Message why = root.why();
    one.set("peakRiseK", peak == null ? NODES.nullNode() : PlanJson.estimate(peak));
    one.set("limitK", JsonText.number(root.limitK()));
    one.put("notComputed", why == null ? null : ENGLISH.of(why));
  }

  /** The pulp where it is not to live, or where there is no plan. */
  static JsonNode pulpNotJudged(CutPlan plan) {
    if (plan.refused()) {
      return NODES.nullNode();
    }
    ObjectNode json = NODES.objectNode();
    json.put("judged", false);
    return json;
  }

  private static JsonNode number(@Nullable Double value) {
    return value == null ? NODES.nullNode() : JsonText.number(value);
  }
}
