package kerfwright.catalogue.evidence;

import kerfwright.quantity.Basis;

/**
 * One condition of a published test: told by its source, or assumed where the source is silent.
 *
 * @param kind what it is; it gives the unit
 * @param low low end
 * @param typical typical value
 * @param high high end
 * @param basis seen where the source tells it, project setting or common practice where assumed
 * @param note why this value
 */
public record Condition(
    ConditionKind kind, double low, double typical, double high, Basis basis, String note) {
  /** Whether the source tells it. */
  public boolean told() {
    return basis == Basis.SEEN || basis == Basis.DERIVED;
  }
}
