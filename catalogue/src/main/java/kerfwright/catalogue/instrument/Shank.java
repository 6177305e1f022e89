package kerfwright.catalogue.instrument;

import kerfwright.catalogue.Provenance;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A shank as digits 4 to 6 of the ISO 6360 number name it.
 *
 * @param code three digits; one digit for a family of which the length is unknown
 * @param name name for people
 * @param type type of shank, or null where it is none of the three
 * @param diameter diameter, or null for unmounted instruments
 * @param overallLength overall length of the instrument, or null where it is not known
 * @param lengthBasis standing of the length, often another than that of the code
 * @param provenance where the code comes from
 */
public record Shank(
    String code,
    String name,
    @Nullable ShankType type,
    @Nullable Length diameter,
    @Nullable Length overallLength,
    @Nullable Basis lengthBasis,
    Provenance provenance) {
  /** True where only the first digit is known. */
  public boolean familyOnly() {
    return code.length() == 1;
  }
}
