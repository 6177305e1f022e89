package kerfwright.app.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.KeepDefaults;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Reason;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Length;
import kerfwright.quantity.SourceKey;

/** The words of a plan that page, print and command line share. */
public final class Words {
  private Words() {}

  /** What the instrument looks like, so that a hand finds it. */
  public static String instrument(InstrumentProperties what) {
    List<String> parts = new ArrayList<>();
    GritClass grit = what.grit();
    String first = what.kind().label();
    if (grit != null && what.kind().isDiamond()) {
      first = grit.label() + " " + first;
    }
    parts.add(first);
    parts.add(what.shapeName());
    parts.add("head " + size(what.headDiameter()) + " x " + size(what.headLength()) + " mm");
    if (what.blades() != null) {
      parts.add(what.blades() + " blades" + (what.crossCut() ? ", cross-cut" : ""));
    }
    if (grit != null) {
      parts.add("ring " + grit.ring());
    }
    parts.add(what.shank().label() + " shank");
    return String.join(", ", parts);
  }

  /** The same in few words. */
  public static String shortInstrument(InstrumentProperties what) {
    GritClass grit = what.grit();
    String first = grit != null && what.kind().isDiamond() ? grit.label() + " " : "";
    String blades = what.blades() == null ? "" : ", " + what.blades() + " blades";
    return first + what.kind().label() + ", " + what.shapeName() + blades;
  }

  /** The material a step cuts, as people call it. */
  public static String material(CutPlan plan, PlannedStep step) {
    List<Layer> layers = plan.cutCase().layers();
    return step.layer() >= 0 && step.layer() < layers.size()
        ? inSentence(layers.get(step.layer()).material().label())
        : step.materialId();
  }

  /** A label as it stands within a sentence: abbreviations keep their capitals. */
  static String inSentence(String label) {
    boolean word = label.length() > 1 && Character.isLowerCase(label.charAt(1));
    return word ? Character.toLowerCase(label.charAt(0)) + label.substring(1) : label;
  }

  /** True where the instrument of the step before stays in. */
  public static boolean sameInstrument(CutPlan plan, PlannedStep step) {
    int index = plan.steps().indexOf(step);
    return index > 0
        && plan.steps().get(index - 1).instrument().id().equals(step.instrument().id());
  }

  /** Cautions of a step; what the step before said of the same instrument is not said again. */
  public static List<Finding> cautions(CutPlan plan, PlannedStep step) {
    if (!sameInstrument(plan, step)) {
      return step.cautions();
    }
    List<Finding> before = plan.steps().get(plan.steps().indexOf(step) - 1).cautions();
    return step.cautions().stream().filter(caution -> !before.contains(caution)).toList();
  }

  /** All layers in one line, outermost first. */
  public static String layers(CutCase cutCase) {
    return cutCase.layers().stream().map(Words::layer).collect(Collectors.joining("; "));
  }

  public static String severity(Finding finding) {
    return switch (finding.severity()) {
      case REFUSE -> "No";
      case WARN -> "Take care";
      case NOTE -> "Note";
    };
  }

  /** A share of one as per cent. */
  public static String percent(Estimate share) {
    return Figures.withRange(
        new Estimate(share.low() * 100, share.typical() * 100, share.high() * 100), "%");
  }

  /** The number it is ordered by, where one is known. */
  public static String number(InstrumentProperties what) {
    if (what.iso() != null) {
      return "ISO " + what.iso();
    }
    return what.us() != null ? "US " + what.us() : "";
  }

  private static String size(Length length) {
    return Figures.tenth(length.millimetres());
  }

  public static String purpose(Purpose purpose) {
    return switch (purpose) {
      case BULK -> "Remove the bulk";
      case APPROACH -> "Approach with care";
      case FINISH -> "Finish";
      case POLISH -> "Polish";
    };
  }

  /** From where to where, measured from the outer surface. */
  public static String depth(PlannedStep step) {
    return Figures.tenth(step.fromMm().typical()) + " to " + Figures.depth(step.toMm());
  }

  /** One contact, the pause after it, and the whole. */
  public static String howLong(PlannedStep step) {
    return Figures.time(step.timeS()) + " in all: " + contact(step);
  }

  /** One contact and the pause after it. */
  public static String contact(PlannedStep step) {
    return step.pauseSeconds().high() > 0
        ? "cut "
            + Figures.withRange(step.cutSeconds(), "s")
            + ", lift for "
            + Figures.withRange(step.pauseSeconds(), "s")
        : "cut " + Figures.withRange(step.cutSeconds(), "s") + ", then lift";
  }

  public static String water(Estimate mlPerMin) {
    return mlPerMin.high() == 0 ? "none" : Figures.withRange(mlPerMin, "mL/min at the tip");
  }

  public static String layer(Layer layer) {
    return inSentence(layer.material().label()) + " " + Figures.millimetres(layer.thickness());
  }

  public static String outline(Outline outline) {
    String length = Figures.tenth(outline.length().millimetres());
    String width = Figures.tenth(outline.width().millimetres());
    return outline.shape() == Outline.Shape.CIRCLE
        ? "circle " + length + " mm across"
        : outline.shape().id() + " " + length + " x " + width + " mm";
  }

  /** What must remain, filled in where the case does not say; empty where everything may go. */
  public static String keep(CutCase cutCase) {
    Keep keep = KeepDefaults.of(cutCase);
    if (keep == null) {
      return "";
    }
    String usual = cutCase.keep() == null ? " (usual, the case does not say)" : "";
    String label =
        cutCase.layers().stream()
            .map(layer -> layer.material())
            .filter(material -> material.id().equals(keep.materialId()))
            .map(material -> inSentence(material.label()))
            .findFirst()
            .orElse(keep.materialId());
    Length least = keep.atLeast();
    return least == null
        ? "all " + label + ", it is not touched" + usual
        : "at least " + Figures.tenth(least.millimetres()) + " mm " + label + usual;
  }

  /** How sure a reason is: its sources, or its standing where it has none. */
  public static String standing(Reason reason) {
    if (reason.sources().isEmpty()) {
      return " [" + reason.basis().label() + "]";
    }
    String keys = reason.sources().stream().map(SourceKey::key).collect(Collectors.joining(", "));
    return reason.basis() == Basis.SEEN || reason.basis() == Basis.COMMON_PRACTICE
        ? " [" + keys + "]"
        : " [" + keys + "; " + reason.basis().label() + "]";
  }

  /** Keys in brackets; empty where there are none. */
  public static String sources(List<SourceKey> sources) {
    return sources.isEmpty()
        ? ""
        : sources.stream().map(SourceKey::key).collect(Collectors.joining(", ", " [", "]"));
  }
}
