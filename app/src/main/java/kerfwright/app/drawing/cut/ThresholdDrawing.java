package kerfwright.app.drawing.cut;

import java.util.List;
import kerfwright.app.drawing.Anchor;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.Svg;
import kerfwright.app.drawing.TwoDigits;
import kerfwright.app.drawing.Type;
import kerfwright.app.words.Say;

/** The load on a grain against the load that cracks the layer, and how much of it does. */
public final class ThresholdDrawing {
  private static final double WIDTH = 600;
  private static final double HEIGHT = 340;
  private static final double LEFT = 24;
  private static final double RIGHT = 576;
  private static final double AXIS = 190;
  private static final double BAR = 262;

  /** The scale ends here: no grain ever carries as much. */
  private static final double MOST_N = 1000;

  private final Svg svg;
  private final Say say;
  private final double from;
  private final double decades;

  private ThresholdDrawing(Say say, Svg svg, double thresholdN) {
    this.say = say;
    this.svg = svg;
    this.from = -3;
    this.decades = Math.max(1, Math.ceil(Math.log10(Math.min(MOST_N, thresholdN)))) - from;
  }

  /**
   * On a logarithmic scale from a millinewton on.
   *
   * @param grainN mean load on an active grain
   * @param thresholdN load that cracks the layer
   * @param crackingShare share of the load on grains above it
   */
  public static String draw(
      Say say, String id, double grainN, double thresholdN, double crackingShare) {
    Svg svg =
        Svg.image(
            id, WIDTH, HEIGHT, say.at("drawn.threshold-title"), say.at("drawn.threshold-about"));
    new ThresholdDrawing(say, svg, thresholdN).all(grainN, thresholdN, crackingShare);
    return svg.finish();
  }

  private double x(double newton) {
    double share = (Math.log10(newton) - from) / decades;
    return LEFT + (RIGHT - LEFT) * Math.max(0, Math.min(1, share));
  }

  private void all(double grainN, double thresholdN, double crackingShare) {
    double limit = x(thresholdN);
    svg.rect(limit, 96, RIGHT - limit, AXIS - 96, Pen.TINT, "cracks");
    svg.line(LEFT, AXIS, RIGHT, AXIS, Pen.INK, "axis");
    int every = decades > 6 ? 3 : decades > 3 ? 2 : 1;
    for (int i = 0; i <= decades; i++) {
      double value = Math.pow(10, from + i);
      svg.line(x(value), AXIS, x(value), AXIS + 10, Pen.INK);
      if (i % every == 0) {
        Anchor anchor = i == 0 ? Anchor.START : i == decades ? Anchor.END : Anchor.MIDDLE;
        svg.text(x(value), AXIS + 40, anchor, Type.LECTURE_QUIET, newton(value));
      }
    }
    svg.line(limit, 50, limit, AXIS, Pen.DANGER, "threshold");
    label(limit, 38, Type.LECTURE, newton(thresholdN));
    double here = x(grainN);
    svg.polygon(
        List.of(
            new Svg.Point(here, AXIS - 2),
            new Svg.Point(here - 16, AXIS - 36),
            new Svg.Point(here + 16, AXIS - 36)),
        Pen.ACCENT_FILL,
        "load");
    label(here, AXIS - 48, Type.LECTURE_ACCENT, newton(grainN));
    svg.rect(LEFT, BAR, RIGHT - LEFT, 26, Pen.BAND, "all-load");
    svg.rect(LEFT, BAR, (RIGHT - LEFT) * crackingShare, 26, Pen.ACCENT_FILL, "cracking");
    String percent = percent(crackingShare);
    svg.text(LEFT, BAR + 60, Anchor.START, Type.LECTURE, say.at("drawn.threshold-share", percent));
  }

  private String percent(double share) {
    return share < 0.005 ? say.at("drawn.threshold-none") : String.valueOf(Math.round(100 * share));
  }

  private void label(double x, double y, Type type, String words) {
    Anchor anchor = x < 120 ? Anchor.START : x > 480 ? Anchor.END : Anchor.MIDDLE;
    svg.text(x, y, anchor, type, words);
  }

  private String newton(double value) {
    if (value > MOST_N) {
      return say.at("drawn.over-kilonewton");
    }
    return say.at("drawn.newton", TwoDigits.of(say, value));
  }
}
