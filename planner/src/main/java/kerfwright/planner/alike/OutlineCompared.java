package kerfwright.planner.alike;

import java.util.List;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.silhouette.ProfilePoint;
import kerfwright.catalogue.silhouette.Silhouette;

/**
 * How far the outlines of two heads lie apart: both scaled to the same length and width, so that
 * size is not counted twice, area between them over the area of the wanted one.
 */
final class OutlineCompared {
  private static final int STATIONS = 100;

  private OutlineCompared() {}

  static double share(InstrumentProperties wanted, InstrumentProperties other) {
    double[] mine = radii(wanted);
    double[] its = radii(other);
    double between = 0;
    double area = 0;
    for (int i = 0; i < STATIONS; i++) {
      between += Math.abs(mine[i] - its[i]);
      area += mine[i];
    }
    return between / area;
  }

  private static double[] radii(InstrumentProperties instrument) {
    List<ProfilePoint> head = Silhouette.of(instrument).head();
    double length = head.get(head.size() - 1).zMm();
    double widest = head.stream().mapToDouble(ProfilePoint::rMm).max().orElse(1);
    double[] radii = new double[STATIONS];
    for (int i = 0; i < STATIONS; i++) {
      radii[i] = radiusAt(head, length * (i + 0.5) / STATIONS) / widest;
    }
    return radii;
  }

  private static double radiusAt(List<ProfilePoint> head, double z) {
    for (int i = 1; i < head.size(); i++) {
      ProfilePoint a = head.get(i - 1);
      ProfilePoint b = head.get(i);
      if (b.zMm() >= z && b.zMm() > a.zMm()) {
        return a.rMm() + (b.rMm() - a.rMm()) * (z - a.zMm()) / (b.zMm() - a.zMm());
      }
    }
    return head.get(head.size() - 1).rMm();
  }
}
