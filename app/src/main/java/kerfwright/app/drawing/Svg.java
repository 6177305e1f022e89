package kerfwright.app.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Writes one SVG drawing: escapes words, rounds numbers, carries title and description. */
public final class Svg {
  /** Length of the head of an arrow. */
  private static final double HEAD = 7;

  /** The same of a bold one. */
  static final double BOLD_HEAD = 21;

  /** A point in drawing units. */
  public record Point(double x, double y) {}

  private final StringBuilder out = new StringBuilder();

  Svg(String id, String role, double wide, double high, String title, String description) {
    // printing takes whole numbers only for the size of a drawing
    double width = Math.ceil(wide);
    double height = Math.ceil(high);
    if (!id.matches("[A-Za-z][A-Za-z0-9_-]*")) {
      throw new IllegalArgumentException(
          "A drawing's id is a letter, then letters, digits, - or _; got " + id);
    }
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" id=\"" + id + "\" class=\"drawing\"");
    out.append(" role=\"" + role + "\" aria-labelledby=\"" + id + "-title " + id + "-desc\"");
    out.append(" width=\"" + number(width) + "\" height=\"" + number(height) + "\"");
    out.append(" viewBox=\"0 0 " + number(width) + " " + number(height) + "\"");
    out.append(" font-family=\"sans-serif\">\n");
    out.append("<title id=\"" + id + "-title\">" + escape(title) + "</title>\n");
    out.append("<desc id=\"" + id + "-desc\">" + escape(description) + "</desc>\n");
    rect(0, 0, width, height, Pen.PAPER);
  }

  public static Svg image(
      String id, double width, double height, String title, String description) {
    return new Svg(id, "img", width, height, title, description);
  }

  public Svg rect(double x, double y, double width, double height, Pen pen, String... classes) {
    out.append("<rect x=\"" + number(x) + "\" y=\"" + number(y));
    out.append("\" width=\"" + number(width) + "\" height=\"" + number(height) + "\" ");
    return end(pen, classes);
  }

  public Svg circle(double x, double y, double radius, Pen pen, String... classes) {
    out.append("<circle cx=\"" + number(x) + "\" cy=\"" + number(y));
    out.append("\" r=\"" + number(radius) + "\" ");
    return end(pen, classes);
  }

  public Svg line(double x1, double y1, double x2, double y2, Pen pen, String... classes) {
    return path(move(new Point(x1, y1)) + lineTo(new Point(x2, y2)), pen, classes);
  }

  public Svg path(String d, Pen pen, String... classes) {
    out.append("<path d=\"" + d + "\" ");
    return end(pen, classes);
  }

  public Svg polyline(List<Point> points, Pen pen, String... classes) {
    return path(through(points), pen, classes);
  }

  public Svg polygon(List<Point> points, Pen pen, String... classes) {
    return path(through(points) + "Z", pen, classes);
  }

  /** A line with a solid head at its end. */
  public Svg arrow(
      double x1, double y1, double x2, double y2, Pen line, Pen head, String... classes) {
    return arrow(x1, y1, x2, y2, HEAD, line, head, classes);
  }

  /** An arrow seen from the back of a room. */
  public Svg boldArrow(
      double x1, double y1, double x2, double y2, Pen line, Pen head, String... classes) {
    return arrow(x1, y1, x2, y2, BOLD_HEAD, line, head, classes);
  }

  private Svg arrow(
      double x1,
      double y1,
      double x2,
      double y2,
      double tip,
      Pen line,
      Pen head,
      String... classes) {
    double length = Math.hypot(x2 - x1, y2 - y1);
    double ux = (x2 - x1) / length;
    double uy = (y2 - y1) / length;
    double back = Math.min(tip, length);
    double half = tip * 3 / 7;
    line(x1, y1, x2 - ux * back * 0.8, y2 - uy * back * 0.8, line, classes);
    return polygon(
        List.of(
            new Point(x2, y2),
            new Point(x2 - ux * back - uy * half, y2 - uy * back + ux * half),
            new Point(x2 - ux * back + uy * half, y2 - uy * back - ux * half)),
        head);
  }

  public Svg text(double x, double y, Anchor anchor, Type type, String words) {
    out.append("<text x=\"" + number(x) + "\" y=\"" + number(y));
    out.append("\" text-anchor=\"" + anchor.word() + "\" " + type.attributes() + ">");
    out.append(escape(words) + "</text>\n");
    return this;
  }

  /** Opens an element with attributes given as name, value, name, value. */
  public Svg open(String tag, String... attributes) {
    out.append("<" + tag);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(" " + attributes[i] + "=\"" + escape(attributes[i + 1]) + "\"");
    }
    out.append(">\n");
    return this;
  }

  public Svg close(String tag) {
    out.append("</" + tag + ">\n");
    return this;
  }

  /** An element drawn with raw attributes, for the one thing that has no pen: ring colours. */
  public Svg rect(double x, double y, double width, double height, String attributes) {
    out.append("<rect x=\"" + number(x) + "\" y=\"" + number(y));
    out.append("\" width=\"" + number(width) + "\" height=\"" + number(height) + "\" ");
    out.append(attributes + "/>\n");
    return this;
  }

  public String finish() {
    return out + "</svg>\n";
  }

  public static String move(Point p) {
    return "M" + number(p.x()) + " " + number(p.y());
  }

  static String lineTo(Point p) {
    return "L" + number(p.x()) + " " + number(p.y());
  }

  public static String through(List<Point> points) {
    StringBuilder d = new StringBuilder(move(points.get(0)));
    points.stream().skip(1).forEach(p -> d.append(lineTo(p)));
    return d.toString();
  }

  /** At most two decimals, a full stop, no trailing zeros, no minus zero. */
  public static String number(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("A drawing needs finite numbers, got " + value);
    }
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  /** Escapes markup; what XML 1.0 cannot carry becomes a question mark. */
  static String escape(String words) {
    return words
        .replaceAll("[^\\t\\n\\r\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]", "?")
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  private Svg end(Pen pen, String... classes) {
    out.append(pen.attributes(String.join(" ", classes)) + "/>\n");
    return this;
  }
}
