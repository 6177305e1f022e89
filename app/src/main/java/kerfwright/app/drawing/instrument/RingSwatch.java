package kerfwright.app.drawing.instrument;

import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.RingColour;
import kerfwright.app.drawing.Svg;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;

/** A ring as it sits on a shank; its name stands beside it. */
public final class RingSwatch {
  private RingSwatch() {}

  /** A short piece of shank with a ring of a colour; "none" leaves the shank bare. */
  public static String draw(Say say, String id, String colour) {
    boolean bare = colour.equals("none");
    Svg svg =
        Svg.image(
            id,
            64,
            28,
            bare ? say.at("drawn.ring-none") : say.at("drawn.ring", Labels.ring(say, colour)),
            say.at("drawn.ring-about"));
    svg.rect(4, 9, 56, 10, Pen.BODY);
    if (!bare) {
      svg.rect(24, 7, 14, 14, RingColour.named(colour).attributes());
    }
    return svg.finish();
  }
}
