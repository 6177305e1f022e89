package kerfwright.app.drawing;

/** A ring as it sits on a shank; its name stands beside it. */
public final class RingSwatch {
  private RingSwatch() {}

  /** A short piece of shank with a ring of a colour; "none" leaves the shank bare. */
  public static String draw(String id, String colour) {
    boolean bare = colour.equals("none");
    Svg svg =
        Svg.image(
            id,
            64,
            28,
            bare ? "No ring" : "Ring " + colour,
            "A piece of shank seen from the side.");
    svg.rect(4, 9, 56, 10, Pen.BODY);
    if (!bare) {
      svg.rect(24, 7, 14, 14, RingColour.named(colour).attributes());
    }
    return svg.finish();
  }
}
