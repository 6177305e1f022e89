package kerfwright.app.drawing.instrument;

import java.util.List;
import kerfwright.app.drawing.Anchor;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.Svg;
import kerfwright.app.drawing.Type;

/** Dimension lines with an arrow head at both ends and a figure. */
public final class Dimension {
  private static final double HEAD = 5;

  private Dimension() {}

  /** Along x at height y; the figure stands above the line, or beside it where it is too short. */
  static void across(Svg svg, double x1, double x2, double y, double limit, String words) {
    boolean fits = Type.PLAIN.width(words) < x2 - x1 - 2;
    tip(svg, x1, y, x2 - x1 > 2.2 * HEAD ? 1 : -1, true);
    tip(svg, x2, y, x2 - x1 > 2.2 * HEAD ? -1 : 1, true);
    double out = x2 - x1 > 2.2 * HEAD ? 0 : 2 * HEAD;
    svg.line(x1 - out, y, x2 + out, y, Pen.THIN);
    if (fits) {
      svg.text((x1 + x2) / 2, y - 3, Anchor.MIDDLE, Type.PLAIN, words);
    } else if (x2 + out + 4 + Type.PLAIN.width(words) < limit) {
      svg.text(x2 + out + 4, y + 3.5, Anchor.START, Type.PLAIN, words);
    } else {
      svg.text(x1 - out - 4, y + 3.5, Anchor.END, Type.PLAIN, words);
    }
  }

  /** Along y at x; the figure stands at the given side of the line. */
  static void down(Svg svg, double x, double y1, double y2, Anchor side, String words) {
    boolean inside = y2 - y1 > 2.2 * HEAD;
    tip(svg, x, y1, inside ? 1 : -1, false);
    tip(svg, x, y2, inside ? -1 : 1, false);
    double out = inside ? 0 : 2 * HEAD;
    svg.line(x, y1 - out, x, y2 + out, Pen.THIN);
    svg.text(x + (side == Anchor.START ? 5 : -5), (y1 + y2) / 2 + 4, side, Type.PLAIN, words);
  }

  /** The point of an arrow at (x, y) whose body lies towards {@code way}. */
  private static void tip(Svg svg, double x, double y, int way, boolean horizontal) {
    double back = way * HEAD;
    svg.polygon(
        horizontal
            ? List.of(
                new Svg.Point(x, y),
                new Svg.Point(x + back, y - 1.8),
                new Svg.Point(x + back, y + 1.8))
            : List.of(
                new Svg.Point(x, y),
                new Svg.Point(x - 1.8, y + back),
                new Svg.Point(x + 1.8, y + back)),
        Pen.SOLID);
  }
}
