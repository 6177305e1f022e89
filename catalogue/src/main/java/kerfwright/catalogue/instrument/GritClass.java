package kerfwright.catalogue.instrument;

import kerfwright.quantity.Identified;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;

/**
 * Grit classes of diamond instruments: code group of ISO 6360, class name, ring colour and particle
 * size. Ranges of 534, 524, 514 and 504 were read in trade texts (S9, S25); for 544 and 494 only
 * single values were read (S7, S26, S33), taken as the ends. Not the table of ISO 7711-3, which
 * could not be read.
 */
public enum GritClass implements Identified {
  EXTRA_COARSE("544", "black", 150, 165, 180),
  COARSE("534", "green", 125, 137, 150),
  MEDIUM("524", "blue or none", 106, 115, 125),
  FINE("514", "red", 53, 58, 63),
  EXTRA_FINE("504", "yellow", 20, 25, 30),
  SUPER_FINE("494", "white", 8, 15, 15);

  private final String isoCode;
  private final String ring;
  private final double lowUm;
  private final double typicalUm;
  private final double highUm;

  GritClass(String isoCode, String ring, double lowUm, double typicalUm, double highUm) {
    this.isoCode = isoCode;
    this.ring = ring;
    this.lowUm = lowUm;
    this.typicalUm = typicalUm;
    this.highUm = highUm;
  }

  /** Digits 10 to 12 of the ISO 6360 number. */
  public String isoCode() {
    return isoCode;
  }

  public String label() {
    return id().replace('-', ' ');
  }

  public String ring() {
    return ring;
  }

  public Range<Length> particleSize() {
    return new Range<>(
        Length.ofMicrometres(lowUm), Length.ofMicrometres(typicalUm), Length.ofMicrometres(highUm));
  }
}
