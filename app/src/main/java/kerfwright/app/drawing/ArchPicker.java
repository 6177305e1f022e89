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
 * left. Works without script. Where the crowns stand and where their sizes come from: {@link Arch}.
 */
public final class ArchPicker {
  /** Which teeth are shown. */
  public enum Dentition {
    PERMANENT(4.2, 478),
    PRIMARY(6, 420);

    private final double perMm;
    private final double height;

    Dentition(double perMm, double height) {
      this.perMm = perMm;
      this.height = height;
    }
  }

  private static final double WIDTH = 320;

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
    double s = dentition.perMm;
    for (boolean upper : new boolean[] {true, false}) {
      for (Arch.Crown crown : Arch.crowns(permanent, upper)) {
        double x = WIDTH / 2 + crown.x() * s;
        double depth = (crown.depth() + 6) * s;
        double y = upper ? depth : dentition.height - depth;
        boolean now = chosen != null && chosen.fdi() == crown.fdi();
        tooth(
            say,
            svg,
            new Tooth(crown.fdi()),
            href.apply(crown.fdi()),
            now,
            outline(x, y, crown.along() * s, crown.across() * s, crown.turn(), crown.position()),
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
