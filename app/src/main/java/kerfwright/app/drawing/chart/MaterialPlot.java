package kerfwright.app.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.drawing.Anchor;
import kerfwright.app.drawing.Figures;
import kerfwright.app.drawing.Lines;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.Svg;
import kerfwright.app.drawing.Type;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.ToolMaterial;

/**
 * Hardness against toughness of materials, both logarithmic, each with its range, lines of equal
 * brittleness H / K, and the hardness of what cuts.
 */
public final class MaterialPlot {
  static final double WIDTH = 320;
  static final double LEFT = 40;
  static final double RIGHT = 312;
  static final double TOP = 26;
  static final double BOTTOM = 366;
  private static final double LEAST_K = 0.08;
  private static final double MOST_K = 250;
  private static final double LEAST_H = 0.008;
  private static final double MOST_H = 150;
  private static final double NUMBER = 7;
  private static final double LEGEND = BOTTOM + 52;
  private static final double LINE = 12;
  private static final double GAP = 3;
  private static final int LONGEST = 21;

  private final Say say;
  private final List<Material> materials;
  private final List<ToolMaterial> tools;
  private final List<double[]> taken = new ArrayList<>();

  private MaterialPlot(Say say, List<Material> materials, List<ToolMaterial> tools) {
    this.say = say;
    this.materials = materials;
    this.tools = tools;
  }

  /** Draws the plot; materials are numbered from 1 in the order given. */
  public static String draw(
      Say say, String id, List<Material> materials, List<ToolMaterial> tools) {
    return new MaterialPlot(say, materials, tools).draw(id);
  }

  private String draw(String id) {
    double height = LEGEND + legendHeight() + 32;
    Svg svg =
        Svg.image(
            id,
            WIDTH,
            height,
            say.at("drawn.plot-title", materials.size()),
            say.at("drawn.plot-about"));
    axes(svg);
    brittleness(svg);
    tools(svg);
    for (Material each : materials) {
      range(svg, each);
    }
    for (Material each : materials) {
      double x = x(toughness(each));
      double y = y(hardness(each));
      taken.add(new double[] {x, y, 4});
    }
    for (int i = 0; i < materials.size(); i++) {
      number(svg, i);
    }
    for (Material each : materials) {
      mark(svg, each.group(), x(toughness(each)), y(hardness(each)));
    }
    legend(svg);
    return svg.finish();
  }

  public static double hardness(Material material) {
    return material.typical().hardnessPa() / 1e9;
  }

  public static double toughness(Material material) {
    return material.typical().toughnessPaSqrtM() / 1e6;
  }

  public static double x(double toughness) {
    return LEFT + (RIGHT - LEFT) * share(toughness, LEAST_K, MOST_K);
  }

  public static double y(double hardness) {
    return BOTTOM - (BOTTOM - TOP) * share(hardness, LEAST_H, MOST_H);
  }

  private static double share(double value, double least, double most) {
    double share = Math.log(value / least) / Math.log(most / least);
    return Math.max(0, Math.min(1, share));
  }

  private void axes(Svg svg) {
    svg.text(4, 14, Anchor.START, Type.PLAIN, say.at("drawn.plot-hardness"));
    for (double h : new double[] {0.01, 0.1, 1, 10, 100}) {
      svg.line(LEFT - 4, y(h), LEFT, y(h), Pen.THIN);
      svg.text(LEFT - 6, y(h) + 3.5, Anchor.END, Type.PLAIN, Figures.of(say, h));
    }
    for (double k : new double[] {0.1, 0.3, 1, 3, 10, 30, 100}) {
      svg.line(x(k), BOTTOM, x(k), BOTTOM + 4, Pen.THIN);
      svg.text(x(k), BOTTOM + 15, Anchor.MIDDLE, Type.PLAIN, Figures.of(say, k));
    }
    svg.rect(LEFT, TOP, RIGHT - LEFT, BOTTOM - TOP, Pen.THIN, "frame");
    svg.text(RIGHT, BOTTOM + 30, Anchor.END, Type.PLAIN, say.at("drawn.plot-toughness"));
  }

  /** H = B K is a line of slope one on these axes; B in one over root micrometre. */
  private void brittleness(Svg svg) {
    for (double b : new double[] {0.01, 0.1, 1, 10}) {
      double from = Math.max(LEAST_K, LEAST_H / b);
      double to = Math.min(MOST_K, MOST_H / b);
      svg.line(x(from), y(b * from), x(to), y(b * to), Pen.GUIDE, "brittleness");
      double at = Math.max(from * 1.35, LEAST_H / b * 1.35);
      String words = Figures.of(say, b);
      double tx = x(at) + 3;
      double ty = y(b * at) + 11;
      svg.text(tx, ty, Anchor.START, Type.QUIET, words);
      taken.add(new double[] {tx + Type.QUIET.width(words) / 2, ty - 4, 8});
    }
  }

  private void tools(Svg svg) {
    List<Double> wishes = new ArrayList<>();
    List<Double> heights = new ArrayList<>();
    List<ToolMaterial> high = new ArrayList<>(tools);
    high.sort((a, b) -> Double.compare(hardness(b), hardness(a)));
    for (ToolMaterial each : high) {
      wishes.add(y(hardness(each)) - 6);
      heights.add(12.0);
    }
    double[] centres = Figures.spread(wishes, heights, TOP, BOTTOM);
    for (int i = 0; i < high.size(); i++) {
      ToolMaterial each = high.get(i);
      svg.line(LEFT, y(hardness(each)), RIGHT, y(hardness(each)), Pen.ACCENT_GUIDE, "tool");
      String words = inShort(each);
      double wide = Type.ACCENT.width(words);
      svg.rect(RIGHT - 4 - wide, centres[i] - 5.5, wide + 2, 11, Pen.PAPER);
      svg.text(RIGHT - 3, centres[i] + 3.5, Anchor.END, Type.ACCENT, words);
      for (double x = RIGHT - 3; x > RIGHT - 3 - wide; x -= 12) {
        taken.add(new double[] {x - 6, centres[i], 7});
      }
    }
  }

