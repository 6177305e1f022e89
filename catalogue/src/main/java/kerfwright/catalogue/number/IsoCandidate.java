package kerfwright.catalogue.number;

import kerfwright.catalogue.Confidence;
import kerfwright.quantity.Basis;

/**
 * An ISO 6360 number that may stand for a US size.
 *
 * @param number the number
 * @param basis weakest standing among its groups
 * @param confidence lowest confidence among its groups
 * @param reason why this one, in words
 */
public record IsoCandidate(IsoNumber number, Basis basis, Confidence confidence, String reason) {}
