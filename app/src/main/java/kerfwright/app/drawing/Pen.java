package kerfwright.app.drawing;

/** How a thing is drawn: a class for the page and attributes for paper. Rings are not in here. */
public enum Pen {
  /** Background and whatever was removed. */
  PAPER("d-paper", "#ffffff", "none", 0, ""),
  /** Main outline. */
  INK("d-ink", "none", "#1f2a30", 1.1, ""),
  /** Dimension and leader lines. */
  THIN("d-thin", "none", "#55636a", 0.6, ""),
  /** Axes and former surfaces. */
  GUIDE("d-guide", "none", "#55636a", 0.6, "4 2.5"),
  /** The one thing to look at. */
  ACCENT("d-accent", "none", "#7a2459", 1.8, ""),
  /** The same in a lecture. */
  ACCENT_BOLD("d-accent", "none", "#7a2459", 5, ""),
  INK_BOLD("d-ink", "none", "#1f2a30", 4, ""),
  /** Limits. */
  ACCENT_GUIDE("d-accent-guide", "none", "#7a2459", 1.4, "6 3"),
  /** A computed curve beside another one. */
  DOTTED("d-accent", "none", "#7a2459", 1.8, "1.6 2.4"),
  ACCENT_FILL("d-accent-fill", "#7a2459", "none", 0, ""),
  /** Light accent: what a step takes. */
  TINT("d-tint", "#ead8e3", "none", 0, ""),
  /** The pulp; its colour is nothing else's. */
  PULP("d-pulp", "#f3b8ac", "#1f2a30", 0.6, ""),
  /** What must not be passed. */
  DANGER("d-danger", "none", "#b3261e", 1.8, "6 3"),
  /** Dentine and root. */
  DENTINE("d-dentine", "#f6ecd6", "#1f2a30", 0.6, ""),
  /** Metal. */
  METAL("d-metal", "#d5dde2", "#1f2a30", 0.6, ""),
  /** Instruments and teeth. */
  BODY("d-body", "#eef1f2", "#1f2a30", 1.1, ""),
  /** Layers of a section; their hatching tells them apart. */
  LAYER("d-layer", "#f6f7f7", "#1f2a30", 0.6, ""),
  /** Grains, arrow heads. */
  SOLID("d-solid", "#1f2a30", "none", 0, ""),
  /** What is cut, in diagrams. */
  WORK("d-work", "#dfe4e5", "none", 0, ""),
  /** Spread of a computed curve. */
  BAND("d-band", "#d9dee0", "none", 0, ""),
  /** A computed curve. */
  CURVE("d-curve", "none", "#1f2a30", 1.6, ""),
  /** Hatching of layers. */
  HATCH("d-hatch", "none", "#55636a", 0.7, "");

  private final String className;
  private final String fill;
  private final String stroke;
  private final double width;
  private final String dashes;

  Pen(String className, String fill, String stroke, double width, String dashes) {
    this.className = className;
    this.fill = fill;
    this.stroke = stroke;
    this.width = width;
    this.dashes = dashes;
  }

  String className() {
    return className;
  }

  String attributes() {
    return attributes("");
  }

  /** Attributes with further classes after the pen's own. */
  String attributes(String moreClasses) {
    String classes = moreClasses.isEmpty() ? className : className + " " + moreClasses;
    StringBuilder out = new StringBuilder("class=\"" + classes + "\" fill=\"" + fill + "\"");
    if (width > 0) {
      out.append(" stroke=\"").append(stroke).append('"');
      out.append(" stroke-width=\"").append(Svg.number(width)).append('"');
      out.append(" stroke-linejoin=\"round\"");
    }
    if (!dashes.isEmpty()) {
      out.append(" stroke-dasharray=\"").append(dashes).append('"');
    }
    return out.toString();
  }
}
