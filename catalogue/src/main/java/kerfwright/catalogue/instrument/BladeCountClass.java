package kerfwright.catalogue.instrument;

import kerfwright.catalogue.Provenance;
import org.jspecify.annotations.Nullable;

/**
 * What burs with so many blades are usually for.
 *
 * @param low fewest blades, or null where open
 * @param high most blades
 * @param usualRole usual role in words
 * @param ring ring colour, may be empty
 * @param provenance where the row comes from
 */
public record BladeCountClass(
    @Nullable Integer low, int high, String usualRole, String ring, Provenance provenance) {
  public boolean contains(int blades) {
    return blades <= high && (low == null || blades >= low);
  }
}
