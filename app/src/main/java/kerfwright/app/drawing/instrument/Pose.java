package kerfwright.app.drawing.instrument;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.drawing.Svg;
import kerfwright.catalogue.silhouette.ProfilePoint;

/**
 * How an instrument lies in a drawing.
 *
 * @param x where its tip is
 * @param y where its tip is
 * @param perMm drawing units a millimetre
 * @param upright true with the shank above the tip, false with the shank to the right of it
 */
public record Pose(double x, double y, double perMm, boolean upright) {
  /** A point of the instrument: z along the axis from the tip, r from the axis. */
  Svg.Point at(double zMm, double rMm) {
    return upright
        ? new Svg.Point(x + rMm * perMm, y - zMm * perMm)
        : new Svg.Point(x + zMm * perMm, y + rMm * perMm);
  }

  /** The whole outline of a half profile. */
  List<Svg.Point> mirrored(List<ProfilePoint> half) {
    List<Svg.Point> outline = new ArrayList<>();
    half.forEach(p -> outline.add(at(p.zMm(), -p.rMm())));
    for (int i = half.size() - 1; i >= 0; i--) {
      outline.add(at(half.get(i).zMm(), half.get(i).rMm()));
    }
    return outline;
  }
}
