package kerfwright.app.drawing.strip;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kerfwright.app.drawing.Anchor;
import kerfwright.app.drawing.Figures;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.Svg;
import kerfwright.app.drawing.Type;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;

/** A tooth unfolded: which steps are done on which face, and how deep. */
final class FacesDrawing {
  private static final double WIDTH = 540;
  private static final double HEIGHT = 236;
  private static final int LEAST = 3;
  private static final int ON_ONE_LINE = 3;
  private static final List<String> PLACES =
      List.of("facial", "occlusal", "incisal", "lingual", "proximal", "margin");

  private static final List<String> AXIAL = List.of("facial", "lingual", "proximal");

  private FacesDrawing() {}

  /** Empty where the work is on fewer than three faces. */
  static String draw(Say say, String id, CutPlan plan) {
    Map<String, List<PlannedStep>> on = new LinkedHashMap<>();
    for (String place : PLACES) {
      List<PlannedStep> steps = plan.steps().stream().filter(step -> on(place, step)).toList();
      if (!steps.isEmpty()) {
        on.put(place, steps);
      }
    }
    if (on.size() < LEAST) {
      return "";
    }
    String about =
        on.entrySet().stream()
            .map(e -> say.at("drawn.faces-one", name(say, e.getKey()), said(say, e.getValue())))
            .collect(Collectors.joining("; "));
    Svg svg =
        Svg.image(id, WIDTH, HEIGHT, say.at("drawn.faces-title"), say.at("drawn.sentence", about));
    double x = 178;
    double y = 82;
    double wide = 184;
    double high = 74;
    List<PlannedStep> margin = on.get("margin");
    if (margin != null) {
      svg.rect(x - 170, y - 80, wide + 340, high + 152, Pen.ACCENT_GUIDE, "margin");
    }
    face(say, svg, on, "facial", x, y - 72, wide, 70);
    face(say, svg, on, on.containsKey("incisal") ? "incisal" : "occlusal", x, y, wide, high);
    face(say, svg, on, "lingual", x, y + high + 2, wide, 62);
    face(say, svg, on, "proximal", x - 162, y, 160, high);
    face(say, svg, on, "proximal", x + wide + 2, y, 160, high);
    if (margin != null) {
      svg.text(20, 26, Anchor.START, Type.LABEL_STRONG, name(say, "margin"));
      svg.text(20, 46, Anchor.START, Type.LABEL, said(say, margin));
    }
    return svg.finish();
  }

  private static boolean on(String place, PlannedStep step) {
    String face = step.operation().row().geometry().face();
    return face.equals("axial") ? AXIAL.contains(place) : face.equals(place);
  }

  private static void face(
      Say say,
      Svg svg,
      Map<String, List<PlannedStep>> on,
      String face,
      double x,
      double y,
      double wide,
      double high) {
    List<PlannedStep> steps = on.getOrDefault(face, List.of());
    svg.rect(x, y, wide, high, steps.isEmpty() ? Pen.PAPER : Pen.LAYER, "face", "face-" + face);
    svg.rect(x, y, wide, high, Pen.INK);
    double middle = x + wide / 2;
    boolean many = steps.size() > ON_ONE_LINE;
    double top = y + high / 2 - (many ? 14 : 6);
    svg.text(middle, top, Anchor.MIDDLE, Type.LABEL_STRONG, name(say, face));
    if (many) {
      svg.text(middle, top + 20, Anchor.MIDDLE, Type.LABEL, numbers(steps));
      svg.text(middle, top + 40, Anchor.MIDDLE, Type.LABEL, deep(say, steps));
    } else if (!steps.isEmpty()) {
      svg.text(middle, top + 20, Anchor.MIDDLE, Type.LABEL, said(say, steps));
    }
  }

  private static String name(Say say, String face) {
    return say.at("drawn.face-" + face);
  }

  /** "1 2 3: 1.4 mm". */
  private static String said(Say say, List<PlannedStep> steps) {
    return say.at("drawn.faces-steps", numbers(steps), deep(say, steps));
  }

  private static String numbers(List<PlannedStep> steps) {
    return steps.stream().map(s -> Integer.toString(s.order())).collect(Collectors.joining(" "));
  }

  private static String deep(Say say, List<PlannedStep> steps) {
    return Figures.mm(say, steps.stream().mapToDouble(s -> s.toMm().typical()).max().orElse(0));
  }
}
