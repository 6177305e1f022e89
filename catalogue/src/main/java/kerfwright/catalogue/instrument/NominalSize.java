package kerfwright.catalogue.instrument;

import kerfwright.catalogue.Provenance;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;

/**
 * A nominal size of rotary instruments other than root-canal instruments: the largest diameter of
 * the head in tenths of a millimetre.
 *
 * @param code three digits
 * @param diameter largest diameter of the head
 * @param listed whether it is held to be in the list of ISO 2157
 * @param listedBasis standing of that
 * @param provenance standing of the diameter
 */
public record NominalSize(
    String code, Length diameter, boolean listed, Basis listedBasis, Provenance provenance) {}
