package kerfwright.app.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.material.Material;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.PulpState;
import kerfwright.planner.plan.CutPlan;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;

/**
 * Section of the tooth through the opening or the surface worked on: layers to scale, depth of each
 * step, what is kept, and the dentine left above the pulp. A refused plan shows the layers alone.
 */
public final class SectionDrawing {
  private static final double WIDTH = 320;
  private static final double PULP = 30;
  private static final double PAGE = 190;
  private static final double CARD = 130;

  private final Say say;
  private final String id;
  private final CutPlan plan;
  private final SectionLayout at;
  private final SectionLabels labels;

  private SectionDrawing(Say say, String id, CutPlan plan, double least) {
    this.say = say;
    this.id = id;
    this.plan = plan;
    SectionLayout first = SectionLayout.of(plan, least);
    double tall = Math.max(least, Math.min(300, labels(first).height() - PULP));
    this.at = SectionLayout.of(plan, tall);
    this.labels = labels(at);
  }

  public static String draw(Say say, String id, CutPlan plan) {
    return new SectionDrawing(say, id, plan, PAGE).draw();
  }

  /** The same no taller than its words need, for a small sheet of paper. */
  public static String low(Say say, String id, CutPlan plan) {
    return new SectionDrawing(say, id, plan, CARD).draw();
  }

  private String draw() {
    double below = at.bottom() + (hasPulp() ? PULP : 6);
    double labelTop = at.top() - 14;
    double floor = Math.max(below, labelTop + labels.height());
    SectionWords words = new SectionWords(say, plan);
    Svg svg = Svg.image(id, WIDTH, floor + 24, words.title(), words.describe());
    layers(svg);
    if (hasPulp()) {
      pulp(svg);
    }
    if (!plan.steps().isEmpty()) {
      new SectionCut(say, plan, at).draw(svg);
    }
    width(svg);
    ruler(svg);
    svg.open(
            "g",
            "class",
            "depth-scale",
            "data-left",
            Svg.number(SectionLayout.LEFT),
            "data-right",
            Svg.number(SectionLayout.RIGHT),
            "data-top",
            Svg.number(at.top()),
            "data-per-mm",
            Double.toString(at.perMm()))
        .close("g");
    keep(svg);
    if (hasPulp() && !plan.steps().isEmpty()) {
      new SectionCut(say, plan, at).remaining(svg);
    }
    labels.draw(svg, SectionLayout.RIGHT, labelTop, floor);
    String scaled =
        say.at(at.widthToScale() ? "drawn.section-scaled" : "drawn.section-depth-scaled");
    String note = plan.steps().isEmpty() ? say.at("drawn.section-layers-only", scaled) : scaled;
    svg.text(8, floor + 17, Anchor.START, Type.QUIET, note);
    return svg.finish();
  }

  private SectionLabels labels(SectionLayout at) {
    SectionLabels labels = new SectionLabels(say);
    List<Layer> stack = plan.cutCase().layers();
    for (int i = 0; i < stack.size(); i++) {
      double middle = (at.boundariesMm().get(i) + at.boundariesMm().get(i + 1)) / 2;
      Range<Length> t = stack.get(i).thickness();
      String words = Figures.mm(say, t.typical().millimetres());
      if (!t.isExact()) {
        words += " " + SectionWords.range(say, t.low().millimetres(), t.high().millimetres());
      }
      String name = Labels.material(say, stack.get(i).material());
      labels.add(at.y(middle), Type.STRONG, name, words);
    }
    if (hasPulp()) {
      List<String> words = new SectionWords(say, plan).pulp();
      labels.add(
          at.bottom() + PULP / 2,
          Type.ACCENT,
          words.get(0),
          words.subList(1, words.size()).toArray(String[]::new));
    }
    double kept = keptMm(at);
    if (kept >= 0) {
      labels.add(at.y(kept), Type.ACCENT, new SectionWords(say, plan).keep());
    }
    return labels;
  }

