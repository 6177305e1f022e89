package kerfwright.app.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kerfwright.catalogue.material.Material;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.PulpState;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;

/**
 * Section of the tooth through the opening or the surface worked on: layers to scale, depth of each
 * step, what is kept, and the dentine left above the pulp. A refused plan shows the layers alone.
 */
public final class SectionDrawing {
  private static final double WIDTH = 320;
  private static final double PULP = 30;

  private final String id;
  private final CutPlan plan;
  private final SectionLayout at;
  private final SectionLabels labels;

  private SectionDrawing(String id, CutPlan plan) {
    this.id = id;
    this.plan = plan;
    SectionLayout first = SectionLayout.of(plan, 190);
    double tall = Math.max(190, Math.min(300, labels(first).height() - PULP));
    this.at = SectionLayout.of(plan, tall);
    this.labels = labels(at);
  }

  public static String draw(String id, CutPlan plan) {
    return new SectionDrawing(id, plan).draw();
  }

  private String draw() {
    double below = at.bottom() + (hasPulp() ? PULP : 6);
    double labelTop = at.top() - 14;
    double floor = Math.max(below, labelTop + labels.height());
    Svg svg =
        Svg.image(id, WIDTH, floor + 24, SectionWords.title(plan), SectionWords.describe(plan));
    layers(svg);
    if (hasPulp()) {
      pulp(svg);
    }
    if (!plan.steps().isEmpty()) {
      cut(svg);
    }
    width(svg);
    ruler(svg);
    keep(svg);
    remaining(svg);
    labels.draw(svg, SectionLayout.RIGHT, labelTop, floor);
    String note = "Depth to scale" + (at.widthToScale() ? ", width too." : "; width is not.");
    String refused = plan.steps().isEmpty() ? "No steps: layers only. " : "";
    svg.text(SectionLayout.LEFT, floor + 17, Anchor.START, Type.QUIET, refused + note);
    return svg.finish();
  }

  private SectionLabels labels(SectionLayout at) {
    SectionLabels labels = new SectionLabels();
    List<Layer> stack = plan.cutCase().layers();
    for (int i = 0; i < stack.size(); i++) {
      double middle = (at.boundariesMm().get(i) + at.boundariesMm().get(i + 1)) / 2;
      Range<Length> t = stack.get(i).thickness();
      String words = Figures.mm(t.typical().millimetres());
      if (!t.isExact()) {
        words +=
            " ("
                + Figures.of(t.low().millimetres())
                + "\u2013"
                + Figures.of(t.high().millimetres())
                + ")";
      }
      labels.add(at.y(middle), Type.STRONG, stack.get(i).material().label(), words);
    }
    if (hasPulp()) {
      List<String> words = SectionWords.pulp(plan);
      labels.add(
          at.bottom() + PULP / 2,
          Type.ACCENT,
          words.get(0),
          words.subList(1, words.size()).toArray(String[]::new));
    }
    double kept = keptMm(at);
    if (kept >= 0) {
      labels.add(at.y(kept), Type.ACCENT, SectionWords.keep(plan.cutCase()));
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

  /** What is removed, each step's band with its number. */
  private void cut(Svg svg) {
    double left = at.openingLeft();
    double width = at.openingWidth();
    double floor = at.y(at.floorMm());
    double margin = at.walled() ? 0 : 1;
    svg.rect(left, at.top() - 1, width + margin, floor - at.top() + 1, Pen.PAPER, "opening");
    List<Double> wishes = new ArrayList<>();
    List<Double> heights = new ArrayList<>();
    for (PlannedStep step : plan.steps()) {
      double from = at.y(step.fromMm().typical());
      double to = at.y(step.toMm().typical());
      svg.rect(left, from, width, to - from, step.order() % 2 == 1 ? Pen.TINT : Pen.PAPER, "band");
      svg.line(left, to, left + width, to, Pen.THIN);
      wishes.add((from + to) / 2);
      heights.add(SectionLayout.BADGE);
    }
    svg.path(
        "M"
            + Svg.number(left)
            + " "
            + Svg.number(at.top())
            + "V"
            + Svg.number(floor)
            + "H"
            + Svg.number(left + width)
            + (at.walled() ? "V" + Svg.number(at.top()) : ""),
        Pen.INK,
        "wall");
    if (!at.walled()) {
      svg.line(left, at.top(), left + width, at.top(), Pen.GUIDE, "former-surface");
    }
    double[] centres =
        Figures.spread(
            wishes, heights, Double.NEGATIVE_INFINITY, at.shallow() ? at.top() - 6 : floor);
    for (int i = 0; i < centres.length; i++) {
      badge(svg, plan.steps().get(i), left, wishes.get(i), centres[i]);
    }
  }

  private void badge(Svg svg, PlannedStep step, double left, double band, double y) {
    boolean roomy = at.openingWidth() > 92;
    double x = left + (roomy ? 30 : at.openingWidth() / 2);
    boolean thin = at.y(step.toMm().typical()) - at.y(step.fromMm().typical()) < 16;
    if (Math.abs(band - y) > 1 || thin) {
      svg.line(left + 1, band, x - 8, y, Pen.THIN, "leader");
    }
    svg.circle(x, y, 8, Pen.ACCENT_FILL, "step");
    svg.text(x, y + 4, Anchor.MIDDLE, Type.ON_ACCENT, Integer.toString(step.order()));
    if (roomy) {
      String words = "to " + Figures.depth(step.toMm().typical());
      if (thin && !at.shallow()) {
        double room = at.openingRight() - 1 - (x + 11);
        svg.rect(x + 11, y - 6, Math.min(room, Type.PLAIN.width(words) + 2), 12, Pen.PAPER);
      }
      svg.text(x + 13, y + 4, Anchor.START, Type.PLAIN, words);
    }
  }

  private void width(Svg svg) {
    double y = 16;
    String words = Figures.mm(plan.cutCase().outline().width().millimetres()) + " wide";
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
      svg.text(x - 5, y + 3.5, Anchor.END, Type.QUIET, Figures.of(i * step));
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

  /** An arrow from the floor to the pulp. */
  private void remaining(Svg svg) {
    double from = at.y(at.floorMm());
    if (hasPulp() && !plan.steps().isEmpty() && at.bottom() - from > 3) {
      double x = (at.openingLeft() + at.openingRight()) / 2;
      double middle = (from + at.bottom()) / 2;
      svg.arrow(x, middle, x, from, Pen.ACCENT, Pen.ACCENT_FILL, "remaining");
      svg.arrow(x, middle, x, at.bottom(), Pen.ACCENT, Pen.ACCENT_FILL, "remaining");
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
