package kerfwright.planner.casework;

import java.util.Arrays;
import kerfwright.quantity.Identified;

/** State of the pulp; unknown is treated as vital. */
public enum PulpState implements Identified {
  VITAL,
  NON_VITAL,
  UNKNOWN;

  /** The state of an id. */
  static PulpState of(String id) {
    return Arrays.stream(values()).filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }

  /** Whether the heat limit at the pulp wall applies. */
  public boolean protectsPulp() {
    return this != NON_VITAL;
  }
}
