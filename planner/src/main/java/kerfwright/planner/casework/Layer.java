package kerfwright.planner.casework;

import kerfwright.catalogue.material.Material;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;

/**
 * One layer of the stack, outermost first.
 *
 * @param material what it is
 * @param thickness how thick, with the error of how it is known
 * @param known how it is known
 */
public record Layer(Material material, Range<Length> thickness, Known known) {
  /** With a range of its own. */
  public Layer(Material material, Range<Length> thickness) {
    this(material, thickness, Known.RANGE);
  }
}
