package kerfwright.planner.casework;

import kerfwright.catalogue.material.Material;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;

/** One layer of the stack, outermost first. */
public record Layer(Material material, Range<Length> thickness) {}
