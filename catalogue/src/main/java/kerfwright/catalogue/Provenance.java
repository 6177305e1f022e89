package kerfwright.catalogue;

import java.util.List;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;

/**
 * Where one row of the catalogue comes from and how sure it is.
 *
 * @param sources keys into the register of sources
 * @param locator table, clause or page
 * @param basis what was done to know it
 * @param confidence how far it is trusted
 * @param note remark, may be empty
 */
public record Provenance(
    List<SourceKey> sources, String locator, Basis basis, Confidence confidence, String note) {
  public Provenance {
    sources = List.copyOf(sources);
  }

  /** The same place, known in another way: a figure of the row with a standing of its own. */
  public Provenance with(Basis other) {
    return new Provenance(sources, locator, other, confidence, note);
  }
}
