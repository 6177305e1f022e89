package kerfwright.app.drawing.instrument;

import java.util.List;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.RingColour;
import kerfwright.app.drawing.Svg;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.silhouette.ProfilePoint;
import kerfwright.catalogue.silhouette.Silhouette;

/**
 * An instrument upright at its work: its head to scale, its neck as long as the work needs it, then
 * a break mark and the beginning of the shank with its ring.
 *
 * @param what the instrument
 * @param silhouette its outline
 * @param neckMm how much of the neck is drawn
 */
public record ShortInstrument(InstrumentProperties what, Silhouette silhouette, double neckMm) {
  private static final double LEAST_NECK_MM = 0.6;
  private static final double CONE_MM = 0.5;
  private static final double SHANK_MM = 1.9;
  private static final double GAP_MM = 0.35;

  /** Drawn so that the neck ends above a surface so far above the tip. */
  public static ShortInstrument reaching(InstrumentProperties what, double mm) {
    Silhouette silhouette = Silhouette.of(what);
    double wanted = Math.max(LEAST_NECK_MM, mm + 0.4 - silhouette.headEndMm());
    return new ShortInstrument(what, silhouette, wanted);
  }

  /** True where part of the neck is left out. */
  boolean broken() {
    return silhouette.shankStartMm() - silhouette.headEndMm() > neckMm + CONE_MM + 0.1;
  }

  public double widestMm() {
    return Math.max(silhouette.headWidthMm(), what.shank().diameter().millimetres());
  }

  public double tallMm() {
    return silhouette.headEndMm() + neckMm + GAP_MM + CONE_MM + SHANK_MM;
  }

  public void draw(Svg svg, Pose pose) {
    double end = silhouette.headEndMm();
    double neck = silhouette.neckDiameterMm() / 2;
    double shank = what.shank().diameter().millimetres() / 2;
    double from = end + neckMm;
    double cone = from + GAP_MM;
    double top = tallMm();
    polygon(svg, pose, "neck", end, neck, from, neck);
    svg.polygon(
        pose.mirrored(
            List.of(
                new ProfilePoint(cone, neck),
                new ProfilePoint(cone + CONE_MM, shank),
                new ProfilePoint(top, shank))),
        Pen.BODY,
        "shank");
    if (broken()) {
      mark(svg, pose, from, neck + 0.25);
      mark(svg, pose, cone, neck + 0.25);
    } else {
      polygon(svg, pose, "neck", from, neck, cone, neck);
    }
    mark(svg, pose, top, shank + 0.25);
    if (what.grit() != null) {
      Svg.Point ring = pose.at(cone + CONE_MM + 1.0, -shank);
      svg.rect(
          ring.x(),
          ring.y(),
          2 * shank * pose.perMm(),
          0.7 * pose.perMm(),
          RingColour.named(what.grit().ring()).attributes());
    }
    svg.polygon(pose.mirrored(silhouette.head()), Pen.BODY, "head");
    new HeadTexture(what, silhouette).draw(svg, pose);
  }

  private static void polygon(
      Svg svg, Pose pose, String name, double z1, double r1, double z2, double r2) {
    svg.polygon(
        pose.mirrored(List.of(new ProfilePoint(z1, r1), new ProfilePoint(z2, r2))), Pen.BODY, name);
  }

  /** Where something is left out. */
  private static void mark(Svg svg, Pose pose, double z, double r) {
    Svg.Point left = pose.at(z - 0.08, -r);
    Svg.Point right = pose.at(z + 0.08, r);
    svg.line(left.x(), left.y(), right.x(), right.y(), Pen.INK, "break");
  }
}
