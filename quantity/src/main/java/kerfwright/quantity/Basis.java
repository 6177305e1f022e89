package kerfwright.quantity;

/** How sure a fact is: what was done to know it. */
public enum Basis implements Identified {
  /** Read in the text named as its source. */
  SEEN("seen", "read in its source"),
  /** Follows by a rule or by arithmetic from something read. */
  DERIVED("derived", "derived from its source"),
  /** Recalled from the named work, not read again: never feeds a safety limit. */
  FROM_MEMORY("from memory", "from memory, not checked"),
  /** A fact of the trade with no source. */
  COMMON_PRACTICE("common practice", "common practice, no source"),
  /** Chosen by this project and open to change. */
  PROJECT_SETTING("project setting", "chosen by this project"),
  /** Fitted by this project to published results. */
  FITTED("fitted", "fitted to published results");

  private final String label;
  private final String meaning;

  Basis(String label, String meaning) {
    this.label = label;
    this.meaning = meaning;
  }

  public String label() {
    return label;
  }

  public String meaning() {
    return meaning;
  }

  /** Whether a figure of this standing may decide what is allowed. */
  public boolean mayFeedSafetyLimit() {
    return this != FROM_MEMORY;
  }
}
