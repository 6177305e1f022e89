package kerfwright.catalogue.silhouette;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.Remark;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;

/**
 * Profile of an instrument, from the tip along the axis: half of the outline seen from the side.
 * Head diameter, head length, overall length and shank are the instrument's own; the neck is
 * assumed and says so.
 *
 * @param head working part, from the tip to the neck
 * @param neck from the end of the head to the shank
 * @param shank to the far end
 * @param working where on the head there is abrasive or blades
 * @param neckDiameterMm assumed diameter of the neck
 * @param assumed what was assumed
 */
public record Silhouette(
    List<ProfilePoint> head,
    List<ProfilePoint> neck,
    List<ProfilePoint> shank,
    List<WorkingBand> working,
    double neckDiameterMm,
    List<Remark> assumed) {
  public Silhouette {
    head = List.copyOf(head);
    neck = List.copyOf(neck);
    shank = List.copyOf(shank);
    working = List.copyOf(working);
    assumed = List.copyOf(assumed);
  }

  public static Silhouette of(InstrumentProperties instrument) {
    return of(instrument, SilhouetteSettings.PROJECT);
  }

  public static Silhouette of(InstrumentProperties instrument, SilhouetteSettings settings) {
    double radius = instrument.headDiameter().millimetres() / 2;
    double length = instrument.headLength().millimetres();
    double overall = instrument.overallLength().millimetres();
    double shankRadius = instrument.shank().diameter().millimetres() / 2;
    if (!(radius > 0
        && length > 0
        && overall > Math.max(length, 2 * radius * roundness(instrument)))) {
      throw new IllegalArgumentException(
          "An outline needs a head with diameter and length, and an overall length above it; got"
              + " head "
              + 2 * radius
              + " x "
              + length
              + " mm, overall "
              + overall
              + " mm");
    }
    double neckRadius = settings.neckDiameterMm(2 * radius, 2 * shankRadius) / 2;
    List<ProfilePoint> head =
        new HeadProfile(radius, length, neckRadius, ShapeDetail.of(instrument), settings)
            .points(instrument.shape());
    ProfilePoint last = head.get(head.size() - 1);
    double shankStart = shankStart(last.zMm(), overall, neckRadius, instrument.shank(), settings);
    return new Silhouette(
        head,
        neck(last, neckRadius, shankStart, shankRadius, settings),
        shank(instrument.shank(), shankStart, overall),
        working(instrument.shape(), last.zMm()),
        2 * neckRadius,
        List.of(settings.neckRule()));
  }

  /** The whole profile, tip to far end; joints appear once. */
  public List<ProfilePoint> profile() {
    List<ProfilePoint> all = new ArrayList<>(head);
    all.addAll(neck.subList(1, neck.size()));
    all.addAll(shank.subList(1, shank.size()));
    return List.copyOf(all);
  }

  /** Largest width of the working part, mm. */
  public double headWidthMm() {
    return 2 * head.stream().mapToDouble(ProfilePoint::rMm).max().orElseThrow();
  }

  /** Where the working part ends, mm from the tip. A ball ends where its neck begins. */
  public double headEndMm() {
    return head.get(head.size() - 1).zMm();
  }

  public double shankStartMm() {
    return shank.get(0).zMm();
  }

  public double overallMm() {
    return shank.get(shank.size() - 1).zMm();
  }

  private static double roundness(InstrumentProperties instrument) {
    return instrument.shape() == ShapeFamily.ROUND ? 1 : 0;
  }

  /** The shank begins where the chuck ends, or later where head and cone need the room. */
  private static double shankStart(
      double headEnd, double overall, double neckRadius, ShankType type, SilhouetteSettings s) {
    double rise = type.diameter().millimetres() / 2 - neckRadius;
    double cone = rise / Math.tan(Math.toRadians(s.neckConeHalfAngleDeg()));
    double wanted = Math.max(overall - type.heldLength().millimetres(), headEnd + cone);
    return Math.min(wanted, headEnd + 0.5 * (overall - headEnd));
  }

  private static List<ProfilePoint> neck(
      ProfilePoint headEnd, double radius, double to, double shankRadius, SilhouetteSettings s) {
    double cone = (shankRadius - radius) / Math.tan(Math.toRadians(s.neckConeHalfAngleDeg()));
    return new ProfilePath(headEnd.zMm(), headEnd.rMm())
        .lineTo(headEnd.zMm(), radius)
        .lineTo(Math.max(headEnd.zMm(), to - cone), radius)
        .lineTo(to, shankRadius)
        .points();
  }

  /** Plain with a broken edge; a latch shank has its groove, drawn to indicate it only. */
  private static List<ProfilePoint> shank(ShankType type, double from, double overall) {
    double r = type.diameter().millimetres() / 2;
    double room = overall - from;
    ProfilePath path = new ProfilePath(from, r);
    if (type == ShankType.RA && room > 4) {
      path.lineTo(overall - 2.4, r)
          .lineTo(overall - 2.4, 0.65 * r)
          .lineTo(overall - 1.5, 0.65 * r)
          .lineTo(overall - 1.5, r);
    }
    double edge = Math.min(0.2, 0.1 * room);
    return path.lineTo(overall - edge, r).lineTo(overall, r - edge).points();
  }

  private static List<WorkingBand> working(ShapeFamily shape, double headEnd) {
    return switch (shape) {
      case CYLINDER_END_CUTTING -> List.of(new WorkingBand(0, Math.min(0.3, headEnd)));
      case DEPTH_MARKER -> HeadProfile.depthRings(headEnd);
      default -> List.of(new WorkingBand(0, headEnd));
    };
  }
}
