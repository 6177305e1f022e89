package kerfwright.app.drawing.strip;

import java.util.List;
import kerfwright.app.drawing.Anchor;
import kerfwright.app.drawing.Figures;
import kerfwright.app.drawing.Hatch;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.Svg;
import kerfwright.app.drawing.Type;
import kerfwright.app.drawing.instrument.Pose;
import kerfwright.app.drawing.instrument.ShortInstrument;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.material.Material;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.plan.Stroke;

/** One stage of a strip: the layers, what is cut, the instrument in its place, the travel. */
record StageDrawing(Say say, StripScale scale, AtWork work) {
  String draw(String id) {
    Svg svg = Svg.image(id, scale.width(), scale.height(), title(), about());
    layers(svg);
    if (scale.pulp()) {
      svg.rect(0.5, scale.bottom(), scale.width() - 1, StripScale.PULP, Pen.PULP, "pulp");
    }
    ShortInstrument instrument = scale.instrument(work);
    Pose pose = pose(instrument);
    if (scale.side()) {
      cutFromTheSide(svg, pose, instrument);
    } else {
      cutFromAbove(svg);
    }
    instrument.draw(svg, pose);
    travel(svg, pose, instrument);
    badge(svg);
    svg.text(scale.width() / 2, scale.height() - 6, Anchor.MIDDLE, Type.LABEL_STRONG, reached(say));
    svg.open(
            "g",
            "class",
            "depth-scale",
            "data-steps",
            work.stepNumbers(),
            "data-side",
            Boolean.toString(scale.side()),
            "data-zero",
            Svg.number(scale.at(0)),
            "data-per-mm",
            Double.toString(scale.perMm()),
            "data-from",
            Svg.number(top(pose, instrument)),
            "data-to",
            Svg.number(scale.bottom()))
        .close("g");
    return svg.finish();
  }

  /** How deep it is afterwards; the roughness where it only smooths. */
  private String reached(Say say) {
    Double ra = work.smoothRaUm();
    if (ra != null) {
      String um = Figures.of(say, ra);
      return fits(say.at("drawn.stage-smooth", um), um + " \u00b5m", um);
    }
    String words = Figures.mm(say, work.toMm());
    return fits(words, words.replaceFirst("[^0-9.,]*mm$", ""));
  }

  /** The longest that is not cut off. */
  private String fits(String... words) {
    for (String one : words) {
      if (Type.LABEL_STRONG.width(one) < scale.width()) {
        return one;
      }
    }
    return words[words.length - 1];
  }

  private Pose pose(ShortInstrument instrument) {
    double p = scale.perMm();
    double half = instrument.silhouette().headWidthMm() / 2;
    if (scale.side()) {
      double x = scale.at(work.toMm()) - half * p;
      return new Pose(x, scale.bottom() - StripScale.PULP, p, true);
    }
    double middle = scale.width() / 2;
    boolean atTheWall = along(work.stroke());
    double play = work.wideMm() / 2 - half;
    return new Pose(
        middle - (atTheWall ? Math.max(0, play) * p : 0), scale.at(work.toMm()), p, true);
  }

  private void layers(Svg svg) {
    double depth = 0;
    Hatch before = null;
    boolean turned = false;
    for (Layer layer : scale.layers()) {
      Material material = layer.material();
      Hatch hatch = Hatch.of(material);
      turned = hatch == before && !turned;
      before = hatch;
      double from = scale.at(depth);
      depth += layer.thickness().typical().millimetres();
      double thick = scale.at(depth) - from;
      if (thick > 0) {
        double x = scale.side() ? from : 0.5;
        double y = scale.side() ? StripScale.HEAD : from;
        double wide = scale.side() ? thick : scale.width() - 1;
        double high = scale.side() ? scale.bottom() - y : thick;
        String group = material.group().id();
        svg.rect(x, y, wide, high, Hatch.ground(material), "layer", group);
        String lines = hatch.path(x, y, wide, high, turned);
        if (!lines.isEmpty()) {
          svg.path(lines, Pen.HATCH);
        }
      }
    }
  }

  /** An opening, seen from the front. */
  private void cutFromAbove(Svg svg) {
    double wide = work.wideMm() * scale.perMm();
    double left = (scale.width() - wide) / 2;
    double top = scale.at(0);
    double before = scale.at(work.beforeMm());
    double floor = scale.at(work.toMm());
    svg.rect(left, top - 1, wide, floor - top + 1, Pen.PAPER, "opening");
    if (floor > before) {
      svg.rect(left, before, wide, floor - before, Pen.TINT, "band");
    }
    svg.polyline(
        List.of(
            new Svg.Point(left, top),
            new Svg.Point(left, floor),
            new Svg.Point(left + wide, floor),
            new Svg.Point(left + wide, top)),
        Pen.INK,
        "wall");
  }

