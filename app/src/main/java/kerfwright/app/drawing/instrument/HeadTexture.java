package kerfwright.app.drawing.instrument;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.Svg;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.silhouette.ProfilePoint;
import kerfwright.catalogue.silhouette.Silhouette;
import kerfwright.catalogue.silhouette.WorkingBand;

/**
 * What covers a head: its real blades as seen from the side (half of them face the viewer), or dots
 * that indicate abrasive. The twist of the blades and the pattern of dots are project settings;
 * dots are not grains, see {@link AbrasiveSurface}.
 */
record HeadTexture(InstrumentProperties instrument, Silhouette silhouette) {
  private static final double TWIST_RAD = Math.toRadians(25);
  private static final int STEPS = 24;

  void draw(Svg svg, Pose pose) {
    for (WorkingBand band : silhouette.working()) {
      if (instrument.kind().bladed() && instrument.blades() != null) {
        blades(svg, band, instrument.blades(), pose);
      } else if (instrument.kind().isDiamond() || instrument.kind() == InstrumentKind.STONE) {
        dots(svg, band, pose);
      }
    }
  }

  private void blades(Svg svg, WorkingBand band, int count, Pose pose) {
    double length = Math.max(silhouette.headEndMm(), 1e-9);
    for (int blade = 0; blade < count; blade++) {
      double start = 2 * Math.PI * (blade + 0.25) / count;
      List<Svg.Point> edge = new ArrayList<>();
      for (int i = 0; i <= STEPS; i++) {
        double z = band.fromMm() + (band.toMm() - band.fromMm()) * (0.01 + 0.98 * i / STEPS);
        double angle = start + TWIST_RAD * (z / length - 0.5);
        boolean gap = instrument.crossCut() && i % 4 == 3;
        if (Math.cos(angle) > 0 && !gap) {
          edge.add(pose.at(z, radiusAt(z) * Math.sin(angle)));
        } else {
          flush(svg, edge);
        }
      }
      flush(svg, edge);
    }
  }

  private static void flush(Svg svg, List<Svg.Point> edge) {
    if (edge.size() > 1) {
      svg.polyline(edge, Pen.THIN, "blade");
    }
    edge.clear();
  }

  private void dots(Svg svg, WorkingBand band, Pose pose) {
    double perMm = pose.perMm();
    double size = 0.45 + 0.45 * coarseness();
    double pitch = 2.6 + 1.6 * size;
    StringBuilder d = new StringBuilder();
    int column = 0;
    for (double px = band.fromMm() * perMm + pitch / 2;
        px < band.toMm() * perMm - size;
        px += pitch) {
      double room = radiusAt(px / perMm) * perMm - size - 0.6;
      double shift = column++ % 2 == 0 ? 0 : pitch / 2;
      for (int row = -60; row <= 60; row++) {
        double py = row * pitch + shift;
        if (Math.abs(py) < room) {
          Svg.Point dot = pose.at(px / perMm, py / perMm);
          d.append(Svg.move(new Svg.Point(dot.x() - size, dot.y())));
          d.append("a").append(arc(size, 2 * size)).append("a").append(arc(size, -2 * size));
        }
      }
    }
    if (d.length() > 0) {
      svg.path(d.toString(), Pen.SOLID, "abrasive");
    }
  }

  private static String arc(double radius, double across) {
    String r = Svg.number(radius);
    return r + " " + r + " 0 1 0 " + Svg.number(across) + " 0";
  }

  /** 0 for the finest class, 1 for the coarsest. */
  private double coarseness() {
    return instrument.grit() == null
        ? 0.5
        : 1
            - instrument.grit().ordinal()
                / (double) (instrument.grit().getClass().getEnumConstants().length - 1);
  }

  private double radiusAt(double zMm) {
    List<ProfilePoint> head = silhouette.head();
    for (int i = 1; i < head.size(); i++) {
      ProfilePoint a = head.get(i - 1);
      ProfilePoint b = head.get(i);
      if (zMm > a.zMm() && zMm <= b.zMm()) {
        return a.rMm() + (b.rMm() - a.rMm()) * (zMm - a.zMm()) / (b.zMm() - a.zMm());
      }
    }
    return 0;
  }
}
