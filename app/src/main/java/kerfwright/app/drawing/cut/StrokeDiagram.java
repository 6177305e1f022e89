package kerfwright.app.drawing.cut;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.drawing.Anchor;
import kerfwright.app.drawing.Column;
import kerfwright.app.drawing.Figures;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.Svg;
import kerfwright.app.drawing.Type;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.Stroke;

/** How an instrument is led along the work, seen from the shank; see {@link StrokeGeometry}. */
public final class StrokeDiagram {
  /** Where the stroke is led. */
  public enum Site {
    OPENING,
    OUTSIDE;

    private String in(Say say) {
      return say.at(this == OPENING ? "drawn.stroke-inside" : "drawn.stroke-outside");
    }
  }

  private static final double WIDTH = 320;
  private static final double HEIGHT = 220;
  private static final double WORDS = 213;

  private StrokeDiagram() {}

  public static String draw(Say say, String id, Stroke stroke, Site site) {
    return switch (stroke) {
      case AGAINST_ROTATION -> alongTheWall(say, id, stroke, site, true);
      case WITH_ROTATION -> alongTheWall(say, id, stroke, site, false);
      case AXIAL -> SideStroke.axial(say, id);
      case BRUSHING -> SideStroke.brushing(say, id);
    };
  }

  private static String alongTheWall(
      Say say, String id, Stroke stroke, Site site, boolean against) {
    StrokeGeometry g = new StrokeGeometry(site == Site.OPENING, against);
    Svg svg =
        Svg.image(
            id,
            WIDTH,
            HEIGHT,
            say.at("drawn.stroke-title", Labels.stroke(say, stroke), site.in(say)),
            String.join(
                " ",
                say.at("drawn.stroke-seen"),
                say.at(against ? "drawn.stroke-about-against" : "drawn.stroke-about-with"),
                say.at("drawn.stroke-enlarged")));
    work(svg, g);
    svg.circle(
        StrokeGeometry.TOOL_CENTRE.x(),
        StrokeGeometry.TOOL_CENTRE.y(),
        StrokeGeometry.TOOL,
        Pen.BODY,
        "instrument");
    svg.polygon(g.chip(), Pen.ACCENT_FILL, "chip");
    turning(svg);
    travel(say, svg, g);
    force(svg);
    words(say, svg, g, site);
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

  private static void travel(Say say, Svg svg, StrokeGeometry g) {
    double x = StrokeGeometry.TOOL_CENTRE.x();
    double y = StrokeGeometry.TOOL_CENTRE.y() + StrokeGeometry.TOOL + 12;
    svg.arrow(x - 24 * g.way(), y, x + 24 * g.way(), y, Pen.INK, Pen.SOLID, "travel");
    svg.text(x, y + 15, Anchor.MIDDLE, Type.PLAIN, say.at("drawn.stroke-travel"));
  }

  /** What the wall does to the instrument: against the blade's own way, to the left up here. */
  private static void force(Svg svg) {
    double x = StrokeGeometry.TOOL_CENTRE.x();
    double y = StrokeGeometry.TOOL_CENTRE.y() - StrokeGeometry.TOOL - 9;
    svg.arrow(x + 20, y, x - 20, y, Pen.ACCENT, Pen.ACCENT_FILL, "force");
  }

  private static void words(Say say, Svg svg, StrokeGeometry g, Site site) {
    Svg.Point c = StrokeGeometry.TOOL_CENTRE;
    double contact = c.y() - StrokeGeometry.TOOL;
    String work = say.at("drawn.stroke-work");
    String pull = say.at(g.against() ? "drawn.stroke-pushes" : "drawn.stroke-pulls");
    if (g.inside()) {
      svg.text(c.x(), contact - 26, Anchor.MIDDLE, Type.ACCENT, pull);
      svg.text(c.x() + g.way() * 72, contact + 38, Anchor.MIDDLE, Type.PLAIN, work);
    } else {
      svg.text(c.x(), contact - 18, Anchor.MIDDLE, Type.ACCENT, pull);
      svg.text(c.x(), contact - 36, Anchor.MIDDLE, Type.PLAIN, work);
    }
    Column column = new Column(say, svg, WORDS, 32);
    column.add(Type.STRONG, say.at(g.against() ? "drawn.stroke-against" : "drawn.stroke-with"));
    column.add(
        Type.PLAIN, say.at(g.against() ? "drawn.stroke-work-left" : "drawn.stroke-work-right"));
    column.gap();
    column.add(Type.PLAIN, say.at("drawn.stroke-chip-runs"));
    column.add(
        Type.ACCENT,
        say.at(g.against() ? "drawn.stroke-thin-to-thick" : "drawn.stroke-thick-to-thin"));
    column.gap();
    column.add(Type.PLAIN, say.at("drawn.stroke-the-wall"));
    column.add(Type.ACCENT, pull);
    String where = say.at("drawn.stroke-where", Figures.capital(site.in(say)));
    svg.text(12, HEIGHT - 22, Anchor.START, Type.PLAIN, where);
    svg.text(12, HEIGHT - 8, Anchor.START, Type.QUIET, say.at("drawn.stroke-truth"));
  }
}