  private void layers(Svg svg) {
    List<Layer> stack = plan.cutCase().layers();
    boolean turned = false;
    for (int i = 0; i < stack.size(); i++) {
      Material material = stack.get(i).material();
      Hatch hatch = Hatch.of(material);
      turned = i > 0 && Hatch.of(stack.get(i - 1).material()) == hatch && !turned;
      double y = at.y(at.boundariesMm().get(i));
      double height = at.y(at.boundariesMm().get(i + 1)) - y;
      double width = SectionLayout.RIGHT - SectionLayout.LEFT;
      svg.rect(
          SectionLayout.LEFT,
          y,
          width,
          height,
          Pen.LAYER,
          "layer",
          material.group().name().toLowerCase(Locale.ROOT));
      String lines = hatch.path(SectionLayout.LEFT, y, width, height, turned);
      if (!lines.isEmpty()) {
        svg.path(lines, Pen.HATCH);
      }
    }
  }

  private void pulp(Svg svg) {
    List<Svg.Point> outline = new ArrayList<>();
    double y = at.bottom();
    outline.add(new Svg.Point(SectionLayout.RIGHT, y));
    outline.add(new Svg.Point(SectionLayout.LEFT, y));
    for (int i = 0; i <= 24; i++) {
      double u = i / 24.0;
      double x = SectionLayout.LEFT + u * (SectionLayout.RIGHT - SectionLayout.LEFT);
      outline.add(new Svg.Point(x, y + PULP - 4 + 2.5 * Math.sin(4 * Math.PI * u)));
    }
    svg.polygon(outline, Pen.TINT, "pulp");
    svg.line(SectionLayout.LEFT, y, SectionLayout.RIGHT, y, Pen.ACCENT, "pulp-wall");
  }

  private void width(Svg svg) {
    double y = 16;
    String words =
        say.at(
            "drawn.section-wide", Figures.mm(say, plan.cutCase().outline().width().millimetres()));
    svg.line(at.openingLeft(), y + 4, at.openingLeft(), at.top(), Pen.THIN);
    svg.line(at.openingRight(), y + 4, at.openingRight(), at.top(), Pen.THIN);
    Dimension.across(svg, at.openingLeft(), at.openingRight(), y + 6, WIDTH, words);
  }

  private void ruler(Svg svg) {
    double x = SectionLayout.LEFT - 6;
    svg.line(x, at.top(), x, at.bottom(), Pen.THIN, "ruler");
    double step = Figures.tick(at.perMm(), 20);
    for (int i = 0; i * step <= at.totalMm() + 1e-9; i++) {
      double y = at.y(i * step);
      svg.line(x - 3, y, x, y, Pen.THIN);
      svg.text(x - 5, y + 3.5, Anchor.END, Type.QUIET, Figures.of(say, i * step));
    }
    svg.text(x - 5, at.top() - 11, Anchor.END, Type.QUIET, "mm");
  }

  /** Depth that must not be passed, or -1. */
  private double keptMm(SectionLayout at) {
    Keep keep = plan.cutCase().keep();
    List<Layer> stack = plan.cutCase().layers();
    for (int i = 0; keep != null && i < stack.size(); i++) {
      if (stack.get(i).material().id().equals(keep.materialId())) {
        Length least = keep.atLeast();
        double top = at.boundariesMm().get(i);
        return least == null
            ? top
            : Math.max(top, at.boundariesMm().get(i + 1) - least.millimetres());
      }
    }
    return -1;
  }

  private void keep(Svg svg) {
    double kept = keptMm(at);
    if (kept >= 0) {
      svg.line(
          SectionLayout.LEFT,
          at.y(kept),
          SectionLayout.RIGHT,
          at.y(kept),
          Pen.ACCENT_GUIDE,
          "keep");
    }
  }

  private boolean hasPulp() {
    CutCase c = plan.cutCase();
    String last = c.layers().get(c.layers().size() - 1).material().id();
    return plan.pulp() != null
        || (c.pulp() != PulpState.NON_VITAL || plan.steps().isEmpty())
            && (last.equals("dentine") || last.equals("carious-dentine"));
  }
}
