package kerfwright.app.drawing.cut;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.drawing.Svg;

/**
 * Geometry of an instrument led along a curved wall, seen from the shank, turning clockwise; the
 * work lies above it on the drawing. Travel to the right has the work on its left: against
 * rotation. Travel to the left has it on its right: with rotation.
 *
 * <p>The chip of one blade lies between the rim now and the rim one feed earlier, from the finished
 * wall (thickness zero) to the uncut surface (thickest).
 *
 * <p>Equation: h = d sin(phi + t) + R - sqrt(R^2 - d^2 cos^2(phi + t)), which is f sin phi of
 * milling for a straight wall and a small feed. h thickness at the angle phi from the finished
 * wall, R radius of the instrument, d straight distance of its two positions, t half the angle its
 * path turns between them, counted towards the work.
 *
 * @param inside true in an opening (the wall is hollow), false on the outside of a tooth
 * @param against true against rotation
 */
public record StrokeGeometry(boolean inside, boolean against) {
  /** Radius of the instrument in drawing units. */
  public static final double TOOL = 32;

  /** Feed from one blade to the next, far larger than in truth, so that the chip is seen. */
  public static final double FEED = 13;

  /** Depth the instrument takes off the wall. */
  static final double DEPTH = 20;

  /** Radius of the finished wall. */
  static final double WALL = 80;

  static final Svg.Point TOOL_CENTRE = new Svg.Point(108, 100);

  /** +1 where the travel is to the right on the drawing. */
  int way() {
    return against ? 1 : -1;
  }

  /** Centre of the wall's curve: below the instrument in an opening, above it outside. */
  Svg.Point wallCentre() {
    double path = pathRadius();
    return new Svg.Point(TOOL_CENTRE.x(), TOOL_CENTRE.y() + (inside ? path : -path));
  }

  /** Radius the instrument's centre runs on. */
  public double pathRadius() {
    return inside ? WALL - TOOL : WALL + TOOL;
  }

  double uncutRadius() {
    return inside ? WALL - DEPTH : WALL + DEPTH;
  }

  /** Where the instrument's centre was one feed ago. */
  Svg.Point before() {
    double angle = way() * FEED / pathRadius();
    double dy = TOOL_CENTRE.y() - wallCentre().y();
    return new Svg.Point(
        wallCentre().x() - pathRadius() * Math.sin(angle), wallCentre().y() + dy * Math.cos(angle));
  }

  /** Point of the rim at an angle from the top of the drawing, counted clockwise. */
  static Svg.Point rim(double clockwiseFromTop) {
    return new Svg.Point(
        TOOL_CENTRE.x() + TOOL * Math.sin(clockwiseFromTop),
        TOOL_CENTRE.y() - TOOL * Math.cos(clockwiseFromTop));
  }

  /** Chip thickness at an angle from the top towards the travel, 0 where nothing is cut. */
  public double thickness(double fromTopTowardsTravel) {
    Svg.Point p = rim(way() * fromTopTowardsTravel);
    if (inTheClear(p)) {
      return 0;
    }
    double ux = (p.x() - TOOL_CENTRE.x()) / TOOL;
    double uy = (p.y() - TOOL_CENTRE.y()) / TOOL;
    double dx = before().x() - TOOL_CENTRE.x();
    double dy = before().y() - TOOL_CENTRE.y();
    double along = ux * dx + uy * dy;
    double reach = along + Math.sqrt(TOOL * TOOL - (dx * dx + dy * dy) + along * along);
    return Math.max(0, TOOL - reach);
  }

  /** Angle from the top towards the travel where the chip begins, near zero. */
  public double entry() {
    double angle = -0.6;
    while (angle < 0.6 && thickness(angle) <= 0) {
      angle += 0.002;
    }
    return angle - 0.002;
  }

  /** Angle from the top towards the travel where the rim leaves the uncut surface. */
  public double exit() {
    double angle = 0.05;
    while (angle < Math.PI && !inTheClear(rim(way() * angle))) {
      angle += 0.002;
    }
    return angle;
  }

  /** Outline of the chip: along the rim, back along the earlier rim. */
  List<Svg.Point> chip() {
    List<Svg.Point> outer = new ArrayList<>();
    List<Svg.Point> inner = new ArrayList<>();
    double start = entry();
    double end = exit() - 0.004;
    for (int i = 0; i <= 40; i++) {
      double angle = start + (end - start) * i / 40;
      Svg.Point p = rim(way() * angle);
      double share = 1 - thickness(angle) / TOOL;
      outer.add(p);
      inner.add(
          0,
          new Svg.Point(
              TOOL_CENTRE.x() + (p.x() - TOOL_CENTRE.x()) * share,
              TOOL_CENTRE.y() + (p.y() - TOOL_CENTRE.y()) * share));
    }
    outer.addAll(inner);
    return outer;
  }

  /** Wall points on a circle about its centre, from an angle to another, 0 at the instrument. */
  List<Svg.Point> arc(double radius, double from, double to) {
    List<Svg.Point> points = new ArrayList<>();
    double side = inside ? -1 : 1;
    for (int i = 0; i <= 40; i++) {
      double angle = from + (to - from) * i / 40;
      points.add(
          new Svg.Point(
              wallCentre().x() + radius * Math.sin(angle),
              wallCentre().y() + side * radius * Math.cos(angle)));
    }
    return points;
  }

  private boolean inTheClear(Svg.Point p) {
    double r = Math.hypot(p.x() - wallCentre().x(), p.y() - wallCentre().y());
    return inside ? r < uncutRadius() : r > uncutRadius();
  }
}
