package kerfwright.app.daypage;

import java.util.List;
import java.util.Locale;
import kerfwright.app.words.Say;
import kerfwright.practice.horizon.StockCurve;
import kerfwright.practice.horizon.StockPoint;

/** Shortages a week against the cost of the stock, to scale. */
record WeekCurve(Say say, StockCurve curve) {
  private static final int WIDE = 900;
  private static final int HIGH = 380;
  private static final int LEFT = 70;
  private static final int TOP = 20;
  private static final int BOTTOM = 58;

  String svg(StockPoint enough) {
    double most =
        Math.max(
            1, Math.max(curve.now().shortagesPerWeek(), curve.points().get(0).shortagesPerWeek()));
    double dearest =
        Math.max(curve.now().cost(), curve.points().get(curve.points().size() - 1).cost());
    StringBuilder out = new StringBuilder();
    out.append(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"curve\" role=\"img\" viewBox=\"0 0 ");
    out.append(WIDE).append(' ').append(HIGH).append("\" aria-label=\"");
    out.append(say.at("day.week-curve")).append("\">");
    out.append(
        String.format(
            Locale.ROOT,
            "<path class=\"curve-axis\" d=\"M%d %dV%dH%d\"/>",
            LEFT,
            TOP,
            HIGH - BOTTOM,
            WIDE - 20));
    for (int part = 0; part <= 4; part++) {
      double value = most * part / 4;
      label(out, LEFT - 8, y(value, most) + 6, "end", say.whole(Math.round(value)));
      double cost = dearest * part / 4;
      label(out, x(cost, dearest), HIGH - BOTTOM + 24, "middle", say.whole(Math.round(cost)));
    }
    label(out, WIDE - 20, HIGH - 8, "end", say.at("day.week-cost"));
    label(out, LEFT + 8, TOP + 4, "start", say.at("day.week-shortages"));
    StringBuilder path = new StringBuilder();
    List<StockPoint> points = curve.points();
    for (int i = 0; i < points.size(); i++) {
      StockPoint p = points.get(i);
      path.append(i == 0 ? "M" : "L");
      path.append(
          String.format(
              Locale.ROOT, "%.1f %.1f", x(p.cost(), dearest), y(p.shortagesPerWeek(), most)));
    }
    out.append("<path class=\"curve-line\" d=\"").append(path).append("\"/>");
    mark(out, "curve-dot", enough, dearest, most, say.at("day.week-enough"), -34);
    mark(out, "curve-now", curve.now(), dearest, most, say.at("day.week-now"), 26);
    return out.append("</svg>").toString();
  }

  private static double x(double cost, double dearest) {
    return LEFT + cost / dearest * (WIDE - LEFT - 40);
  }

  private static double y(double shortages, double most) {
    return HIGH - BOTTOM - shortages / most * (HIGH - BOTTOM - TOP - 16);
  }

  private static void mark(
      StringBuilder out,
      String kind,
      StockPoint p,
      double dearest,
      double most,
      String words,
      int beside) {
    double x = x(p.cost(), dearest);
    double y = y(p.shortagesPerWeek(), most);
    out.append(
        String.format(
            Locale.ROOT, "<circle class=\"%s\" cx=\"%.1f\" cy=\"%.1f\" r=\"8\"/>", kind, x, y));
    boolean right = x > WIDE * 0.75;
    label(
        out,
        right ? x - 12 : x + 12,
        y + (beside < 0 ? beside : -beside + 8),
        right ? "end" : "start",
        words);
  }

  private static void label(StringBuilder out, double x, double y, String anchor, String words) {
    out.append(
        String.format(
            Locale.ROOT,
            "<text class=\"lane-text\" font-size=\"16\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">",
            x,
            y,
            anchor));
    out.append(words.replace("&", "&amp;").replace("<", "&lt;")).append("</text>");
  }
}
