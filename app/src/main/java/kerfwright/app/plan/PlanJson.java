package kerfwright.app.plan;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import kerfwright.app.json.JsonText;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.operation.WholeTime;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.FilledIn;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.Lesion;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.plan.Branch;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.HeatCurve;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.PulpHeat;
import kerfwright.planner.plan.RatioBand;
import kerfwright.planner.plan.Reason;
import kerfwright.planner.plan.RunnerUp;
import kerfwright.quantity.Finding;
import kerfwright.quantity.SourceKey;

/** A plan as the object {@code plan/1}: the order of its fields and its digits never vary. */
public final class PlanJson {
  private static final Say ENGLISH = Say.in(Language.ENGLISH);
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private PlanJson() {}

  public static String text(CutPlan plan) {
    return JsonText.of(of(plan));
  }

  public static ObjectNode of(CutPlan plan) {
    CutCase cutCase = plan.cutCase();
    ObjectNode json = NODES.objectNode();
    json.put("contract", "plan/1");
    json.put("case", cutCase.reference());
    json.put("procedure", cutCase.procedure().id());
    json.putObject("tooth").put("fdi", cutCase.tooth().fdi());
    json.put("pulpState", cutCase.pulp().id());
    json.put("restoration", cutCase.restoration());
    json.put("intended", cutCase.intended());
    Lesion lesion = cutCase.lesion();
    if (lesion == null) {
      json.putNull("lesion");
    } else {
      json.putObject("lesion")
          .put("depth", lesion.depth().id())
          .put("activity", lesion.activity().id());
    }
    outline(json, cutCase.outline());
    json.put("seed", plan.seed());
    json.put("samples", plan.samples());
    json.put("refused", plan.refused());
    layers(json, cutCase);
    ArrayNode steps = json.putArray("steps");
    plan.steps().forEach(step -> steps.add(step(step)));
    PulpHeat pulp = plan.pulp();
    json.set("pulp", pulp == null ? OperationJson.pulpNotJudged(plan) : pulp(plan, pulp));
    json.set("totalTimeS", estimate(plan.totalTimeS()));
    json.set("chairTimeS", estimate(plan.times().chairS()));
    json.set("cutTimeS", estimate(plan.times().cutS()));
    ArrayNode published = json.putArray("publishedWholeS");
    for (WholeTime time : plan.published()) {
      published
          .addObject()
          .put("id", time.id())
          .put("low", time.leastS())
          .put("high", time.mostS())
          .put("source", time.provenance().sources().get(0).key());
    }
    OperationJson.addTo(json, plan);
    ArrayNode branches = json.putArray("branches");
    plan.branches().forEach(branch -> branches.add(branch(branch)));
    ArrayNode others = json.putArray("runnersUp");
    plan.runnersUp().forEach(other -> others.add(runnerUp(other)));
    json.set("findings", findings(plan.findings()));
    json.set("cautions", findings(plan.cautions()));
    return json;
  }

  private static void outline(ObjectNode json, Outline outline) {
    ObjectNode one = json.putObject("outline");
    one.put("shape", outline.shape().id());
    one.set("lengthMm", JsonText.number(outline.length().millimetres()));
    one.set("widthMm", JsonText.number(outline.width().millimetres()));
  }

  private static void layers(ObjectNode json, CutCase cutCase) {
    ArrayNode layers = json.putArray("layers");
    for (Layer layer : cutCase.layers()) {
      ObjectNode one = layers.addObject();
      one.put("material", layer.material().id());
      one.set(
          "thicknessMm",
          estimate(
              new Estimate(
                  layer.thickness().low().millimetres(),
                  layer.thickness().typical().millimetres(),
                  layer.thickness().high().millimetres())));
      one.put("known", layer.known().id());
    }
    json.put("layersFilledIn", cutCase.stackFilledIn());
    json.set("layersSources", sources(cutCase.stackSources()));
    ArrayNode filled = json.putArray("filledIn");
    for (FilledIn field : cutCase.filledIn()) {
      ObjectNode one = filled.addObject();
      one.put("field", field.field());
      one.put("basis", field.basis().label());
      one.set("sources", sources(field.sources()));
    }
  }

  private static ObjectNode step(PlannedStep step) {
    ObjectNode json = NODES.objectNode();
    json.put("order", step.order());
    json.put("layer", step.layer());
    json.put("material", step.materialId());
    json.put("purpose", step.purpose().id());
    json.set("instrument", instrument(step.instrument()));
    json.put("handpiece", step.handpiece().id());
    json.set("setSpeedRpm", JsonText.number(step.setSpeedRpm()));
    json.set("speedUnderLoadRpm", estimate(step.speedUnderLoadRpm()));
    json.set("rimSpeedMPerS", estimate(step.rimSpeedMPerS()));
    json.set("loadN", estimate(step.loadN()));
    json.set("coolantMlPerMin", estimate(step.coolantMlPerMin()));
    json.put("stroke", step.stroke().id());
    json.set("cutSeconds", estimate(step.cutSeconds()));
    json.set("pauseSeconds", estimate(step.pauseSeconds()));
    json.set("fromMm", estimate(step.fromMm()));
    json.set("toMm", estimate(step.toMm()));
    json.set("removalMm3PerMin", estimate(step.removalMm3PerMin()));
    json.set("powerW", estimate(step.powerW()));
    json.set("raUm", estimate(step.raUm()));
    json.set("timeS", estimate(step.timeS()));
    json.set("lifeUsed", estimate(step.lifeUsed()));
    json.put("changeCue", ENGLISH.of(step.changeCue()));
    OperationJson.addTo(json, step);
    ArrayNode reasons = json.putArray("reasons");
    step.reasons().forEach(reason -> reasons.add(reason(reason)));
    json.set("cautions", findings(step.cautions()));
    return json;
  }

