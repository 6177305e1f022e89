package kerfwright.catalogue.silhouette;

import java.util.List;
import kerfwright.catalogue.instrument.ShapeFamily;

/**
 * Outline of the working part from tip to neck, by shape family. The largest radius and the length
 * are the instrument's own; proportions between them (where a flame is widest, how round an edge
 * is) are drawn from the name of the shape and are project settings with no source.
 *
 * @param radius largest radius, mm
 * @param length head length, mm
 * @param neck radius of the neck that follows, mm
 * @param detail finer difference within the family
 * @param settings what the number does not tell
 */
record HeadProfile(
    double radius, double length, double neck, ShapeDetail detail, SilhouetteSettings settings) {

  List<ProfilePoint> points(ShapeFamily family) {
    return switch (family) {
      case ROUND -> ball();
      case INVERTED_CONE -> invertedCone(detail == ShapeDetail.ELONGATED ? 3 : 10);
      case CUP ->
          from(0)
              .lineTo(0, radius)
              .lineTo(0.55 * length, 0.92 * radius)
              .closeTo(length, neck)
              .points();
      case WHEEL -> wheel();
      case LENS ->
          from(0)
              .lineTo(0, 0.15 * radius)
              .lineTo(length / 2, radius)
              .lineTo(length, Math.max(neck, 0.15 * radius))
              .points();
      case CYLINDER, CYLINDER_END_CUTTING, DISC -> blunt(radius, 0);
      case CYLINDER_POINTED -> pointedCylinder();
      case CYLINDER_ROUND_END -> blunt(radius, 1);
      case CYLINDER_ROUNDED_EDGE -> blunt(radius, 0.4);
      case TAPER_POINTED -> from(0).lineTo(length, radius).points();
      case TAPER_FLAT_END -> blunt(taperTip(), 0);
      case TAPER_ROUND_END -> blunt(taperTip(), 1);
      case TAPER_SAFE_END -> blunt(taperTip(), 0.7);
      case TAPER_ROUNDED_EDGE -> blunt(taperTip(), 0.4);
      case PEAR -> pear(detail == ShapeDetail.ELONGATED);
      case PEAR_ELONGATED -> pear(true);
      case FLAME ->
          from(0)
              .archTo(0.62 * length, radius)
              .swayTo(length, Math.max(neck, 0.8 * radius))
              .points();
      case BUD -> bud();
      case EGG -> from(0).roundTo(0.52 * length, radius).closeTo(length, neck).points();
      case TORPEDO ->
          from(0)
              .archTo(Math.min(3 * radius, 0.5 * length), radius)
              .lineTo(length, radius)
              .points();
      case TORPEDO_TAPERED ->
          from(0)
              .archTo(Math.min(3 * taperTip(), 0.5 * length), taperTip())
              .lineTo(length, radius)
              .points();
      case SURGICAL ->
          from(0)
              .lineTo(Math.min(1.2 * taperTip(), 0.3 * length), taperTip())
              .lineTo(0.8 * length, radius)
              .lineTo(length, Math.max(neck, 0.85 * radius))
              .points();
      case INTERDENTAL -> interdental();
      case NEEDLE ->
          from(0)
              .roundTo(Math.min(0.15 * radius, 0.3 * length), 0.15 * radius)
              .lineTo(0.9 * length, radius)
              .lineTo(length, radius)
              .points();
      case DEPTH_MARKER -> depthMarker();
    };
  }

  private static ProfilePath from(double zMm) {
    return new ProfilePath(zMm, 0);
  }

  /** A circle, left where the neck begins; with a coated collar in one shape. */
  private List<ProfilePoint> ball() {
    double end = radius + Math.sqrt(radius * radius - neck * neck);
    double stop = Math.acos((radius - end) / radius);
    ProfilePath path = from(0);
    int steps = 48;
    for (int i = 1; i <= steps; i++) {
      // the quarter point is set exactly, so that the width is the diameter
      double t =
          i < steps / 2
              ? Math.PI / 2 * i / (steps / 2)
              : Math.PI / 2 + (stop - Math.PI / 2) * (i - steps / 2) / (steps / 2);
      path.lineTo(Math.max(0, radius - radius * Math.cos(t)), radius * Math.sin(t));
    }
    if (detail == ShapeDetail.COLLAR) {
      path.lineTo(Math.max(end + 0.8 * radius, length), neck);
    }
    return path.points();
  }

  private List<ProfilePoint> invertedCone(double halfAngleDeg) {
    double top = Math.max(neck, radius - length * Math.tan(Math.toRadians(halfAngleDeg)));
    return from(0).lineTo(0, radius).lineTo(length, Math.min(radius, top)).points();
  }

  private List<ProfilePoint> wheel() {
    return switch (detail) {
      case BARREL ->
          from(0)
              .lineTo(0, 0.8 * radius)
              .archTo(length / 2, radius)
              .fallTo(length, 0.8 * radius)
              .points();
      case ROUNDED_EDGE -> {
        double edge = Math.min(length / 2, radius / 2);
        yield from(0)
            .lineTo(0, radius - edge)
            .roundTo(edge, radius)
            .lineTo(length - edge, radius)
            .closeTo(length, radius - edge)
            .points();
      }
      default -> blunt(radius, 0);
    };
  }

  /** A side from the end's radius to the full one, the end flat, with a rounded edge or round. */
  private List<ProfilePoint> blunt(double tip, double roundShare) {
    double edge = roundShare * tip;
    double depth = Math.min(edge, 0.5 * length);
    return from(0).lineTo(0, tip - edge).roundTo(depth, tip).lineTo(length, radius).points();
  }

  private double taperTip() {
    double tip = radius - length * Math.tan(Math.toRadians(settings.taperHalfAngleDeg()));
    return Math.max(tip, settings.tipAtLeastOfHead() * radius);
  }

  private List<ProfilePoint> pointedCylinder() {
    double point = Math.min(1.2 * radius, 0.5 * length);
    return from(0).lineTo(point, radius).lineTo(length, radius).points();
  }

  private List<ProfilePoint> pear(boolean elongated) {
    double top = Math.max(neck, (elongated ? 0.78 : 0.72) * radius);
    if (elongated) {
      double edge = Math.min(0.6 * radius, 0.3 * length);
      return from(0)
          .lineTo(0, radius - 0.6 * radius)
          .roundTo(edge, radius)
          .lineTo(length, top)
          .points();
    }
    return from(0).roundTo(Math.min(radius, 0.5 * length), radius).swayTo(length, top).points();
  }

  private List<ProfilePoint> bud() {
    double widest = (detail == ShapeDetail.CONICAL ? 0.75 : 0.48) * length;
    ProfilePath path = from(0).archTo(widest, radius);
    return (detail == ShapeDetail.CONICAL
            ? path.closeTo(length, Math.max(neck, 0.6 * radius))
            : path.fallTo(length, neck))
        .points();
  }

  private List<ProfilePoint> interdental() {
    return detail == ShapeDetail.DOUBLE_TAPER
        ? from(0).lineTo(0.5 * length, radius).lineTo(length, neck).points()
        : from(0).archTo(0.7 * length, radius).fallTo(length, neck).points();
  }

  private List<ProfilePoint> depthMarker() {
    ProfilePath path = from(0).roundTo(Math.min(neck, 0.1 * length), neck);
    for (WorkingBand ring : depthRings(length)) {
      path.lineTo(ring.fromMm(), neck)
          .lineTo(ring.fromMm(), radius)
          .lineTo(ring.toMm(), radius)
          .lineTo(ring.toMm(), neck);
    }
    return path.lineTo(length, neck).points();
  }

  /** Three rings along the head. */
  static List<WorkingBand> depthRings(double length) {
    return List.of(ring(0.2, length), ring(0.5, length), ring(0.8, length));
  }

  private static WorkingBand ring(double at, double length) {
    return new WorkingBand((at - 0.05) * length, (at + 0.05) * length);
  }
}
