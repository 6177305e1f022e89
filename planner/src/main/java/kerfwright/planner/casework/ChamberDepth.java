package kerfwright.planner.casework;

import kerfwright.quantity.Length;
import kerfwright.quantity.Range;

/**
 * How deep the roof of the pulp chamber lies.
 *
 * @param below below the landmark a bur can be set from: the buccal cusp tip of a back tooth, the
 *     lingual surface of a front one
 * @param known how it is known
 */
public record ChamberDepth(Range<Length> below, Known known) {
  /** A single figure, with the error of how it is known. */
  public static ChamberDepth read(Length below, Known known) {
    return new ChamberDepth(known.aroundDepth(below), known);
  }
}
