package kerfwright.app.drawing.instrument;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.drawing.Anchor;
import kerfwright.app.drawing.Figures;
import kerfwright.app.drawing.Lines;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.Svg;
import kerfwright.app.drawing.Type;
import kerfwright.app.words.Say;

/**
 * Cross-section of a bur with its real number of blades, looked at from the shank: the bur turns
 * clockwise.
 *
 * <p>Rake angle: between the face of the blade and the radius through its edge; negative where the
 * foot of the face runs ahead of the edge. Clearance: between the land behind the edge and the
 * rim's tangent. Depth of the flutes: a share of the pitch of the blades, at most a share of the
 * radius. None of them is told by a number; all are settings and stand in the drawing.
 */
public final class BladeSection {
  /**
   * What is assumed of the blades.
   *
   * @param rakeDeg rake angle
   * @param clearanceDeg clearance angle
   * @param depthOfPitch flute depth over the distance of the edges along the rim
   * @param depthOfRadius the flutes are never deeper than this share of the radius
   */
  public record Settings(
      double rakeDeg, double clearanceDeg, double depthOfPitch, double depthOfRadius) {
    /** Project settings, no source. */
    public static final Settings PROJECT = new Settings(-10, 15, 0.5, 0.45);

    public Settings {
      if (Math.abs(rakeDeg) > 30 || clearanceDeg < 0 || clearanceDeg > 40) {
        throw new IllegalArgumentException(
            "Rake within 30 and clearance from 0 to 40 degrees, got "
                + rakeDeg
                + ", "
                + clearanceDeg);
      }
      if (!(depthOfPitch > 0 && depthOfPitch <= 1 && depthOfRadius > 0 && depthOfRadius < 0.8)) {
        throw new IllegalArgumentException("Flute depth must be a share of pitch and radius");
      }
    }
  }

  private static final double WIDTH = 320;
  private static final double HEIGHT = 262;
  static final double CX = 126;
  static final double CY = 124;
  static final double R = 92;
  private static final char GAP = '\u00A0';
  private static final double LINE = 14;
  private static final int NARROW = 14;
  private static final int WIDEST = 55;

  private BladeSection() {}

  public static String draw(Say say, String id, int blades, double headDiameterMm) {
    return draw(say, id, blades, headDiameterMm, Settings.PROJECT);
  }

  public static String draw(
      Say say, String id, int blades, double headDiameterMm, Settings settings) {
    if (blades < 2 || blades > 60) {
      throw new IllegalArgumentException("A bur has 2 to 60 blades, got " + blades);
    }
    double core = coreOfRadius(blades, settings);
    List<String> assumed = Lines.of(say, assumed(say, settings), WIDEST);
    Svg svg =
        Svg.image(
            id,
            WIDTH,
            HEIGHT + LINE * (assumed.size() - 1),
            say.at("drawn.blades-title", blades),
            say.at(
                "drawn.blades-about",
                Figures.mm(say, headDiameterMm),
                blades,
                Math.round(100 * core),
                String.join(" ", assumed)));
    svg.circle(CX, CY, R, Pen.GUIDE, "rim");
    outline(svg, blades, core, settings);
    svg.circle(CX, CY, core * R, Pen.GUIDE, "core");
    svg.circle(CX, CY, 1.6, Pen.SOLID);
    turning(svg);
    labels(say, svg, blades, core, headDiameterMm, settings);
    for (int i = 0; i < assumed.size(); i++) {
      svg.text(12, HEIGHT - 8 + LINE * i, Anchor.START, Type.QUIET, assumed.get(i));
    }
    return svg.finish();
  }

  /** The section alone, for captions beside it. */
  public static String bare(Say say, String id, int blades, double headDiameterMm) {
    double core = coreOfRadius(blades, Settings.PROJECT);
    double side = 2.4 * R;
    Svg svg =
        Svg.image(
            id,
            side,
            side,
            say.at("drawn.blades-title", blades),
            say.at(
                "drawn.blades-about",
                Figures.mm(say, headDiameterMm),
                blades,
                Math.round(100 * core),
                assumed(say, Settings.PROJECT)));
    svg.polygon(section(side / 2, side / 2, R, blades, 0), Pen.BODY, "section");
    svg.circle(side / 2, side / 2, R, Pen.GUIDE, "rim");
    return svg.finish();
  }

  /** What is assumed of the blades of a section. */
  public static String assumed(Say say) {
    return assumed(say, Settings.PROJECT);
  }

  private static String assumed(Say say, Settings settings) {
    return say.at(
        "drawn.blades-assumed",
        degrees(say, settings.rakeDeg()),
        degrees(say, settings.clearanceDeg()));
  }

  /** Radius of the core over the radius of the rim. */
  public static double coreOfRadius(int blades, Settings settings) {
    double pitch = 2 * Math.PI / blades;
    return 1 - Math.min(settings.depthOfPitch() * pitch, settings.depthOfRadius());
  }

