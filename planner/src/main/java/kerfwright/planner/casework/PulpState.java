package kerfwright.planner.casework;

/** State of the pulp; unknown is treated as vital. */
public enum PulpState {
  VITAL("vital"),
  NON_VITAL("non-vital"),
  UNKNOWN("unknown");

  private final String id;

  PulpState(String id) {
    this.id = id;
  }

  public String id() {
    return id;
  }

  /** Whether the heat limit at the pulp wall applies. */
  public boolean protectsPulp() {
    return this != NON_VITAL;
  }
}
