package kerfwright.catalogue;

import kerfwright.quantity.Identified;

/** How far the collector of a row trusts it, beside how it is known ({@code Basis}). */
public enum Confidence implements Identified {
  HIGH("high"),
  MEDIUM("medium"),
  LOW("low");

  private final String label;

  Confidence(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }

  /** The lower of the two. */
  public Confidence and(Confidence other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
