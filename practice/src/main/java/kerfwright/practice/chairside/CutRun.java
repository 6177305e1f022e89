package kerfwright.practice.chairside;

import java.time.Instant;
import java.util.UUID;
import kerfwright.catalogue.tooth.Tooth;

/**
 * A plan as it is carried out at the chair: it stays as it was when it was begun, whatever becomes
 * of the drawer meanwhile, until somebody swaps an instrument.
 *
 * @param id names the run, also in the record
 * @param version 1 when begun, one more with every swap
 * @param caseReference the practice's own reference
 * @param tooth the tooth
 * @param begun when its cautions were read and it was begun, to the microsecond
 * @param by initials of who began it
 * @param sheet the steps as shown, as text
 */
public record CutRun(
    UUID id,
    int version,
    String caseReference,
    Tooth tooth,
    Instant begun,
    String by,
    String sheet) {
  /** This run after a swap. */
  public CutRun with(String changedSheet) {
    return new CutRun(id, version + 1, caseReference, tooth, begun, by, changedSheet);
  }

  /** What the record calls the plan of this run. */
  public String planName() {
    return "run:" + id;
  }
}
