package kerfwright.catalogue.instrument;

import kerfwright.catalogue.Provenance;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A shape of the working part.
 *
 * @param code digits 7 to 9 of the ISO 6360 number, or empty where only the family is known
 * @param name name for people
 * @param family its family; null for root-canal instruments, which are not planned with
 * @param lengthClass how long for its family
 * @param usualHeadLength head length read for this very shape, mostly unknown
 * @param headLengthBasis standing of that length
 * @param provenance where code and name come from
 */
public record InstrumentShape(
    String code,
    String name,
    @Nullable ShapeFamily family,
    LengthClass lengthClass,
    @Nullable Length usualHeadLength,
    @Nullable Basis headLengthBasis,
    Provenance provenance) {
  /** True for shapes of root-canal instruments, whose size is not in tenths of a millimetre. */
  public boolean rootCanal() {
    return family == null;
  }
}
