package kerfwright.catalogue.instrument;

import kerfwright.quantity.Identified;

/**
 * Families of head shapes.
 *
 * <p>{@code cutsAtTip}: the end removes material when pressed along the axis. {@code sideFraction}:
 * share of the head length whose side is parallel or nearly parallel to the axis and so makes a
 * wall (project setting, from the geometry of the family).
 */
public enum ShapeFamily implements Identified {
  ROUND(true, 0.7),
  INVERTED_CONE(true, 0.5),
  CUP(true, 0.5),
  WHEEL(false, 1.0),
  LENS(false, 0.5),
  CYLINDER(true, 1.0),
  CYLINDER_POINTED(true, 0.8),
  CYLINDER_ROUND_END(true, 0.9),
  CYLINDER_END_CUTTING(true, 0.0),
  CYLINDER_ROUNDED_EDGE(true, 1.0),
  TAPER_POINTED(true, 0.9),
  TAPER_FLAT_END(true, 1.0),
  TAPER_ROUND_END(true, 0.9),
  /** Cuts at the side only; the tip is smooth and may rest on a floor. */
  TAPER_SAFE_END(false, 1.0),
  TAPER_ROUNDED_EDGE(true, 1.0),
  PEAR(true, 0.6),
  PEAR_ELONGATED(true, 0.85),
  FLAME(true, 0.8),
  BUD(true, 0.7),
  EGG(true, 0.6),
  TORPEDO(true, 0.9),
  TORPEDO_TAPERED(true, 0.9),
  SURGICAL(true, 0.9),
  INTERDENTAL(false, 0.9),
  NEEDLE(true, 0.9),
  DEPTH_MARKER(false, 0.3),
  DISC(false, 1.0);

  private final boolean cutsAtTip;
  private final double sideFraction;

  ShapeFamily(boolean cutsAtTip, double sideFraction) {
    this.cutsAtTip = cutsAtTip;
    this.sideFraction = sideFraction;
  }

  public String label() {
    return id().replace('-', ' ');
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
