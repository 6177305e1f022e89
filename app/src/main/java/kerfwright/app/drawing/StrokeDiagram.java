package kerfwright.app.drawing;

import java.util.ArrayList;
import java.util.List;
import kerfwright.planner.plan.Stroke;

/** How an instrument is led along the work, seen from the shank; see {@link StrokeGeometry}. */
public final class StrokeDiagram {
  /** Where the stroke is led. */
  public enum Site {
    OPENING("inside an opening"),
    OUTSIDE("on the outside of a tooth");

    private final String label;

    Site(String label) {
      this.label = label;
    }

    public String label() {
      return label;
    }
  }

  private static final double WIDTH = 320;
  private static final double HEIGHT = 220;
  private static final double WORDS = 213;

  private StrokeDiagram() {}

  public static String draw(String id, Stroke stroke, Site site) {
    return switch (stroke) {
      case AGAINST_ROTATION -> alongTheWall(id, stroke, site, true);
      case WITH_ROTATION -> alongTheWall(id, stroke, site, false);
      case AXIAL -> SideStroke.axial(id);
      case BRUSHING -> SideStroke.brushing(id);
    };
  }

  private static String alongTheWall(String id, Stroke stroke, Site site, boolean against) {
    StrokeGeometry g = new StrokeGeometry(site == Site.OPENING, against);
    String chip = against ? "thin to thick" : "thick to thin";
    String pull = against ? "pushes back" : "pulls on";
    Svg svg =
        Svg.image(
            id,
            WIDTH,
            HEIGHT,
            "Stroke " + stroke.label() + ", " + site.label(),
            "Seen from the shank; the instrument turns clockwise. The work lies on the "
                + (against ? "left" : "right")
                + " of the travel. The chip runs from "
                + chip
                + ". The wall "
                + pull
                + (against ? " against the travel." : " in the direction of travel.")
                + " Feed and chip are drawn much larger than in truth.");
    work(svg, g);
    svg.circle(
        StrokeGeometry.TOOL_CENTRE.x(),
        StrokeGeometry.TOOL_CENTRE.y(),
        StrokeGeometry.TOOL,
        Pen.BODY,
        "instrument");
    svg.polygon(g.chip(), Pen.ACCENT_FILL, "chip");
    turning(svg);
    travel(svg, g);
    force(svg);
    words(svg, g, chip, pull, site);
    return svg.finish();
  }

  /** The work: uncut ahead of the instrument, finished behind it. */
  private static void work(Svg svg, StrokeGeometry g) {
    double ahead = g.way() * (g.inside() ? 1.45 : 0.85);
    double seen = g.inside() ? 1.45 : 0.85;
    List<Svg.Point> surface = new ArrayList<>(g.arc(StrokeGeometry.WALL, -g.way() * seen, 0));
    // the step between finished and uncut is the rim of the instrument itself
    for (int i = 0; i <= 20; i++) {
      surface.add(StrokeGeometry.rim(g.way() * g.exit() * i / 20));
    }
    Svg.Point corner = surface.get(surface.size() - 1);
    double start =
        Math.atan2(corner.x() - g.wallCentre().x(), Math.abs(corner.y() - g.wallCentre().y()));
    surface.addAll(g.arc(g.uncutRadius(), start, ahead));
    List<Svg.Point> block = new ArrayList<>(surface);
    double back = g.inside() ? StrokeGeometry.WALL + 20 : StrokeGeometry.WALL - 48;
    block.addAll(g.arc(back, ahead, -g.way() * seen));
    svg.polygon(block, Pen.WORK, "work");
    svg.polyline(surface, Pen.INK, "surface");
  }

  /** A clockwise arrow in the lower half of the instrument, away from the chip. */
  private static void turning(Svg svg) {
    Svg.Point c = StrokeGeometry.TOOL_CENTRE;
    List<Svg.Point> arc = new ArrayList<>();
    for (int i = 0; i <= 16; i++) {
      double angle = Math.toRadians(100 + 10 * i);
      arc.add(new Svg.Point(c.x() + 17 * Math.sin(angle), c.y() - 17 * Math.cos(angle)));
    }
    svg.polyline(arc, Pen.INK, "turning");
    double end = Math.toRadians(278);
    Svg.Point tip = new Svg.Point(c.x() + 17 * Math.sin(end), c.y() - 17 * Math.cos(end) - 3);
    svg.polygon(
        List.of(
            tip, new Svg.Point(tip.x() - 4, tip.y() + 8), new Svg.Point(tip.x() + 4, tip.y() + 8)),
        Pen.SOLID,
        "turning-head");
    svg.circle(c.x(), c.y(), 1.6, Pen.SOLID);
  }

  private static void travel(Svg svg, StrokeGeometry g) {
    double x = StrokeGeometry.TOOL_CENTRE.x();
    double y = StrokeGeometry.TOOL_CENTRE.y() + StrokeGeometry.TOOL + 12;
    svg.arrow(x - 24 * g.way(), y, x + 24 * g.way(), y, Pen.INK, Pen.SOLID, "travel");
    svg.text(x, y + 15, Anchor.MIDDLE, Type.PLAIN, "travel");
  }

  /** What the wall does to the instrument: against the blade's own way, to the left up here. */
  private static void force(Svg svg) {
    double x = StrokeGeometry.TOOL_CENTRE.x();
    double y = StrokeGeometry.TOOL_CENTRE.y() - StrokeGeometry.TOOL - 9;
    svg.arrow(x + 20, y, x - 20, y, Pen.ACCENT, Pen.ACCENT_FILL, "force");
  }

  private static void words(Svg svg, StrokeGeometry g, String chip, String pull, Site site) {
    Svg.Point c = StrokeGeometry.TOOL_CENTRE;
    double contact = c.y() - StrokeGeometry.TOOL;
    if (g.inside()) {
      svg.text(c.x(), contact - 26, Anchor.MIDDLE, Type.ACCENT, pull);
      svg.text(c.x() + g.way() * 72, contact + 38, Anchor.MIDDLE, Type.PLAIN, "work");
    } else {
      svg.text(c.x(), contact - 18, Anchor.MIDDLE, Type.ACCENT, pull);
      svg.text(c.x(), contact - 36, Anchor.MIDDLE, Type.PLAIN, "work");
    }
    svg.text(
        WORDS, 32, Anchor.START, Type.STRONG, g.against() ? "against rotation" : "with rotation");
    svg.text(WORDS, 48, Anchor.START, Type.PLAIN, "work on the");
    svg.text(WORDS, 62, Anchor.START, Type.PLAIN, (g.against() ? "left" : "right") + " of travel");
    svg.text(WORDS, 84, Anchor.START, Type.PLAIN, "chip runs");
    svg.text(WORDS, 98, Anchor.START, Type.ACCENT, chip);
    svg.text(WORDS, 120, Anchor.START, Type.PLAIN, "the wall");
    svg.text(WORDS, 134, Anchor.START, Type.ACCENT, pull);
    svg.text(
        12,
        HEIGHT - 22,
        Anchor.START,
        Type.PLAIN,
        Figures.capital(site.label()) + ", seen from the shank.");
    svg.text(
        12,
        HEIGHT - 8,
        Anchor.START,
        Type.QUIET,
        "Turns clockwise. Chip drawn much larger than in truth.");
  }
}
