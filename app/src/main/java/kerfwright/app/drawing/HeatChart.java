package kerfwright.app.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.HeatCurve;

/** Rise at the pulp wall against time: band, typical line, screening limit, beginning of steps. */
public final class HeatChart {
  private static final double WIDTH = 320;
  private static final double HEIGHT = 236;
  private static final double LEFT = 34;
  private static final double RIGHT = 310;
  private static final double TOP = 46;
  private static final double BOTTOM = 186;
  private static final int MOST_POINTS = 240;

  private final Say say;
  private final HeatCurve curve;
  private final double limitK;
  private final double lowest;
  private final double highest;
  private final double end;

  private HeatChart(Say say, HeatCurve curve, double limitK) {
    if (curve.timesS().size() < 2) {
      throw new IllegalArgumentException("A heat chart needs at least two points in time");
    }
    this.say = say;
    this.curve = curve;
    this.limitK = limitK;
    double least = Math.min(0, Collections.min(curve.lowK()));
    double most = Math.max(limitK, Collections.max(curve.highK()));
    double air = 0.08 * (most - least);
    this.lowest = least < 0 ? least - air : 0;
    this.highest = most + air;
    this.end = curve.timesS().get(curve.timesS().size() - 1);
  }

  /**
   * Draws the chart.
   *
   * @param stepStartsS when each step begins, on the curve's own clock
   */
  public static String draw(
      Say say, String id, HeatCurve curve, double limitK, List<Double> stepStartsS) {
    return new HeatChart(say, curve, limitK).draw(id, stepStartsS);
  }

  private String draw(String id, List<Double> stepStartsS) {
    double peak = Collections.max(curve.typicalK());
    Svg svg =
        Svg.image(
            id,
            WIDTH,
            HEIGHT,
            say.at("drawn.heat-title"),
            say.at(
                "drawn.heat-about",
                Figures.of(say, end),
                Figures.of(say, peak),
                Figures.of(say, Collections.max(curve.highK())),
                Figures.of(say, Collections.min(curve.lowK())),
                Figures.of(say, limitK),
                stepStartsS.size()));
    band(svg);
    axes(svg);
    scale(svg);
    svg.line(LEFT, y(limitK), RIGHT, y(limitK), Pen.ACCENT_GUIDE, "limit");
    svg.text(
        RIGHT,
        y(limitK) - 4,
        Anchor.END,
        Type.ACCENT,
        say.at("drawn.heat-limit", Figures.of(say, limitK)));
    svg.polyline(line(curve.typicalK()), Pen.CURVE, "typical");
    steps(svg, stepStartsS);
    svg.text(8, 14, Anchor.START, Type.PLAIN, say.at("drawn.heat-rise"));
    svg.text(RIGHT, BOTTOM + 28, Anchor.END, Type.PLAIN, say.at("drawn.heat-time"));
    svg.rect(LEFT, BOTTOM + 33, 16, 9, Pen.BAND);
    svg.line(LEFT, BOTTOM + 37.5, LEFT + 16, BOTTOM + 37.5, Pen.CURVE);
    svg.text(LEFT + 22, BOTTOM + 41.5, Anchor.START, Type.QUIET, say.at("drawn.heat-band"));
    return svg.finish();
  }

  /** Where times and rises stand, for a script that moves along the curve. */
  private void scale(Svg svg) {
    svg.open(
            "g",
            "class",
            "time-scale",
            "data-left",
            Svg.number(LEFT),
            "data-right",
            Svg.number(RIGHT),
            "data-top",
            Svg.number(TOP),
            "data-bottom",
            Svg.number(BOTTOM),
            "data-low",
            Double.toString(lowest),
            "data-high",
            Double.toString(highest),
            "data-end",
            Double.toString(end))
        .close("g");
  }

  private void band(Svg svg) {
    List<Svg.Point> outline = new ArrayList<>(line(curve.highK()));
    List<Svg.Point> back = new ArrayList<>(line(curve.lowK()));
    Collections.reverse(back);
    outline.addAll(back);
    svg.polygon(outline, Pen.BAND, "spread");
  }

  private void axes(Svg svg) {
    double upright = Figures.tick((BOTTOM - TOP) / (highest - lowest), 24);
    for (double k = Math.ceil(lowest / upright) * upright; k <= highest; k += upright) {
      svg.line(LEFT - 3, y(k), LEFT, y(k), Pen.THIN);
      svg.text(
          LEFT - 5,
          y(k) + 3.5,
          Anchor.END,
          Type.QUIET,
          Figures.of(say, Math.round(k / upright) * upright).replace("-", "\u2212"));
    }
    double level = Figures.tick((RIGHT - LEFT) / end, 36);
    for (double s = 0; s <= end * (1 + 1e-9); s += level) {
      svg.line(x(s), BOTTOM, x(s), BOTTOM + 3, Pen.THIN);
      svg.text(
          x(s),
          BOTTOM + 14,
          Anchor.MIDDLE,
          Type.QUIET,
          Figures.of(say, Math.round(s / level) * level));
    }
    svg.path(
        "M"
            + Svg.number(LEFT)
            + " "
            + Svg.number(TOP)
            + "V"
            + Svg.number(BOTTOM)
            + "H"
            + Svg.number(RIGHT),
        Pen.THIN,
        "axes");
    if (lowest < 0) {
      svg.line(LEFT, y(0), RIGHT, y(0), Pen.GUIDE, "zero");
    }
  }

  /** Numbers above the chart, moved apart where steps are short, each with a line down. */
  private void steps(Svg svg, List<Double> starts) {
    double most = starts.isEmpty() ? 17 : Math.min(17, (RIGHT + 8 - LEFT + 8) / starts.size());
    double[] centres =
        Figures.spread(
            starts.stream().map(this::x).toList(),
            Collections.nCopies(starts.size(), most),
            LEFT - 8,
            RIGHT + 8);
    for (int i = 0; i < centres.length; i++) {
      double at = x(starts.get(i));
      svg.polyline(
          List.of(new Svg.Point(centres[i], 36), new Svg.Point(at, TOP), new Svg.Point(at, BOTTOM)),
          Pen.GUIDE,
          "step-start");
      svg.circle(centres[i], 28, 8, Pen.ACCENT_FILL, "step");
      svg.text(centres[i], 32, Anchor.MIDDLE, Type.ON_ACCENT, Integer.toString(i + 1));
    }
  }

  private List<Svg.Point> line(List<Double> values) {
    int every = Math.max(1, (int) Math.ceil(values.size() / (double) MOST_POINTS));
    List<Svg.Point> points = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      if (i % every == 0 || i == values.size() - 1 || peak(values, i)) {
        points.add(new Svg.Point(x(curve.timesS().get(i)), y(values.get(i))));
      }
    }
    return points;
  }

  /** Thinning never drops a turning point. */
  private static boolean peak(List<Double> values, int i) {
    return i > 0
        && i < values.size() - 1
        && (values.get(i) - values.get(i - 1)) * (values.get(i + 1) - values.get(i)) < 0;
  }

  private double x(double seconds) {
    return LEFT + (RIGHT - LEFT) * Math.max(0, Math.min(end, seconds)) / end;
  }

  private double y(double kelvin) {
    return BOTTOM - (BOTTOM - TOP) * (kelvin - lowest) / (highest - lowest);
  }
}
