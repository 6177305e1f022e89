package kerfwright.app.chairside;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import kerfwright.app.drawing.instrument.InstrumentDrawing;
import kerfwright.app.drawing.strip.LayerStrip;
import kerfwright.app.plan.Figures;
import kerfwright.app.plan.Words;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.label.OwnCode;
import org.jspecify.annotations.Nullable;

/** One step as the chair shows it: words, drawings, and the figures the clock needs. */
final class StepSheet {
  private final Say say;
  private final CutPlan plan;
  private final PlannedStep step;

  StepSheet(Say say, CutPlan plan, PlannedStep step) {
    this.say = say;
    this.plan = plan;
    this.step = step;
  }

  ObjectNode json(LayerStrip strip, @Nullable StockItem item) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("order", step.order());
    json.put("what", Words.operation(say, step));
    json.put("material", Labels.material(say, step.materialId()));
    json.put("stays", Words.sameInstrument(plan, step));
    json.put("handpiece", Words.drive(say, step));
    json.put("handpieceId", step.handpiece().id());
    json.put("stroke", Words.stroke(say, step));
    json.put("rpm", Figures.turns(say, step.setSpeedRpm()));
    json.put("setRpm", step.setSpeedRpm());
    json.put("load", Handful.words(say, step.loadN().typical()));
    json.put("scales", Handful.scales(say, step.loadN().typical()));
    json.put("water", Words.water(say, step.coolantMlPerMin()));
    json.put("depth", Words.depth(say, step));
    json.put("time", Figures.time(say, step.timeS()));
    ObjectNode band = json.putObject("band");
    band.put("low", step.timeS().low());
    band.put("typical", step.timeS().typical());
    band.put("high", step.timeS().high());
    json.put("literatureS", step.timeS().typical() / step.ownPace());
    json.put("cutS", step.cutSeconds().typical());
    json.put("pauseS", step.pauseSeconds().typical());
    json.put("pace", Words.contact(say, step));
    ObjectNode removed = json.putObject("mm3");
    step.operation().layers().forEach(cut -> removed.put(cut.materialId(), cut.mm3()));
    json.put("cue", Words.doneWhen(say, step));
    json.put("stopIf", Words.stopIf(say, step));
    var cautions = json.putArray("cautions");
    Words.cautions(plan, step).forEach(one -> cautions.add(say.of(one.message())));
    json.put(
        "stage",
        strip.stages().stream()
            .filter(one -> one.stage().steps().contains(step))
            .map(LayerStrip.Picture::svg)
            .findFirst()
            .orElse(""));
    json.put("fromMm", step.fromMm().typical());
    json.put("toMm", step.toMm().typical());
    instrument(json, say, "step-" + step.order(), step.instrument().properties());
    named(json, step.instrument().id(), item);
    return json;
  }

  /** What it is called and by which codes a scanner finds it. */
  static void named(ObjectNode json, String label, @Nullable StockItem item) {
    json.put("label", label);
    var codes = json.putArray("codes");
    codes.add(label);
    if (item == null) {
      json.putNull("item");
    } else {
      json.put("item", item.id().toString());
      codes.add(new OwnCode(OwnCode.Kind.INSTRUMENT, item.id()).text());
    }
  }

  /** What it looks like. */
  static void instrument(ObjectNode json, Say say, String id, InstrumentProperties what) {
    json.put("short", Words.shortInstrument(say, what));
    json.put("looks", Words.instrument(say, what));
    json.put("number", Words.number(what));
    json.put("silhouette", InstrumentDrawing.small(say, id + "-silhouette", what));
    GritClass grit = what.grit();
    json.put("ring", grit == null || grit.ring().equals("none") ? "" : Labels.ring(say, grit));
  }
}
