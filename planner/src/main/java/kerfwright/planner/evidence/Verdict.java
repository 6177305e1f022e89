package kerfwright.planner.evidence;

import kerfwright.quantity.Identified;

/** How a computed figure stands against the published one. */
public enum Verdict implements Identified {
  INSIDE,
  OUTSIDE,
  RIGHT,
  WRONG;

  /** Whether the models reproduce the finding. */
  public boolean met() {
    return this == INSIDE || this == RIGHT;
  }
}
