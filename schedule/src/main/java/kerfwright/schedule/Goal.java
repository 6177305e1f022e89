package kerfwright.schedule;

import java.util.Locale;

/** The goals of a day, in strict order: an earlier one is never given up for a later one. */
public enum Goal {
  /** Needs without an instrument. */
  SHORTAGES,
  /** Loads started during the day. */
  LOADS,
  /** Sum over the types of the uses of the most worn minus those of the least worn instrument. */
  WEAR;

  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
