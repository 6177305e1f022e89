package kerfwright.app.drawing;

import java.util.Locale;

/**
 * The style sheet that lays the teeth of a form out as arches to scale, each a target of at least
 * 44 pixels: the smallest crown, a lower central incisor, decides the scale.
 */
public final class ArchSheet {
  /** Pixels a millimetre; 5 mm and 4.2 mm are the smallest crowns. */
  private static final double PERMANENT_PER_MM = 9.4;

  private static final double PRIMARY_PER_MM = 11.2;

  /** Share of its place a crown fills. */
  private static final double FILLED = 0.94;

  private static final double EDGE_MM = 1;

  private ArchSheet() {}

  public static String css() {
    StringBuilder css = new StringBuilder("@container (min-width: 636px) {\n");
    for (boolean permanent : new boolean[] {true, false}) {
      for (boolean upper : new boolean[] {true, false}) {
        jaw(css, permanent, upper);
      }
    }
    return css.append("}\n").toString();
  }

  private static void jaw(StringBuilder css, boolean permanent, boolean upper) {
    double scale = permanent ? PERMANENT_PER_MM : PRIMARY_PER_MM;
    var crowns = Arch.crowns(permanent, upper);
    double half = 0;
    double deep = 0;
    double front = 0;
    for (Arch.Crown crown : crowns) {
      half = Math.max(half, crown.x() + Math.max(crown.along(), crown.across()) / 2);
      deep = Math.max(deep, crown.depth() + Math.max(crown.along(), crown.across()) / 2);
      front = Math.max(front, crown.across() / 2 - crown.depth());
    }
    half += EDGE_MM;
    front += EDGE_MM;
    double height = front + deep + EDGE_MM;
    String jaw = "." + (upper ? "upper" : "lower") + (permanent ? ".permanent" : ".primary");
    css.append(
        String.format(
            Locale.ROOT,
            ".arch%s { width: %.0fpx; height: %.0fpx; }%n",
            jaw,
            2 * half * scale,
            height * scale));
    for (Arch.Crown crown : crowns) {
      double depth = front + crown.depth();
      double degrees = Math.toDegrees(crown.turn());
      css.append(
          String.format(
              Locale.ROOT,
              ".arch .t%d { left: %.1fpx; top: %.1fpx; width: %.1fpx; height: %.1fpx;"
                  + " rotate: %.1fdeg; }%n.arch .t%d b { rotate: %.1fdeg; }%n",
              crown.fdi(),
              (half + crown.x()) * scale,
              (upper ? depth : height - depth) * scale,
              crown.along() * scale * FILLED,
              Math.max(crown.across() * scale * FILLED, 44),
              degrees,
              crown.fdi(),
              -degrees));
    }
  }
}
