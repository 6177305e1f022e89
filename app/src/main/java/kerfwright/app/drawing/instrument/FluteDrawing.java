package kerfwright.app.drawing.instrument;

import java.util.List;
import kerfwright.app.drawing.Anchor;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.Svg;
import kerfwright.app.drawing.TwoDigits;
import kerfwright.app.drawing.Type;
import kerfwright.app.words.Say;

/** Burs of one size with different numbers of blades, and what each blade takes on one feed. */
public final class FluteDrawing {
  /** One bur: its blades and the feed each of them has, nanometres. */
  public record Bur(int blades, double feedNm) {}

  private static final double WIDTH = 600;
  private static final double HEIGHT = 400;
  private static final double RADIUS = 64;
  private static final double Y = 76;
  private static final double BASE = 352;
  public static final double TALL = 130;

  private FluteDrawing() {}

  /** To one scale each; the chosen one stands out. */
  public static String draw(Say say, String id, List<Bur> burs, int chosen) {
    Svg svg =
        Svg.image(id, WIDTH, HEIGHT, say.at("drawn.flutes-title"), say.at("drawn.flutes-about"));
    double most = burs.stream().mapToDouble(Bur::feedNm).max().orElse(1);
    double pitch = WIDTH / burs.size();
    for (int i = 0; i < burs.size(); i++) {
      Bur bur = burs.get(i);
      double x = pitch * (i + 0.5);
      boolean here = bur.blades() == chosen;
      svg.open("g", "class", here ? "a-turn" : "");
      svg.polygon(
          BladeSection.section(x, Y, RADIUS, bur.blades(), 0), here ? Pen.BODY : Pen.LAYER, "bur");
      svg.close("g");
      Type type = here ? Type.LECTURE_ACCENT : Type.LECTURE;
      svg.text(x, Y + RADIUS + 32, Anchor.MIDDLE, type, String.valueOf(bur.blades()));
      double tall = TALL * bur.feedNm() / most;
      svg.rect(x - 36, BASE - tall, 72, tall, here ? Pen.ACCENT_FILL : Pen.BAND, "feed");
      String nm = say.at("drawn.nm", TwoDigits.of(say, bur.feedNm()));
      svg.text(x, BASE + 34, Anchor.MIDDLE, type, nm);
    }
    svg.line(0, BASE, WIDTH, BASE, Pen.INK);
    return svg.finish();
  }
}
