package kerfwright.planner.alike;

import kerfwright.catalogue.Remark;
import kerfwright.quantity.Identified;

/**
 * One way in which a neighbour differs.
 *
 * @param code stable code, e.g. removal
 * @param effect whether it matters for the cut
 * @param remark one plain sentence part, the neighbour being the subject
 * @param distance what it adds to the distance between the two; 0 for what is only told
 */
public record Difference(String code, Effect effect, Remark remark, double distance) {
  /** In English. */
  public String text() {
    return remark.text();
  }

  /** Whether a difference matters for the cut. */
  public enum Effect implements Identified {
    /** Something the wanted instrument can do cannot be done. */
    STOPS,
    /** The cut comes out otherwise. */
    CHANGES,
    /** Worth knowing, no effect on the cut. */
    TOLD
  }
}
