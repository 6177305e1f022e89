package kerfwright.app.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.PulpHeat;
import kerfwright.quantity.Length;

/** What the section of a tooth says in words, for the labels and for those who do not see it. */
final class SectionWords {
  private SectionWords() {}

  static String title(CutPlan plan) {
    CutCase c = plan.cutCase();
    return "Section of tooth "
        + c.tooth().fdi()
        + " (FDI), case "
        + c.reference()
        + ", "
        + c.procedure().label().toLowerCase(Locale.ROOT);
  }

  static String describe(CutPlan plan) {
    StringBuilder words = new StringBuilder("Layers from outside: ");
    List<String> layers = new ArrayList<>();
    for (Layer layer : plan.cutCase().layers()) {
      layers.add(
          layer.material().label() + " " + Figures.mm(layer.thickness().typical().millimetres()));
    }
    words.append(String.join(", ", layers)).append(". ");
    words.append(Figures.capital(plan.cutCase().outline().shape().id())).append(' ');
    words.append(Figures.of(plan.cutCase().outline().length().millimetres())).append(" by ");
    words.append(Figures.mm(plan.cutCase().outline().width().millimetres())).append(". ");
    if (plan.steps().isEmpty()) {
      words.append("No steps: the plan holds none. ");
    }
    for (PlannedStep step : plan.steps()) {
      words.append("Step ").append(step.order()).append(" from ");
      words.append(Figures.depth(step.fromMm().typical())).append(" to ");
      words.append(Figures.depth(step.toMm().typical())).append(". ");
    }
    if (plan.cutCase().keep() != null) {
      words.append(Figures.capital(keep(plan.cutCase()))).append(". ");
    }
    return words.append(Figures.capital(String.join(", ", pulp(plan)))).append('.').toString();
  }

  static String keep(CutCase cutCase) {
    Keep keep = cutCase.keep();
    if (keep == null) {
      return "";
    }
    String name = keep.materialId().replace('-', ' ');
    for (Layer layer : cutCase.layers()) {
      if (layer.material().id().equals(keep.materialId())) {
        name = layer.material().label().toLowerCase(Locale.ROOT);
      }
    }
    Length least = keep.atLeast();
    return least == null
        ? "keep all " + name
        : "keep " + Figures.mm(least.millimetres()) + " " + name;
  }

  /** State of the pulp and, where the plan tells, the dentine left above it. */
  static List<String> pulp(CutPlan plan) {
    List<String> lines = new ArrayList<>();
    lines.add(
        switch (plan.cutCase().pulp()) {
          case VITAL -> "pulp, vital";
          case NON_VITAL -> "pulp, non-vital";
          case UNKNOWN -> "pulp, treated as vital";
        });
    PulpHeat pulp = plan.pulp();
    if (pulp != null) {
      Estimate left = pulp.remainingDentineMm();
      lines.add("RDT " + Figures.mm(left.typical()));
      if (left.low() < left.high()) {
        lines.add("(" + Figures.of(left.low()) + "\u2013" + Figures.of(left.high()) + ")");
      }
    }
    return lines;
  }
}
