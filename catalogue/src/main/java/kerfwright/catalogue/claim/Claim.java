package kerfwright.catalogue.claim;

import java.util.List;
import kerfwright.catalogue.evidence.EvidenceRow;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Identified;
import kerfwright.quantity.SourceKey;

/**
 * A rule of thumb; its words stand in the bundle.
 *
 * @param id id of the rule
 * @param supporting findings that speak for it
 * @param opposing findings that speak against it
 * @param shownBy id of the lecture that shows it, may be empty
 * @param sources where the rule itself comes from
 * @param basis how the rule is known
 * @param note remark, may be empty
 */
public record Claim(
    String id,
    List<EvidenceRow> supporting,
    List<EvidenceRow> opposing,
    String shownBy,
    List<SourceKey> sources,
    Basis basis,
    String note) {
  /** How far the tests carry it; it follows from the findings alone. */
  public enum Standing implements Identified {
    TESTS_AGREE,
    TESTS_DIFFER,
    TESTS_AGAINST,
    PRACTICE_ONLY;
  }

  public Standing standing() {
    if (opposing.isEmpty()) {
      return supporting.isEmpty() ? Standing.PRACTICE_ONLY : Standing.TESTS_AGREE;
    }
    return supporting.isEmpty() ? Standing.TESTS_AGAINST : Standing.TESTS_DIFFER;
  }
}
