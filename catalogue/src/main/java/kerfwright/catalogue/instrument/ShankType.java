package kerfwright.catalogue.instrument;

import kerfwright.quantity.Identified;
import kerfwright.quantity.Length;

/**
 * Shank types of ISO 1797 with their diameter (supplier pages on shanks, read; type numbers from
 * memory) and the length that sits inside the chuck (common practice, no source).
 */
public enum ShankType implements Identified {
  FG("friction grip", 1.60, 11.0),
  RA("latch", 2.35, 13.0),
  HP("straight handpiece", 2.35, 30.0);

  private final String label;
  private final double diameterMm;
  private final double heldMm;

  ShankType(String label, double diameterMm, double heldMm) {
    this.label = label;
    this.diameterMm = diameterMm;
    this.heldMm = heldMm;
  }

  public String label() {
    return label;
  }

  public Length diameter() {
    return Length.ofMillimetres(diameterMm);
  }

  /** How much of the shank the chuck holds when seated to full depth. */
  public Length heldLength() {
    return Length.ofMillimetres(heldMm);
  }
}
