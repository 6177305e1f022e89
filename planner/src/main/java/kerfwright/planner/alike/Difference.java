package kerfwright.planner.alike;

import kerfwright.catalogue.Remark;

/**
 * One way in which a neighbour differs.
 *
 * @param code stable code, e.g. removal
 * @param effect whether it matters for the cut
 * @param remark one plain sentence part, the neighbour being the subject
 * @param distance what it adds to the distance between the two; 0 for what is only told
 */
public record Difference(String code, Effect effect, Remark remark, double distance) {
  /** Whether a difference matters for the cut. */
  public enum Effect {
    /** Something the wanted instrument can do cannot be done. */
    STOPS("cannot do"),
    /** The cut comes out otherwise. */
    CHANGES("cuts otherwise"),
    /** Worth knowing, no effect on the cut. */
    TOLD("good to know");

    private final String label;

    Effect(String label) {
      this.label = label;
    }

    public String label() {
      return label;
    }
  }
}
