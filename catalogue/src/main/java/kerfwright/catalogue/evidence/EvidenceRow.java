package kerfwright.catalogue.evidence;

import java.util.List;
import kerfwright.catalogue.table.Numbers;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Identified;
import kerfwright.quantity.SourceKey;

/**
 * One published finding on cutting, heat or wear; blanks stay blank.
 *
 * @param id id that rules and the record cite, e.g. DC032
 * @param category slug of the topic, e.g. removal-rate
 * @param sentence what it says, in one plain sentence
 * @param instrument instrument as tested
 * @param abrasiveOrBlades grit or blades as told, may be empty
 * @param workMaterial what was cut
 * @param quantity what was measured
 * @param numbers low, typical and high
 * @param unit unit of the numbers, "none" for a finding without one
 * @param load load in newtons as told, may be empty
 * @param speed speed per minute as told, may be empty
 * @param coolant water in mL/min as told, may be empty
 * @param conditions further conditions, may be empty
 * @param sources where it comes from
 * @param locator table, page or "abstract"
 * @param basis how sure it is
 * @param role what its source may be used for
 * @param note remark, may be empty
 */
public record EvidenceRow(
    String id,
    String category,
    String sentence,
    String instrument,
    String abrasiveOrBlades,
    String workMaterial,
    String quantity,
    Numbers numbers,
    String unit,
    String load,
    String speed,
    String coolant,
    String conditions,
    List<SourceKey> sources,
    String locator,
    Basis basis,
    Role role,
    String note) {
  /** A row used to fit is never used to validate; all rows of a source share one role. */
  public enum Role implements Identified {
    CALIBRATION,
    VALIDATION,
    CONTEXT;
  }
}
