package kerfwright.quantity;

/** How sure a fact is: what was done to know it. */
public enum Basis implements Identified {
  /** Read in the text named as its source. */
  SEEN,
  /** Follows by a rule or by arithmetic from something read. */
  DERIVED,
  /** Recalled from the named work, not read again: never feeds a safety limit. */
  FROM_MEMORY,
  /** A fact of the trade with no source. */
  COMMON_PRACTICE,
  /** Chosen by this project and open to change. */
  PROJECT_SETTING,
  /** Fitted by this project to published results. */
  FITTED;

  public String label() {
    return id().replace('-', ' ');
  }

  /** Whether a figure of this standing may decide what is allowed. */
  public boolean mayFeedSafetyLimit() {
    return this != FROM_MEMORY;
  }
}
