package kerfwright.practice.reprocessing;

import kerfwright.quantity.Identified;

/**
 * What tells whether a load is sterile. Mechanical and chemical ones are read with every load, the
 * biological one at least once a week and with every implant (figures monitor-1 and monitor-2 of
 * the catalogue, CDC); that packs come out dry and whole is common practice.
 */
public enum Indicator implements Identified {
  /** The steriliser's own record of time, temperature and pressure. */
  PARAMETERS(true),
  /** The chemical indicators in and on the pouches. */
  CHEMICAL(true),
  /** Dry and whole packs. */
  PACKS(true),
  /** The spore test, read hours or days later. */
  SPORES(false);

  private final boolean everyLoad;

  Indicator(boolean everyLoad) {
    this.everyLoad = everyLoad;
  }

  /** True where no load is released without it. */
  public boolean everyLoad() {
    return everyLoad;
  }

  /** What was read. */
  public enum Result implements Identified {
    NOT_READ,
    PASSED,
    FAILED;
  }
}
