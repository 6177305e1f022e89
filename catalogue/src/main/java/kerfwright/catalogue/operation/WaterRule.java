package kerfwright.catalogue.operation;

import kerfwright.quantity.Identified;

/** What an operation asks of the water. */
public enum WaterRule implements Identified {
  /** Spray reaching the tip. */
  SPRAY,
  /** Spray or drops; moist is enough at low speed. */
  MOIST,
  /** Dry to see, in touches of a few seconds. */
  DRY_TOUCHES,
  /** Paste or nothing. */
  NONE;
}
