package kerfwright.app.drawing.instrument;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.drawing.Anchor;
import kerfwright.app.drawing.Figures;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.RingColour;
import kerfwright.app.drawing.Svg;
import kerfwright.app.drawing.Type;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;

/** A grain of every grit class side by side, to one scale, as far out of the bond as it stands. */
public final class GritDrawing {
  private static final double WIDTH = 600;
  private static final double HEIGHT = 330;
  private static final double BOND = 170;

  /** Units of the drawing a micrometre. */
  public static final double PER_UM = 0.84;

  private static final double NARROWEST = 64;
  private static final int CORNERS = 8;

  private GritDrawing() {}

  /**
   * The chosen class stands out.
   *
   * @param protrusionShare how far grains stand out of the bond, share of their size
   */
  public static String draw(Say say, String id, double protrusionShare, GritClass chosen) {
    Svg svg =
        Svg.image(
            id,
            WIDTH,
            HEIGHT,
            say.at("drawn.grits-title"),
            say.at("drawn.grits-about", Labels.grit(say, chosen)));
    svg.rect(0, BOND, WIDTH, 96, Pen.METAL, "bond");
    double x = 0;
    for (GritClass grit : GritClass.values()) {
      double um = grit.particleSize().typical().metres() * 1e6;
      double wide = Math.max(NARROWEST, um * PER_UM + 4);
      double middle = x + wide / 2;
      boolean here = grit == chosen;
      double centre = BOND + um * PER_UM * (0.5 - protrusionShare);
      svg.polygon(
          grain(middle, centre, um * PER_UM / 2), here ? Pen.ACCENT_FILL : Pen.SOLID, "grain");
      svg.rect(middle - 24, 278, 48, 12, RingColour.named(grit.ring()).attributes());
      svg.text(
          middle,
          322,
          Anchor.MIDDLE,
          here ? Type.LECTURE_ACCENT : Type.LECTURE,
          Figures.of(say, um));
      x += wide;
    }
    svg.line(0, BOND, WIDTH, BOND, Pen.INK);
    svg.line(480, 40, 480 + 100 * PER_UM, 40, Pen.INK, "scale");
    svg.text(480 + 50 * PER_UM, 28, Anchor.MIDDLE, Type.LECTURE_QUIET, say.at("drawn.um", "100"));
    return svg.finish();
  }

  /** A block whose longest extent is its size. */
  private static List<Svg.Point> grain(double x, double y, double radius) {
    List<Svg.Point> points = new ArrayList<>();
    for (int i = 0; i < CORNERS; i++) {
      double share = i % 2 == 0 ? 1 : 0.9;
      double angle = 2 * Math.PI * i / CORNERS;
      points.add(
          new Svg.Point(
              x + share * radius * Math.sin(angle), y - share * radius * Math.cos(angle)));
    }
    return points;
  }
}