  private double top(Pose pose, ShortInstrument instrument) {
    return scale.side()
        ? Math.max(StripScale.HEAD, pose.y() - instrument.silhouette().headEndMm() * pose.perMm())
        : scale.at(0);
  }

  /** A surface, seen from the side: what is above the head is not in the picture. */
  private void cutFromTheSide(Svg svg, Pose pose, ShortInstrument instrument) {
    double outer = scale.at(0);
    double before = scale.at(work.beforeMm());
    double face = scale.at(work.toMm());
    double top = top(pose, instrument);
    svg.rect(outer - 1, 0, scale.width() - outer + 1, top, Pen.PAPER);
    svg.rect(outer - 1, top, face - outer + 1, pose.y() - top, Pen.PAPER, "opening");
    if (face > before) {
      svg.rect(before, top, face - before, pose.y() - top, Pen.TINT, "band");
    }
    svg.polyline(
        List.of(
            new Svg.Point(scale.width() - 1, top),
            new Svg.Point(face, top),
            new Svg.Point(face, pose.y()),
            new Svg.Point(outer, pose.y()),
            new Svg.Point(outer, scale.bottom())),
        Pen.INK,
        "wall");
  }

  private static boolean along(Stroke stroke) {
    return stroke == Stroke.AGAINST_ROTATION || stroke == Stroke.WITH_ROTATION;
  }

  /** Which way the hand goes: across the picture by an arrow, into it and out of it by a sign. */
  private void travel(Svg svg, Pose pose, ShortInstrument instrument) {
    Stroke stroke = work.stroke();
    boolean against = stroke == Stroke.AGAINST_ROTATION;
    double half = instrument.silhouette().headWidthMm() / 2 * pose.perMm();
    double middle = pose.y() - Math.min(30, instrument.silhouette().headEndMm() * pose.perMm() / 2);
    if (along(stroke) && scale.side()) {
      sign(svg, Math.min(scale.width() - 11, scale.at(work.toMm()) + 12), middle, !against);
    } else if (along(stroke)) {
      double wide = work.wideMm() * pose.perMm() / 2;
      double y = Math.max(scale.at(0) + 12, middle);
      sign(svg, Math.max(10, scale.width() / 2 - wide - 11), y, against);
      sign(svg, Math.min(scale.width() - 10, scale.width() / 2 + wide + 11), y, !against);
    } else if (stroke == Stroke.AXIAL || scale.side()) {
      double x = scale.side() ? Math.max(5, pose.x() - half - 8) : pose.x() + half + 9;
      both(svg, x, middle - 16, x, middle + 16);
    } else {
      both(svg, pose.x() - 22, pose.y() + 9, pose.x() + 22, pose.y() + 9);
    }
  }

  private static void both(Svg svg, double x1, double y1, double x2, double y2) {
    double x = (x1 + x2) / 2;
    double y = (y1 + y2) / 2;
    svg.arrow(x, y, x1, y1, Pen.INK, Pen.SOLID, "travel");
    svg.arrow(x, y, x2, y2, Pen.INK, Pen.SOLID, "travel");
  }

  /** A cross goes away from who looks, a dot comes towards them. */
  private static void sign(Svg svg, double x, double y, boolean away) {
    svg.circle(x, y, 9, Pen.PAPER);
    svg.circle(x, y, 8, Pen.INK, "travel", away ? "away" : "towards");
    if (away) {
      double d = 8 * Math.sqrt(0.5);
      svg.line(x - d, y - d, x + d, y + d, Pen.INK);
      svg.line(x - d, y + d, x + d, y - d, Pen.INK);
    } else {
      svg.circle(x, y, 2.6, Pen.SOLID);
    }
  }

  private void badge(Svg svg) {
    String all = work.badge();
    String words = 28 + 8.5 * all.length() > scale.width() ? all.split("\u2013")[0] : all;
    double wide = 16 + 8.5 * words.length();
    svg.open("g", "class", "badge");
    svg.circle(12, 14, 12, Pen.ACCENT_FILL);
    if (words.length() > 1) {
      svg.rect(12, 2, wide - 12, 24, Pen.ACCENT_FILL);
      svg.circle(wide, 14, 12, Pen.ACCENT_FILL);
    }
    svg.text(words.length() > 1 ? (wide + 12) / 2 : 12, 19.5, Anchor.MIDDLE, Type.BADGE, words);
    svg.close("g");
  }

  private String title() {
    return say.at(
        work.id().isEmpty() ? "drawn.stage-title-new" : "drawn.stage-title",
        work.badge(),
        work.id(),
        Labels.kind(say, work.what().kind()),
        Labels.shape(say, work.what().shapeName()));
  }

  private String about() {
    return say.at(
        scale.side() ? "drawn.stage-about-side" : "drawn.stage-about",
        Figures.mm(say, work.beforeMm()),
        Figures.mm(say, work.toMm()),
        Figures.mm(say, work.what().headDiameter().millimetres()),
        Labels.stroke(say, work.stroke()));
  }
}