  /**
   * One blade from the foot of its face over edge and land to the foot of the next face; angles
   * count clockwise on the screen from the top, the way the bur turns.
   */
  public static List<Svg.Point> blade(
      double edgeAngle, int blades, double core, Settings settings) {
    double pitch = 2 * Math.PI / blades;
    double ahead = footAhead(core, settings);
    List<Svg.Point> points = new ArrayList<>();
    points.add(at(edgeAngle + ahead, core));
    points.add(at(edgeAngle, 1));
    double land = 0.2 * pitch;
    double drop = land * Math.tan(Math.toRadians(settings.clearanceDeg()));
    points.add(at(edgeAngle - land, Math.max(core, 1 - drop)));
    double from = Math.max(core, 1 - drop);
    double to = edgeAngle - pitch + ahead;
    double start = edgeAngle - land;
    for (int i = 1; i <= 16; i++) {
      double u = i / 16.0;
      // the back falls to the core over the first two thirds of the flute, then follows it
      double fall = Math.min(1, u / 0.65);
      double r = core + (from - core) * (1 + Math.cos(Math.PI * fall)) / 2;
      points.add(at(start + (to - start) * u, r));
    }
    return points;
  }

  /**
   * How far the foot of the face runs ahead of the edge, as an angle about the axis: the face
   * leaves the edge at the rake angle from the radius and ends where it meets the core.
   */
  static double footAhead(double core, Settings settings) {
    double sin = Math.sin(Math.toRadians(settings.rakeDeg()));
    double cos = Math.cos(Math.toRadians(settings.rakeDeg()));
    double length = cos - Math.sqrt(Math.max(0, core * core - sin * sin));
    return Math.atan2(-length * sin, 1 - length * cos);
  }

  /** The whole section about another centre, its first edge at an angle clockwise from the top. */
  public static List<Svg.Point> section(
      double x, double y, double radius, int blades, double first) {
    double core = coreOfRadius(blades, Settings.PROJECT);
    List<Svg.Point> all = new ArrayList<>();
    for (int i = 0; i < blades; i++) {
      for (Svg.Point p : blade(first - i * 2 * Math.PI / blades, blades, core, Settings.PROJECT)) {
        all.add(new Svg.Point(x + (p.x() - CX) / R * radius, y + (p.y() - CY) / R * radius));
      }
    }
    return all;
  }

  private static void outline(Svg svg, int blades, double core, Settings settings) {
    double pitch = 2 * Math.PI / blades;
    List<Svg.Point> all = new ArrayList<>();
    for (int i = 0; i < blades; i++) {
      all.addAll(blade(marked() - i * pitch, blades, core, settings));
    }
    svg.polygon(all, Pen.BODY, "section");
    for (int i = 0; i < blades; i++) {
      List<Svg.Point> face = blade(marked() - i * pitch, blades, core, settings).subList(0, 3);
      svg.polyline(face, i == 0 ? Pen.ACCENT : Pen.INK, "blade");
    }
  }

  /** The marked blade points to the upper right, towards the labels. */
  private static double marked() {
    return Math.toRadians(58);
  }

  private static void turning(Svg svg) {
    List<Svg.Point> arc = new ArrayList<>();
    for (int i = 0; i <= 16; i++) {
      arc.add(at(Math.toRadians(-52 + 5.5 * i), 1.14));
    }
    svg.polyline(arc.subList(0, 16), Pen.ACCENT, "turning");
    Svg.Point tip = at(Math.toRadians(39), 1.14);
    Svg.Point inner = at(Math.toRadians(30), 1.09);
    Svg.Point outer = at(Math.toRadians(30), 1.19);
    svg.polygon(List.of(tip, inner, outer), Pen.ACCENT_FILL, "turning-head");
  }

  private static void labels(
      Say say, Svg svg, int blades, double core, double headDiameterMm, Settings settings) {
    double pitch = 2 * Math.PI / blades;
    double x = 232;
    label(svg, at(marked(), 1), x, 52, Type.ACCENT, say.at("drawn.blades-first", blades));
    label(
        svg,
        at(marked() + 0.45 * pitch, (1 + core) / 2),
        x,
        92,
        Type.PLAIN,
        say.at("drawn.blades-flute"));
    label(
        svg,
        at(Math.toRadians(105), core * 0.55),
        x,
        132,
        Type.PLAIN,
        say.at("drawn.blades-core", Math.round(100 * core)));
    List<String> below = new ArrayList<>();
    String rake = say.at("drawn.blades-rake", degrees(say, settings.rakeDeg()));
    String diameter =
        say.at("drawn.blades-diameter", Figures.mm(say, headDiameterMm).replace(' ', GAP));
    below.addAll(Lines.of(say, rake, NARROW));
    below.addAll(Lines.of(say, diameter, NARROW));
    for (int i = 0; i < below.size(); i++) {
      svg.text(x, 172 + LINE * i, Anchor.START, Type.PLAIN, below.get(i));
    }
    svg.text(12, HEIGHT - 22, Anchor.START, Type.PLAIN, say.at("drawn.blades-turns"));
  }

  private static void label(
      Svg svg, Svg.Point target, double x, double y, Type type, String words) {
    svg.polyline(
        List.of(target, new Svg.Point(x - 14, y - 4), new Svg.Point(x - 4, y - 4)), Pen.THIN);
    svg.circle(target.x(), target.y(), 1.6, Pen.SOLID);
    svg.text(x, y, Anchor.START, type, words);
  }

  private static String degrees(Say say, double value) {
    return Figures.of(say, value).replace("-", "\u2212") + "\u00b0";
  }

  /** Angle clockwise from the top, radius as a share of the rim's. */
  private static Svg.Point at(double angle, double share) {
    return new Svg.Point(CX + R * share * Math.sin(angle), CY - R * share * Math.cos(angle));
  }
}
