package kerfwright.app.drawing.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import kerfwright.app.drawing.Anchor;
import kerfwright.app.drawing.Figures;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.Svg;
import kerfwright.app.drawing.Type;
import kerfwright.app.words.Say;

/** A chart as a drawing for paper and for pages without script. */
final class ChartDrawing {
  private static final double WIDTH = 320;
  private static final double HEIGHT = 236;
  private static final double LEFT = 34;
  private static final double RIGHT = 310;
  private static final double TOP = 46;
  private static final double BOTTOM = 186;
  private static final int MOST_POINTS = 240;
  private static final List<Pen> PENS = List.of(Pen.CURVE, Pen.DOTTED);

  private final Say say;
  private final Chart chart;
  private final double lowest;
  private final double highest;
  private final double end;

  ChartDrawing(Say say, Chart chart) {
    this.say = say;
    this.chart = chart;
    this.lowest = chart.lowest();
    this.highest = chart.highest();
    this.end = chart.end();
  }

  String draw(String id) {
    Svg svg = Svg.image(id, WIDTH, HEIGHT, chart.title(), chart.about());
    Chart.Band band = chart.band();
    if (band != null) {
      band(svg, band);
    }
    axes(svg);
    for (int i = 0; i < chart.lines().size(); i++) {
      Chart.Line line = chart.lines().get(i);
      svg.polyline(points(line.x(), line.y()), pen(i), "line");
    }
    chart.spots().forEach(spot -> spot(svg, spot));
    begins(svg);
    level(svg);
    svg.text(8, 14, Anchor.START, Type.PLAIN, chart.upright());
    svg.text(RIGHT, BOTTOM + 28, Anchor.END, Type.PLAIN, chart.across());
    if (band != null || chart.lines().size() > 1) {
      key(svg, band);
    }
    return svg.finish();
  }

  /** Named on the left, where nothing has warmed yet: on the right the name would hide the band. */
  private void level(Svg svg) {
    Chart.Level level = chart.level();
    if (level != null) {
      double y = y(level.y());
      svg.line(LEFT, y, RIGHT, y, Pen.ACCENT_GUIDE, "level");
      svg.rect(LEFT + 2, y - 14, Type.ACCENT.width(level.name()) + 4, 12, Pen.PAPER);
      svg.text(LEFT + 4, y - 4, Anchor.START, Type.ACCENT, level.name());
    }
  }

  private static Pen pen(int line) {
    return PENS.get(Math.min(line, PENS.size() - 1));
  }

  private void band(Svg svg, Chart.Band band) {
    List<Double> x = chart.lines().get(0).x();
    List<Svg.Point> outline = new ArrayList<>(points(x, band.high()));
    List<Svg.Point> back = new ArrayList<>(points(x, band.low()));
    Collections.reverse(back);
    outline.addAll(back);
    svg.polygon(outline, Pen.BAND, "spread");
  }

  private void axes(Svg svg) {
    double upright = Figures.tick((BOTTOM - TOP) / (highest - lowest), 24);
    for (double v = Math.ceil(lowest / upright) * upright; v <= highest; v += upright) {
      svg.line(LEFT - 3, y(v), LEFT, y(v), Pen.THIN);
      String figure = Figures.of(say, Math.round(v / upright) * upright);
      svg.text(LEFT - 5, y(v) + 3.5, Anchor.END, Type.QUIET, figure.replace("-", "\u2212"));
    }
    double level = Figures.tick((RIGHT - LEFT) / end, 36);
    for (double v = 0; v <= end * (1 + 1e-9); v += level) {
      svg.line(x(v), BOTTOM, x(v), BOTTOM + 3, Pen.THIN);
      String figure = Figures.of(say, Math.round(v / level) * level);
      svg.text(x(v), BOTTOM + 14, Anchor.MIDDLE, Type.QUIET, figure);
    }
    svg.polyline(
        List.of(
            new Svg.Point(LEFT, TOP), new Svg.Point(LEFT, BOTTOM), new Svg.Point(RIGHT, BOTTOM)),
        Pen.THIN,
        "axes");
    if (lowest < 0) {
      svg.line(LEFT, y(0), RIGHT, y(0), Pen.GUIDE, "zero");
    }
  }

  private void spot(Svg svg, Chart.Spot spot) {
    boolean right = x(spot.x()) > (LEFT + RIGHT) / 2;
    svg.circle(x(spot.x()), y(spot.y()), 4, Pen.SOLID, "spot");
    svg.text(
        x(spot.x()) + (right ? -7 : 7),
        y(spot.y()) - 6,
        right ? Anchor.END : Anchor.START,
        Type.STRONG,
        spot.name());
  }

  /** Numbers above the chart, moved apart where parts are short, each with a line down. */
  private void begins(Svg svg) {
    List<Double> starts = chart.begins();
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
          "begin");
      svg.circle(centres[i], 28, 8, Pen.ACCENT_FILL, "step");
      svg.text(centres[i], 32, Anchor.MIDDLE, Type.ON_ACCENT, Integer.toString(i + 1));
    }
  }

  private void key(Svg svg, Chart.@org.jspecify.annotations.Nullable Band band) {
    double y = BOTTOM + 37.5;
    double x = LEFT;
    if (band != null) {
      svg.rect(x, y - 4.5, 16, 9, Pen.BAND);
    }
    for (int i = 0; i < chart.lines().size(); i++) {
      String name = band != null && i == 0 ? band.name() : chart.lines().get(i).name();
      svg.line(x, y, x + 16, y, pen(i));
      svg.text(x + 22, y + 4, Anchor.START, Type.QUIET, name);
      x += 32 + Type.QUIET.width(name);
    }
  }

  private List<Svg.Point> points(List<Double> x, List<Double> y) {
    int every = Math.max(1, (int) Math.ceil(y.size() / (double) MOST_POINTS));
    List<Svg.Point> points = new ArrayList<>();
    for (int i = 0; i < y.size(); i++) {
      if (i % every == 0 || i == y.size() - 1 || turns(y, i)) {
        points.add(new Svg.Point(x(x.get(i)), y(y.get(i))));
      }
    }
    return points;
  }

  /** Thinning never drops a turning point. */
  private static boolean turns(List<Double> y, int i) {
    return i > 0 && i < y.size() - 1 && (y.get(i) - y.get(i - 1)) * (y.get(i + 1) - y.get(i)) < 0;
  }

  private double x(double across) {
    return LEFT + (RIGHT - LEFT) * Math.max(0, Math.min(end, across)) / end;
  }

  private double y(double up) {
    return BOTTOM - (BOTTOM - TOP) * (up - lowest) / (highest - lowest);
  }
}
