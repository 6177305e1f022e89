package kerfwright.app.drawing.cut;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.drawing.Anchor;
import kerfwright.app.drawing.Hatch;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.Svg;
import kerfwright.app.drawing.TwoDigits;
import kerfwright.app.drawing.Type;
import kerfwright.app.drawing.instrument.BladeSection;
import kerfwright.app.words.Say;
import kerfwright.catalogue.material.Material;

/**
 * A blade on its way through the work, seen from the shank, and the thickness of its chip along the
 * arc. Diameter, depth of cut, number of blades, thickness and force are to scale; the rake of the
 * blades is a setting of {@link BladeSection}.
 */
public final class ChipDrawing {
  /**
   * What is drawn.
   *
   * @param blades how many
   * @param diameterMm of the head
   * @param depthMm radial depth of cut
   * @param engagementRad angle over which a blade is in the work
   * @param thicknessNm thickness along the arc in the order a blade meets it, equally spaced
   * @param alongTravelN force on the hand along the travel: positive pulls on
   */
  public record Cut(
      int blades,
      double diameterMm,
      double depthMm,
      double engagementRad,
      List<Double> thicknessNm,
      double alongTravelN) {
    public Cut {
      thicknessNm = List.copyOf(thicknessNm);
    }

    /** Against rotation the wall pushes back. */
    public boolean against() {
      return alongTravelN < 0;
    }
  }

  /** Units of the drawing a newton, the same for both strokes. */
  public static double perNewton(double newton) {
    return Math.abs(newton) <= 0.6 ? 300 : 60;
  }

  private static final double WIDTH = 600;
  private static final double HEIGHT = 500;
  private static final double X = 300;
  private static final double RADIUS = 92;
  private static final double TOP = 80;
  private static final double BASE = 450;
  private static final double LEFT = 60;
  private static final double RIGHT = 540;
  private static final double TALL = 90;

  private ChipDrawing() {}

  /** With a blade entering or leaving. */
  public static String draw(Say say, String id, Material layer, Cut cut, boolean leaving) {
    Svg svg =
        Svg.image(
            id,
            WIDTH,
            HEIGHT,
            say.at(cut.against() ? "drawn.chip-against" : "drawn.chip-with"),
            say.at(leaving ? "drawn.chip-leaves" : "drawn.chip-enters"));
    int way = cut.against() ? 1 : -1;
    work(svg, layer, cut, way);
    // clockwise, a blade goes from the top towards the travel against rotation, else back to it
    double angle = leaving == cut.against() ? way * cut.engagementRad() : 0;
    double y = TOP + RADIUS;
    svg.open("g", "class", "a-turn");
    svg.circle(X, y, RADIUS, Pen.GUIDE, "rim");
    svg.polygon(BladeSection.section(X, y, RADIUS, cut.blades(), angle), Pen.BODY, "section");
    svg.close("g");
    svg.circle(
        X + RADIUS * Math.sin(angle), y - RADIUS * Math.cos(angle), 7, Pen.ACCENT_FILL, "edge");
    travel(say, svg, way, y);
    force(say, svg, cut, y);
    chart(say, svg, cut, leaving);
    return svg.finish();
  }

  /** Finished behind the bur, uncut ahead of it; the step between them is the rim. */
  private static void work(Svg svg, Material layer, Cut cut, int way) {
    double depth = cut.depthMm() * 2 * RADIUS / cut.diameterMm();
    List<Svg.Point> block = new ArrayList<>();
    double back = way > 0 ? 0 : WIDTH;
    block.add(new Svg.Point(back, 0));
    block.add(new Svg.Point(back, TOP));
    for (int i = 0; i <= 20; i++) {
      double angle = way * cut.engagementRad() * i / 20;
      block.add(
          new Svg.Point(X + RADIUS * Math.sin(angle), TOP + RADIUS - RADIUS * Math.cos(angle)));
    }
    block.add(new Svg.Point(WIDTH - back, TOP + depth));
    block.add(new Svg.Point(WIDTH - back, 0));
    svg.polygon(block, Hatch.ground(layer), "work");
    svg.path(Hatch.of(layer).path(0, 0, WIDTH, TOP, false), Pen.HATCH);
  }

  private static void travel(Say say, Svg svg, int way, double y) {
    double from = X + way * (RADIUS + 20);
    svg.boldArrow(from, y + 46, from + way * 120, y + 46, Pen.INK_BOLD, Pen.SOLID, "travel");
    Anchor anchor = way > 0 ? Anchor.START : Anchor.END;
    svg.text(from, y + 82, anchor, Type.LECTURE, say.at("drawn.stroke-travel"));
  }

  /** Always to the left up here: the wall holds the blade back, which moves to the right. */
  private static void force(Say say, Svg svg, Cut cut, double y) {
    double from = X - RADIUS - 16;
    double length = Math.abs(cut.alongTravelN()) * perNewton(cut.alongTravelN());
    svg.open("g", "class", "a-pull");
    svg.boldArrow(
        from, y - 8, from - Math.max(8, length), y - 8, Pen.ACCENT_BOLD, Pen.ACCENT_FILL, "force");
    svg.close("g");
    String newton = say.at("drawn.newton", TwoDigits.of(say, Math.abs(cut.alongTravelN())));
    svg.text(from, y - 26, Anchor.END, Type.LECTURE_ACCENT, newton);
  }

  private static void chart(Say say, Svg svg, Cut cut, boolean leaving) {
    List<Double> nm = cut.thicknessNm();
    double most = nm.stream().mapToDouble(Double::doubleValue).max().orElse(1);
    List<Svg.Point> line = new ArrayList<>();
    for (int i = 0; i < nm.size(); i++) {
      line.add(
          new Svg.Point(
              LEFT + (RIGHT - LEFT) * i / (nm.size() - 1), BASE - TALL * nm.get(i) / most));
    }
    List<Svg.Point> area = new ArrayList<>(line);
    area.add(new Svg.Point(RIGHT, BASE));
    area.add(new Svg.Point(LEFT, BASE));
    svg.polygon(area, Pen.TINT, "chip-area");
    svg.polyline(line, Pen.ACCENT, "chip-line");
    svg.line(LEFT, BASE, RIGHT, BASE, Pen.INK);
    Svg.Point here = line.get(leaving ? line.size() - 1 : 0);
    svg.circle(here.x(), here.y(), 8, Pen.ACCENT_FILL, "here");
    svg.text(LEFT, BASE + 34, Anchor.START, Type.LECTURE, say.at("drawn.chip-in"));
    svg.text(RIGHT, BASE + 34, Anchor.END, Type.LECTURE, say.at("drawn.chip-out"));
    boolean rising = nm.get(0) < nm.get(nm.size() - 1);
    svg.text(
        rising ? RIGHT : LEFT,
        BASE - TALL - 14,
        rising ? Anchor.END : Anchor.START,
        Type.LECTURE_ACCENT,
        say.at("drawn.nm", TwoDigits.of(say, most)));
  }
}
