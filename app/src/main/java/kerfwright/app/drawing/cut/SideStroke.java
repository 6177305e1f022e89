package kerfwright.app.drawing.cut;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.drawing.Anchor;
import kerfwright.app.drawing.Column;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.Svg;
import kerfwright.app.drawing.Type;
import kerfwright.app.words.Say;

/** Strokes that are understood from the side: pecks along the axis, and brushing with lifting. */
final class SideStroke {
  private static final double SURFACE = 132;
  private static final double FLOOR = 214;

  private SideStroke() {}

  static String axial(Say say, String id) {
    Svg svg = Svg.image(id, 320, 248, say.at("drawn.axial-title"), say.at("drawn.axial-about"));
    List<Svg.Point> block =
        List.of(
            new Svg.Point(20, SURFACE),
            new Svg.Point(92, SURFACE),
            new Svg.Point(92, 176),
            new Svg.Point(132, 176),
            new Svg.Point(132, SURFACE),
            new Svg.Point(204, SURFACE),
            new Svg.Point(204, FLOOR),
            new Svg.Point(20, FLOOR));
    svg.polygon(block, Pen.WORK, "work");
    svg.polyline(block.subList(0, 6), Pen.INK, "surface");
    instrument(svg, 112, 176, 15);
    svg.arrow(152, 62, 152, 116, Pen.ACCENT, Pen.ACCENT_FILL, "press");
    svg.arrow(172, 116, 172, 62, Pen.GUIDE, Pen.SOLID, "lift");
    svg.text(40, FLOOR - 10, Anchor.START, Type.PLAIN, say.at("drawn.stroke-work"));
    Column column = new Column(say, svg, 213, 76);
    column.add(Type.STRONG, say.at("drawn.axial"));
    column.add(Type.ACCENT, say.at("drawn.axial-press"));
    column.add(Type.PLAIN, say.at("drawn.axial-lift"));
    svg.text(12, 240, Anchor.START, Type.QUIET, say.at("drawn.axial-note"));
    return svg.finish();
  }

  static String brushing(Say say, String id) {
    Svg svg =
        Svg.image(id, 320, 248, say.at("drawn.brushing-title"), say.at("drawn.brushing-about"));
    List<Svg.Point> surface = new ArrayList<>();
    for (int i = 0; i <= 30; i++) {
      double x = 20 + 184.0 * i / 30;
      surface.add(new Svg.Point(x, 176 - 16 * Math.sin(Math.PI * i / 30)));
    }
    List<Svg.Point> block = new ArrayList<>(surface);
    block.add(new Svg.Point(204, FLOOR));
    block.add(new Svg.Point(20, FLOOR));
    svg.polygon(block, Pen.WORK, "work");
    svg.polyline(surface, Pen.INK, "surface");
    instrument(svg, 66, 163, 13);
    List<Svg.Point> sweep = new ArrayList<>();
    for (int i = 0; i <= 14; i++) {
      double x = 88 + 84.0 * i / 14;
      sweep.add(new Svg.Point(x, 166 - 16 * Math.sin(Math.PI * (x - 20) / 184)));
    }
    svg.polyline(sweep, Pen.ACCENT, "sweep");
    Svg.Point end = sweep.get(sweep.size() - 1);
    svg.arrow(end.x() - 4, end.y() - 1, end.x() + 5, end.y() + 3, Pen.ACCENT, Pen.ACCENT_FILL);
    List<Svg.Point> back = new ArrayList<>();
    for (int i = 0; i <= 20; i++) {
      double t = Math.PI * i / 20;
      back.add(new Svg.Point(136 + 46 * Math.cos(t), 142 - 50 * Math.sin(t)));
    }
    svg.polyline(back, Pen.GUIDE, "return");
    svg.arrow(90.6, 136, 90, 144, Pen.THIN, Pen.SOLID);
    svg.text(40, FLOOR - 10, Anchor.START, Type.PLAIN, say.at("drawn.stroke-work"));
    Column column = new Column(say, svg, 213, 106);
    column.add(Type.STRONG, say.at("drawn.brushing"));
    column.add(Type.ACCENT, say.at("drawn.brushing-sweep"));
    column.add(Type.PLAIN, say.at("drawn.brushing-lift"));
    svg.text(12, 240, Anchor.START, Type.QUIET, say.at("drawn.brushing-note"));
    return svg.finish();
  }

  private static void instrument(Svg svg, double x, double tip, double half) {
    List<Svg.Point> outline = new ArrayList<>();
    outline.add(new Svg.Point(x - half * 0.6, 34));
    outline.add(new Svg.Point(x - half * 0.6, tip - 78));
    outline.add(new Svg.Point(x - half, tip - 72));
    for (int i = 0; i <= 16; i++) {
      double t = Math.PI * i / 16;
      outline.add(new Svg.Point(x - half * Math.cos(t), tip - half + half * Math.sin(t)));
    }
    outline.add(new Svg.Point(x + half, tip - 72));
    outline.add(new Svg.Point(x + half * 0.6, tip - 78));
    outline.add(new Svg.Point(x + half * 0.6, 34));
    svg.polygon(outline, Pen.BODY, "instrument");
  }
}
