package kerfwright.catalogue;

import kerfwright.quantity.Identified;

/** How far the collector of a row trusts it, beside how it is known ({@code Basis}). */
public enum Confidence implements Identified {
  HIGH,
  MEDIUM,
  LOW;

  /** The lower of the two. */
  public Confidence and(Confidence other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
