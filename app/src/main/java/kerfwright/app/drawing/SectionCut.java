package kerfwright.app.drawing;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;

/** What the steps of a plan take out of a section, and how far it is from there to the pulp. */
record SectionCut(Say say, CutPlan plan, SectionLayout at) {
  /** What is removed, each step's band with its number. */
  void draw(Svg svg) {
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
    boolean roomy = at.openingWidth() > 96;
    double x = left + (roomy ? 16 : at.openingWidth() / 2);
    boolean thin = at.y(step.toMm().typical()) - at.y(step.fromMm().typical()) < 16;
    if (Math.abs(band - y) > 1 || thin) {
      svg.line(left + 1, band, x - 8, y, Pen.THIN, "leader");
    }
    svg.circle(x, y, 8, Pen.ACCENT_FILL, "step");
    svg.text(x, y + 4, Anchor.MIDDLE, Type.ON_ACCENT, Integer.toString(step.order()));
    if (roomy) {
      String words = say.at("drawn.section-to", Figures.depth(say, step.toMm().typical()));
      if (thin && !at.shallow()) {
        double room = at.openingRight() - 1 - (x + 11);
        svg.rect(x + 11, y - 6, Math.min(room, Type.PLAIN.width(words) + 2), 12, Pen.PAPER);
      }
      svg.text(x + 13, y + 4, Anchor.START, Type.PLAIN, words);
    }
  }

  /** An arrow from the floor to the pulp. */
  void remaining(Svg svg) {
    double from = at.y(at.floorMm());
    if (at.bottom() - from > 3) {
      double x = (at.openingLeft() + at.openingRight()) / 2;
      double middle = (from + at.bottom()) / 2;
      svg.arrow(x, middle, x, from, Pen.ACCENT, Pen.ACCENT_FILL, "remaining");
      svg.arrow(x, middle, x, at.bottom(), Pen.ACCENT, Pen.ACCENT_FILL, "remaining");
    }
  }
}
