package kerfwright.catalogue.instrument;

import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;

/**
 * A head length the list did not give.
 *
 * @param length the length taken
 * @param basis its standing; a project setting where no source tells
 */
public record HeadLength(Length length, Basis basis) {
  public boolean assumed() {
    return basis != Basis.SEEN && basis != Basis.DERIVED;
  }
}