  private static ObjectNode branch(Branch branch) {
    ObjectNode json = NODES.objectNode();
    json.put("id", branch.id());
    json.put("tells", ENGLISH.of(branch.tells()));
    json.put("restoration", branch.restoration());
    json.set("sources", sources(branch.sources()));
    json.set("plan", of(branch.plan()));
    return json;
  }

  private static ObjectNode instrument(DrawerInstrument instrument) {
    InstrumentProperties what = instrument.properties();
    ObjectNode json = NODES.objectNode();
    json.put("id", instrument.id());
    json.put("kind", what.kind().id());
    json.put("iso", what.iso());
    json.put("us", what.us());
    json.put("shape", what.shapeName());
    json.put("grit", what.grit() == null ? null : what.grit().label());
    json.put("blades", what.blades());
    json.set("diameterMm", JsonText.number(what.headDiameter().millimetres()));
    json.put("shank", what.shank().name());
    json.put("safeEnd", what.safeEnd());
    json.put("abrasive", what.abrasive().isEmpty() ? null : what.abrasive());
    return json;
  }

  private static ObjectNode reason(Reason reason) {
    ObjectNode json = NODES.objectNode();
    json.put("code", reason.code());
    json.put("text", ENGLISH.of(reason.message()));
    json.put("supports", reason.supports());
    json.put("basis", reason.basis().label());
    json.set("sources", sources(reason.sources()));
    return json;
  }

  /** Of a pulp told of in words alone the figures are null and "inWords" says why. */
  private static ObjectNode pulp(CutPlan plan, PulpHeat pulp) {
    ObjectNode json = NODES.objectNode();
    json.put("judged", true);
    if (plan.pulpInWords()) {
      json.put("inWords", ENGLISH.at("plan.pulp-in-words"));
      json.putNull("peakRiseK");
      json.putNull("secondsAboveLimit");
      json.set("limitK", JsonText.number(pulp.limitK()));
      json.put("band", pulp.band().id());
      json.putNull("cem43Min");
      json.set("remainingDentineMm", estimate(pulp.remainingDentineMm()));
      json.putNull("curve");
      return json;
    }
    json.putNull("inWords");
    json.set("peakRiseK", estimate(pulp.peakRiseK()));
    json.set("secondsAboveLimit", estimate(pulp.secondsAboveLimit()));
    json.set("limitK", JsonText.number(pulp.limitK()));
    json.put("band", pulp.band().id());
    json.set("cem43Min", estimate(pulp.cem43Min()));
    json.set("remainingDentineMm", estimate(pulp.remainingDentineMm()));
    HeatCurve curve = pulp.curve();
    ObjectNode points = json.putObject("curve");
    points.set("timesS", JsonText.numbers(curve.timesS()));
    points.set("lowK", JsonText.numbers(curve.lowK()));
    points.set("typicalK", JsonText.numbers(curve.typicalK()));
    points.set("highK", JsonText.numbers(curve.highK()));
    return json;
  }

  private static ObjectNode runnerUp(RunnerUp other) {
    ObjectNode json = NODES.objectNode();
    json.put("step", other.step());
    json.set("instrument", instrument(other.instrument()));
    json.put("handpiece", other.handpieceId());
    json.put("why", ENGLISH.of(other.why()));
    json.set("costRatio", JsonText.number(other.costRatio()));
    RatioBand time = other.time();
    json.set("timeRatio", estimate(new Estimate(time.low(), time.typical(), time.high())));
    return json;
  }

  private static ArrayNode findings(List<Finding> findings) {
    ArrayNode all = NODES.arrayNode();
    for (Finding finding : findings) {
      ObjectNode json = all.addObject();
      json.put("severity", finding.severity().label());
      json.put("code", finding.code());
      json.put("text", ENGLISH.of(finding.message()));
      json.set("sources", sources(finding.sources()));
    }
    return all;
  }

  private static ArrayNode sources(List<SourceKey> sources) {
    ArrayNode keys = NODES.arrayNode();
    sources.forEach(source -> keys.add(source.key()));
    return keys;
  }

  static ObjectNode estimate(Estimate estimate) {
    ObjectNode json = NODES.objectNode();
    json.set("low", JsonText.number(estimate.low()));
    json.set("typical", JsonText.number(estimate.typical()));
    json.set("high", JsonText.number(estimate.high()));
    return json;
  }
}
