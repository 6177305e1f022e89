package kerfwright.app.drawing;

/** How words are set: size in drawing units (pixels at 320 wide), weight and class. */
public enum Type {
  PLAIN("d-text", 11, "#1f2a30", false),
  QUIET("d-quiet", 10, "#55636a", false),
  STRONG("d-strong", 11, "#1f2a30", true),
  ACCENT("d-accent-fill", 11, "#7a2459", true),
  ON_ACCENT("d-on-accent", 11, "#ffffff", true),
  /** Words beside a picture that is not scaled down: 16 pixels and more. */
  LABEL("d-text", 16, "#1f2a30", false),
  LABEL_STRONG("d-strong", 16, "#1f2a30", true),
  LABEL_QUIET("d-quiet", 16, "#55636a", false),
  BADGE("d-on-accent", 16, "#ffffff", true),
  /** Words in a picture 600 wide: read from the back of a room, 16 pixels on a phone. */
  LECTURE("d-text", 28, "#1f2a30", false),
  LECTURE_QUIET("d-quiet", 28, "#55636a", false),
  LECTURE_ACCENT("d-accent-fill", 28, "#7a2459", true);

  private final String className;
  private final double size;
  private final String fill;
  private final boolean bold;

  Type(String className, double size, String fill, boolean bold) {
    this.className = className;
    this.size = size;
    this.fill = fill;
    this.bold = bold;
  }

  double size() {
    return size;
  }

  /** A safe estimate of the width of a line of words. */
  public double width(String words) {
    return words.length() * size * (bold ? 0.6 : 0.55);
  }

  String attributes() {
    return "class=\""
        + className
        + "\" font-size=\""
        + Svg.number(size)
        + "\" fill=\""
        + fill
        + "\""
        + (bold ? " font-weight=\"bold\"" : "");
  }
}
