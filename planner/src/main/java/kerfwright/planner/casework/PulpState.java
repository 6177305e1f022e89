package kerfwright.planner.casework;

import java.util.Arrays;

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

  /** The state of an id. */
  static PulpState of(String id) {
    return Arrays.stream(values()).filter(one -> one.id.equals(id)).findFirst().orElseThrow();
  }

  /** Whether the heat limit at the pulp wall applies. */
  public boolean protectsPulp() {
    return this != NON_VITAL;
  }
}