  private String inShort(ToolMaterial tool) {
    return Figures.capital(say.at("drawn.tool-" + tool.id()));
  }

  private static double hardness(ToolMaterial tool) {
    return tool.hardness().typical().pascals() / 1e9;
  }

  private static void range(Svg svg, Material m) {
    double x = x(toughness(m));
    double y = y(hardness(m));
    double low = m.spread().low().toughnessPaSqrtM() / 1e6;
    double high = m.spread().high().toughnessPaSqrtM() / 1e6;
    svg.line(x(low), y, x(high), y, Pen.THIN, "range");
    double soft = m.spread().low().hardnessPa() / 1e9;
    double hard = m.spread().high().hardnessPa() / 1e9;
    svg.line(x, y(soft), x, y(hard), Pen.THIN, "range");
  }

  /** The number stands as near its mark as room allows, with a line where it had to move away. */
  private void number(Svg svg, int index) {
    double x = x(toughness(materials.get(index)));
    double y = y(hardness(materials.get(index)));
    double bestX = x;
    double bestY = y;
    double least = Double.POSITIVE_INFINITY;
    for (double away = 12; away <= 44; away += 4) {
      for (int turn = 0; turn < 16; turn++) {
        double nx = x + away * Math.cos(turn * Math.PI / 8);
        double ny = y + away * Math.sin(turn * Math.PI / 8);
        double cost = away + crowding(nx, ny);
        if (cost < least - 1e-9) {
          least = cost;
          bestX = nx;
          bestY = ny;
        }
      }
    }
    taken.add(new double[] {bestX, bestY, NUMBER});
    if (Math.hypot(bestX - x, bestY - y) > 13) {
      svg.line(x, y, bestX, bestY, Pen.THIN, "leader");
    }
    svg.circle(bestX, bestY, NUMBER, Pen.PAPER);
    svg.text(bestX, bestY + 3.8, Anchor.MIDDLE, Type.STRONG, Integer.toString(index + 1));
  }

  private double crowding(double x, double y) {
    double cost = 0;
    for (double[] other : taken) {
      double overlap = other[2] + NUMBER - Math.hypot(other[0] - x, other[1] - y);
      cost += overlap > 0 ? 30 * overlap : 0;
    }
    boolean outside =
        x < LEFT + NUMBER || x > RIGHT - NUMBER || y < TOP + NUMBER || y > BOTTOM - NUMBER;
    return outside ? cost + 1000 : cost;
  }

  /** Groups differ by the form of their mark, so that black and white tells them apart. */
  private static void mark(Svg svg, Material.Group group, double x, double y) {
    switch (group) {
      case TOOTH, BONE -> svg.circle(x, y, 4, Pen.SOLID, "point");
      case METAL -> svg.rect(x - 3.5, y - 3.5, 7, 7, Pen.SOLID, "point");
      case CERAMIC -> svg.polygon(around(x, y, 5, 3, -Math.PI / 2), Pen.SOLID, "point");
      case POLYMER -> svg.polygon(around(x, y, 4.5, 4, 0), Pen.BODY, "point");
      case CEMENT -> svg.circle(x, y, 3.6, Pen.BODY, "point");
    }
  }

  private static List<Svg.Point> around(double x, double y, double r, int corners, double from) {
    List<Svg.Point> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double turn = from + 2 * Math.PI * i / corners;
      points.add(new Svg.Point(x + r * Math.cos(turn), y + r * Math.sin(turn)));
    }
    return points;
  }

  private void legend(Svg svg) {
    double y = LEGEND;
    int half = (materials.size() + 1) / 2;
    for (int i = 0; i < materials.size(); i++) {
      y = i == half ? LEGEND : y;
      double x = i < half ? 4 : 160;
      mark(svg, materials.get(i).group(), x + 5, y - 3.6);
      svg.text(x + 26, y, Anchor.END, Type.STRONG, Integer.toString(i + 1));
      for (String line : lines(materials.get(i))) {
        svg.text(x + 31, y, Anchor.START, Type.PLAIN, line);
        y += LINE;
      }
      y += GAP;
    }
    double end = LEGEND + legendHeight() + 6;
    svg.line(4, end - 3.5, 28, end - 3.5, Pen.GUIDE);
    svg.text(33, end, Anchor.START, Type.PLAIN, say.at("drawn.plot-brittleness"));
    svg.line(4, end + 12.5, 28, end + 12.5, Pen.ACCENT_GUIDE);
    svg.text(33, end + 16, Anchor.START, Type.PLAIN, say.at("drawn.plot-tools"));
  }

  private double legendHeight() {
    int half = (materials.size() + 1) / 2;
    double left = 0;
    double right = 0;
    for (int i = 0; i < materials.size(); i++) {
      double high = lines(materials.get(i)).size() * LINE + GAP;
      left += i < half ? high : 0;
      right += i < half ? 0 : high;
    }
    return Math.max(left, right);
  }

  /** The label, broken where it is too long for its column. */
  private List<String> lines(Material material) {
    return Lines.of(say, Labels.material(say, material), LONGEST);
  }
}
