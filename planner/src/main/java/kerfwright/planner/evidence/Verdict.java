package kerfwright.planner.evidence;

/** How a computed figure stands against the published one. */
public enum Verdict {
  INSIDE("inside"),
  OUTSIDE("outside"),
  RIGHT("right"),
  WRONG("wrong");

  private final String label;

  Verdict(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }

  /** Whether the models reproduce the finding. */
  public boolean met() {
    return this == INSIDE || this == RIGHT;
  }
}
