package kerfwright.catalogue.evidence;

import kerfwright.quantity.SourceKey;

/**
 * What all rows of one source may be used for.
 *
 * @param source the source
 * @param role calibration, validation or context
 * @param reason why, decided before anything was fitted
 */
public record SourceRole(SourceKey source, EvidenceRow.Role role, String reason) {}
