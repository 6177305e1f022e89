package kerfwright.app.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.app.words.Teeth;
import kerfwright.catalogue.tooth.Tooth;
import org.jspecify.annotations.Nullable;

/**
 * Both dental arches as links, one a tooth, seen facing the patient: the patient's right is on the
 * left. Works without script.
 *
 * <p>Mean crown widths along the arch (mesiodistal) and across it (buccolingual) are from memory of
 * dental anatomy texts, rounded; they shape this picture and nothing else.
 */
public final class ArchPicker {
  /** Which teeth are shown. */
  public enum Dentition {
    PERMANENT(8, 4.2, 1, 478),
    PRIMARY(5, 6, 5, 420);

    private final int teeth;
    private final double perMm;
    private final int firstQuadrant;
    private final double height;

    Dentition(int teeth, double perMm, int firstQuadrant, double height) {
      this.teeth = teeth;
      this.perMm = perMm;
      this.firstQuadrant = firstQuadrant;
      this.height = height;
    }
  }

  private static final double WIDTH = 320;
  private static final double[] UPPER_ALONG = {8.5, 6.5, 7.5, 7, 7, 10, 9, 8.5};
  private static final double[] UPPER_ACROSS = {7, 6, 8, 9, 9, 11, 11, 10};
  private static final double[] LOWER_ALONG = {5, 5.5, 7, 7, 7, 11, 10.5, 10};
  private static final double[] LOWER_ACROSS = {6, 6.5, 7.5, 7.5, 8, 10.5, 10, 9.5};
  private static final double[] PRIMARY_UPPER_ALONG = {6.5, 5.1, 7, 7.3, 8.2};
  private static final double[] PRIMARY_UPPER_ACROSS = {5, 4.5, 7, 8.5, 10};
  private static final double[] PRIMARY_LOWER_ALONG = {4.2, 4.6, 5.5, 7.7, 9.9};
  private static final double[] PRIMARY_LOWER_ACROSS = {4.2, 4.5, 5, 7, 8.7};

  private ArchPicker() {}

  /**
   * Draws the arches.
   *
   * @param href where the link of a tooth leads, by FDI number
   * @param chosen the tooth chosen now, or null
   */
  public static String draw(
      Say say, String id, Dentition dentition, IntFunction<String> href, @Nullable Tooth chosen) {
    boolean permanent = dentition == Dentition.PERMANENT;
    Svg svg =
        new Svg(
            id,
            "group",
            WIDTH,
            dentition.height,
            say.at(permanent ? "drawn.arch-permanent" : "drawn.arch-primary"),
            say.at("drawn.arch-about", Labels.teeth(say)));
    for (int q = 0; q < 4; q++) {
      boolean upper = q < 2;
      boolean patientsRight = q == 0 || q == 3;
      double[] along =
          permanent
              ? (upper ? UPPER_ALONG : LOWER_ALONG)
              : upper ? PRIMARY_UPPER_ALONG : PRIMARY_LOWER_ALONG;
      double[] across =
          permanent
              ? (upper ? UPPER_ACROSS : LOWER_ACROSS)
              : upper ? PRIMARY_UPPER_ACROSS : PRIMARY_LOWER_ACROSS;
      List<double[]> places = places(along, upper, permanent);
      for (int i = 0; i < dentition.teeth; i++) {
        int fdi = 10 * (dentition.firstQuadrant + q) + i + 1;
        double s = dentition.perMm;
        double x = WIDTH / 2 + (patientsRight ? -1 : 1) * places.get(i)[0] * s;
        double depth = (places.get(i)[1] + 6) * s;
        double y = upper ? depth : dentition.height - depth;
        double turn = places.get(i)[2] * (patientsRight == upper ? -1 : 1);
        boolean now = chosen != null && chosen.fdi() == fdi;
        tooth(
            say,
            svg,
            new Tooth(fdi),
            href.apply(fdi),
            now,
            outline(x, y, along[i] * s, across[i] * s, turn, i),
            x,
            y);
      }
    }
    double middle = dentition.height / 2;
    svg.text(WIDTH / 2, middle - 30, Anchor.MIDDLE, Type.QUIET, say.at("drawn.arch-upper"));
    svg.text(WIDTH / 2, middle + 38, Anchor.MIDDLE, Type.QUIET, say.at("drawn.arch-lower"));
    svg.line(WIDTH / 2 - 34, middle, WIDTH / 2 + 34, middle, Pen.GUIDE);
    svg.text(WIDTH / 2 - 40, middle + 4, Anchor.END, Type.QUIET, say.at("drawn.arch-right"));
    svg.text(WIDTH / 2 + 40, middle + 4, Anchor.START, Type.QUIET, say.at("drawn.arch-left"));
    return svg.finish();
  }

