package kerfwright.catalogue.instrument;

/**
 * Families of head shapes.
 *
 * <p>{@code cutsAtTip}: the end removes material when pressed along the axis. {@code sideFraction}:
 * share of the head length whose side is parallel or nearly parallel to the axis and so makes a
 * wall (project setting, from the geometry of the family).
 */
public enum ShapeFamily {
  ROUND("round", true, 0.7),
  INVERTED_CONE("inverted cone", true, 0.5),
  CUP("cup", true, 0.5),
  WHEEL("wheel", false, 1.0),
  LENS("lens", false, 0.5),
  CYLINDER("cylinder", true, 1.0),
  CYLINDER_POINTED("cylinder pointed", true, 0.8),
  CYLINDER_ROUND_END("cylinder round end", true, 0.9),
  CYLINDER_END_CUTTING("cylinder end cutting", true, 0.0),
  CYLINDER_ROUNDED_EDGE("cylinder rounded edge", true, 1.0),
  TAPER_POINTED("taper pointed", true, 0.9),
  TAPER_FLAT_END("taper flat end", true, 1.0),
  TAPER_ROUND_END("taper round end", true, 0.9),
  /** Cuts at the side only; the tip is smooth and may rest on a floor. */
  TAPER_SAFE_END("taper safe end", false, 1.0),
  TAPER_ROUNDED_EDGE("taper rounded edge", true, 1.0),
  PEAR("pear", true, 0.6),
  PEAR_ELONGATED("pear elongated", true, 0.85),
  FLAME("flame", true, 0.8),
  BUD("bud", true, 0.7),
  EGG("egg", true, 0.6),
  TORPEDO("torpedo", true, 0.9),
  TORPEDO_TAPERED("torpedo tapered", true, 0.9),
  SURGICAL("surgical", true, 0.9),
  INTERDENTAL("interdental", false, 0.9),
  NEEDLE("needle", true, 0.9),
  DEPTH_MARKER("depth marker", false, 0.3),
  DISC("disc", false, 1.0);

  private final String label;
  private final boolean cutsAtTip;
  private final double sideFraction;

  ShapeFamily(String label, boolean cutsAtTip, double sideFraction) {
    this.label = label;
    this.cutsAtTip = cutsAtTip;
    this.sideFraction = sideFraction;
  }

  /** The word used in data files, e.g. taper-round-end. */
  public String id() {
    return label.replace(' ', '-');
  }

  public String label() {
    return label;
  }

  public boolean cutsAtTip() {
    return cutsAtTip;
  }

  public double sideFraction() {
    return sideFraction;
  }

  /**
   * True where the end meets the side in a sharp edge, so that inner corners of a cavity stay
   * sharp.
   */
  public boolean leavesSharpCorner() {
    return this == CYLINDER
        || this == CYLINDER_END_CUTTING
        || this == TAPER_FLAT_END
        || this == INVERTED_CONE
        || this == WHEEL;
  }

  /** True where the end is flat, its edge sharp or rounded, so that it leaves a level floor. */
  public boolean levelEnd() {
    return leavesSharpCorner()
        || this == PEAR
        || this == PEAR_ELONGATED
        || this == CYLINDER_ROUNDED_EDGE
        || this == TAPER_ROUNDED_EDGE;
  }
}
