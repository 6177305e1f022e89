package kerfwright.app.drawing;

import kerfwright.catalogue.material.Material;
import org.jspecify.annotations.Nullable;

/** Small line drawings of a tooth for what is chosen in the form of a case; words stand beside. */
public final class CaseMark {
  private static final String CROWN =
      "M12 30C10 20 14 8 20 8C25 8 28 12 32 12C36 12 39 8 44 8C50 8 54 20 52 30Z";
  private static final String ROOTS =
      "M12 30C13 40 16 52 20 52C25 52 26 40 32 40C38 40 39 52 44 52C48 52 51 40 52 30";
  private static final String PULP = "M24 32C25 24 28 23 32 24C36 23 39 24 40 32Z";
  private static final String BOX = "M24 9V21H40V9C38 11 35 12 32 12C29 12 26 11 24 9Z";
  private static final String FACE = "M12 30C10 20 14 8 20 8L23 9C18 14 16 22 17 30Z";
  private static final String PATCH = "M7 16H13V25H7Z";
  private static final String POST = "M30 15H34V46H30Z";
  private static final String SHINE = "M47 1L49 7L55 9L49 11L47 17L45 11L39 9L45 7Z";

  private CaseMark() {}

  /** What a procedure does to a tooth; one that is not known is the tooth alone. */
  public static String procedure(String id) {
    String what =
        switch (id) {
          case "access-cavity" ->
              path(PULP, Pen.PULP) + path("M28 6V26H36V6Z", Pen.TINT, Pen.ACCENT);
          case "deroof-and-refine" ->
              path(PULP, Pen.PULP) + path("M24 6V31H40V6Z", Pen.TINT, Pen.ACCENT);
          case "crown-sectioning" ->
              path(CROWN, Pen.METAL) + path("M30 4V30H34V4Z", Pen.ACCENT_FILL);
          case "cavity-preparation" -> path(BOX, Pen.TINT, Pen.ACCENT);
          case "inlay-cavity" -> path("M20 7L25 21H39L44 7Z", Pen.TINT, Pen.ACCENT);
          case "onlay-cavity" -> path("M11 6V19H23V25H41V19H53V6Z", Pen.TINT, Pen.ACCENT);
          case "enamel-bevel" -> path("M41 8L53 20L53 8Z", Pen.TINT, Pen.ACCENT);
          case "crown-preparation" -> path("M12 30H19L23 15H41L45 30H52", Pen.ACCENT);
          case "veneer-preparation" -> path(FACE, Pen.TINT, Pen.ACCENT);
          case "amalgam-removal" -> path(BOX, Pen.METAL) + away(32, 4);
          case "composite-removal" -> path(BOX, Pen.LAYER) + away(32, 4);
          case "adhesive-clean-up" -> path(PATCH, Pen.TINT, Pen.ACCENT);
          case "occlusal-adjustment" ->
              path("M6 6H58", Pen.ACCENT_GUIDE) + path("M16 8A4 4 0 0 0 24 8Z", Pen.ACCENT_FILL);
          case "post-exposure" ->
              path("M26 8V20H38V8Z", Pen.TINT, Pen.ACCENT) + path(POST, Pen.METAL);
          case "post-removal" -> path(POST, Pen.METAL) + away(32, 2);
          default -> id.startsWith("finish-") ? path(SHINE, Pen.ACCENT_FILL) : "";
        };
    return tooth(what);
  }

  /** Where a restoration sits, hatched as its outermost material is in the sections. */
  public static String restoration(String id, @Nullable Material outer) {
    String on =
        id.startsWith("veneer")
            ? FACE
            : id.startsWith("post-")
                ? POST
                : id.startsWith("composite") || id.equals("amalgam") || id.equals("carious")
                    ? BOX
                    : id.equals("bracket-adhesive") ? PATCH : CROWN;
    if (outer == null) {
      return tooth(
          id.startsWith("unknown")
              ? "<text x=\"32\" y=\"27\" text-anchor=\"middle\" class=\"d-accent-fill\""
                  + " font-size=\"18\" font-weight=\"700\">?</text>"
              : "");
    }
    String pattern = "hatch-" + Hatch.of(outer).id();
    return tooth(
        path(on, Hatch.ground(outer)) + "<path d=\"" + on + "\" fill=\"url(#" + pattern + ")\"/>");
  }

  private static String away(double x, double y) {
    String at = Svg.number(x);
    return path("M" + at + " " + Svg.number(y + 14) + "V" + Svg.number(y), Pen.ACCENT)
        + path("M27 8L" + at + " " + Svg.number(y - 1) + "L37 8Z", Pen.ACCENT_FILL);
  }

  private static String tooth(String what) {
    return "<svg class=\"case-mark\" viewBox=\"0 0 64 56\" width=\"64\" height=\"56\""
        + " aria-hidden=\"true\" focusable=\"false\">"
        + path(ROOTS, Pen.BODY)
        + path(CROWN, Pen.BODY)
        + what
        + "</svg>";
  }

  private static String path(String d, Pen... pens) {
    StringBuilder all = new StringBuilder();
    for (Pen pen : pens) {
      all.append("<path d=\"").append(d).append("\" ").append(pen.attributes()).append("/>");
    }
    return all.toString();
  }
}