  private static void tooth(
      Say say,
      Svg svg,
      Tooth tooth,
      String href,
      boolean now,
      List<Svg.Point> outline,
      double x,
      double y) {
    String number = say.tooth(tooth);
    String fdi = Integer.toString(tooth.fdi());
    String name = say.at("drawn.arch-tooth", number, Teeth.name(say, tooth));
    if (now) {
      svg.open(
          "a",
          "href",
          href,
          "class",
          "tooth chosen",
          "data-fdi",
          fdi,
          "aria-label",
          name,
          "aria-current",
          "true");
    } else {
      svg.open("a", "href", href, "class", "tooth", "data-fdi", fdi, "aria-label", name);
    }
    svg.polygon(outline, now ? Pen.ACCENT_FILL : Pen.BODY, "crown");
    svg.text(x, y + 4, Anchor.MIDDLE, now ? Type.ON_ACCENT : Type.STRONG, number);
    svg.close("a");
  }

  /** Middle of each tooth from the midline on: across, deep, and how far the arch has turned. */
  private static List<double[]> places(double[] along, boolean upper, boolean permanent) {
    double half = permanent ? (upper ? 27 : 25) : upper ? 19 : 17.5;
    double deep = permanent ? (upper ? 38 : 36) : 24;
    List<double[]> places = new ArrayList<>();
    double t = 0;
    double walked = 0;
    double wanted = 0;
    double x = 0;
    double y = 0;
    for (int i = 0; i < along.length; i++) {
      wanted += i == 0 ? along[0] / 2 : (along[i - 1] + along[i]) / 2;
      while (walked < wanted) {
        double dx = t < Math.PI / 2 ? half * Math.cos(t) * 0.001 : 0;
        double dy = t < Math.PI / 2 ? deep * Math.sin(t) * 0.001 : 0.03;
        t += 0.001;
        x += dx;
        y += dy;
        walked += Math.hypot(dx, dy);
      }
      double turn =
          t < Math.PI / 2 ? Math.atan2(deep * Math.sin(t), half * Math.cos(t)) : Math.PI / 2;
      places.add(new double[] {x, y, turn});
    }
    return places;
  }

  /** A rounded crown, squarer towards the molars, a little narrower than its place. */
  private static List<Svg.Point> outline(
      double x, double y, double along, double across, double turn, int position) {
    double power = position < 3 ? 2.2 : position < 5 ? 2.4 : 3;
    List<Svg.Point> points = new ArrayList<>();
    for (int i = 0; i < 32; i++) {
      double t = 2 * Math.PI * i / 32;
      double u =
          along * 0.47 * Math.signum(Math.cos(t)) * Math.pow(Math.abs(Math.cos(t)), 2 / power);
      double v =
          across * 0.5 * Math.signum(Math.sin(t)) * Math.pow(Math.abs(Math.sin(t)), 2 / power);
      points.add(
          new Svg.Point(
              x + u * Math.cos(turn) - v * Math.sin(turn),
              y + u * Math.sin(turn) + v * Math.cos(turn)));
    }
    return points;
  }
}
