package kerfwright.app.plan;

import java.util.stream.Collectors;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.KeepDefaults;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.plan.DepthFrom;
import kerfwright.quantity.Length;

/** The words of the case a plan is for, shared as those of the plan are. */
public final class CaseWords {
  private CaseWords() {}

  /** All layers in one line, outermost first. */
  public static String layers(Say say, CutCase cutCase) {
    return cutCase.layers().stream()
        .map(layer -> layer(say, layer))
        .collect(Collectors.joining("; "));
  }

  public static String layer(Say say, Layer layer) {
    return Labels.materialWithin(say, layer.material().id())
        + " "
        + Figures.millimetres(say, layer.thickness());
  }

  public static String outline(Say say, Outline outline) {
    return say.at(
        outline.shape() == Outline.Shape.CIRCLE ? "plan.circle" : "plan.outline",
        size(say, outline.length()),
        size(say, outline.width()),
        Labels.outline(say, outline.shape()));
  }

  /** What must remain, filled in where the case does not say; empty where everything may go. */
  public static String keep(Say say, CutCase cutCase) {
    Keep keep = KeepDefaults.of(cutCase);
    if (keep == null) {
      return "";
    }
    String label = Labels.materialWithin(say, keep.materialId());
    Length least = keep.atLeast();
    String kept =
        least == null
            ? say.at("plan.keep-all", label)
            : say.at("plan.keep-least", label, size(say, least));
    return cutCase.keep() == null ? say.at("plan.keep-usual", kept) : kept;
  }

  /** Where the chamber is looked for. */
  public static String chamber(Say say, DepthFrom depth) {
    return say.at(
        "plan.chamber-depth-is",
        Figures.tenth(say, depth.mm()),
        Figures.tenth(say, depth.plusMinusMm()),
        say.of(depth.landmark()),
        Figures.tenth(say, depth.stopMarkMm()),
        Figures.tenth(say, depth.filmAtMm()));
  }

  static String size(Say say, Length length) {
    return Figures.tenth(say, length.millimetres());
  }
}
