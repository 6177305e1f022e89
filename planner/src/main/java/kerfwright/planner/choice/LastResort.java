package kerfwright.planner.choice;

/**
 * What is only planned while nothing fitting is clean: it is said first in the plan, with what to
 * add.
 */
public enum LastResort {
  /** It fits. */
  NONE(""),
  /** A head as wide as its slot: water and chips do not pass. */
  HEAD_AS_WIDE_AS_SLOT("slot-as-wide-as-head"),
  /** A bur through ceramic: it chips the ceramic and blunts. */
  BLADES_IN_CERAMIC("blades-in-ceramic"),
  /** A diamond instrument through metal: it clogs and heats. */
  DIAMOND_IN_METAL("diamond-in-metal");

  private final String code;

  LastResort(String code) {
    this.code = code;
  }

  /** Stable code of the finding that says so. */
  public String code() {
    return code;
  }
}
