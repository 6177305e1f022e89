package kerfwright.app.drawing;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.PulpHeat;
import kerfwright.quantity.Length;

/** What the section of a tooth says in words, for the labels and for those who do not see it. */
record SectionWords(Say say, CutPlan plan) {
  String title() {
    CutCase c = plan.cutCase();
    return say.at(
        "drawn.section-title",
        say.tooth(c.tooth()),
        c.reference(),
        Labels.procedureWithin(say, c.procedure()));
  }

  String describe() {
    List<String> words = new ArrayList<>();
    List<String> layers = new ArrayList<>();
    for (Layer layer : plan.cutCase().layers()) {
      layers.add(
          say.at(
              "drawn.section-layer",
              Labels.material(say, layer.material()),
              Figures.mm(say, layer.thickness().typical().millimetres())));
    }
    words.add(say.at("drawn.section-layers", String.join("; ", layers)));
    Outline outline = plan.cutCase().outline();
    words.add(
        say.at(
            "drawn.section-outline",
            Figures.capital(Labels.outline(say, outline.shape())),
            Figures.of(say, outline.length().millimetres()),
            Figures.mm(say, outline.width().millimetres())));
    if (plan.steps().isEmpty()) {
      words.add(say.at("drawn.section-no-steps"));
    }
    for (PlannedStep step : plan.steps()) {
      words.add(
          say.at(
              "drawn.section-step",
              step.order(),
              Figures.depth(say, step.fromMm().typical()),
              Figures.depth(say, step.toMm().typical())));
    }
    if (plan.cutCase().keep() != null) {
      words.add(say.at("drawn.sentence", Figures.capital(keep())));
    }
    words.add(say.at("drawn.sentence", Figures.capital(String.join(", ", pulp()))));
    return String.join(" ", words);
  }

  String keep() {
    Keep keep = plan.cutCase().keep();
    if (keep == null) {
      return "";
    }
    String name = Labels.materialWithin(say, keep.materialId());
    Length least = keep.atLeast();
    return least == null
        ? say.at("drawn.section-keep-all", name)
        : say.at("drawn.section-keep", Figures.mm(say, least.millimetres()), name);
  }

  /** State of the pulp and, where the plan tells, the dentine left above it. */
  List<String> pulp() {
    List<String> lines = new ArrayList<>();
    lines.add(
        switch (plan.cutCase().pulp()) {
          case VITAL -> say.at("drawn.section-pulp-vital");
          case NON_VITAL -> say.at("drawn.section-pulp-non-vital");
          case UNKNOWN -> say.at("drawn.section-pulp-unknown");
        });
    PulpHeat pulp = plan.pulp();
    if (pulp != null) {
      Estimate left = pulp.remainingDentineMm();
      lines.add(
          say.at("drawn.section-left", Figures.mm(say, left.typical()).replace(' ', '\u00A0')));
      if (left.low() < left.high()) {
        lines.add(range(say, left.low(), left.high()));
      }
    }
    return lines;
  }

  static String range(Say say, double low, double high) {
    return say.at("drawn.range", Figures.of(say, low), Figures.of(say, high));
  }
}
