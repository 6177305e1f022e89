package kerfwright.practice.record;

import java.time.Instant;
import java.util.UUID;
import kerfwright.catalogue.tooth.Tooth;
import org.jspecify.annotations.Nullable;

/**
 * A use as it is reported from the chair, perhaps hours later.
 *
 * @param id made where it is reported; sent again, it is written once
 * @param caseReference the practice's own reference
 * @param tooth the tooth
 * @param step the step of a plan, or null
 * @param item the item of the drawer; of a counted lot one piece is given off
 * @param handpiece the handpiece of the drawer it turned in, or null where none was noted; of a lot
 *     one piece is given off
 * @param pouch code of the pouch it was taken out of, empty to take the item's last one
 * @param lot the maker's lot, may be empty
 * @param cut how
 * @param by initials
 * @param at when
 */
public record UseReport(
    UUID id,
    String caseReference,
    Tooth tooth,
    @Nullable PlanStep step,
    UUID item,
    @Nullable UUID handpiece,
    String pouch,
    String lot,
    Cut cut,
    String by,
    Instant at) {
  private static final String CODE = "[^\\s\\p{Cntrl}]{0,60}";

  public UseReport {
    if (!CutUse.isReference(caseReference)
        || !CutUse.areInitials(by)
        || !isCode(pouch)
        || !isCode(lot)
        || item.equals(handpiece)) {
      throw new IllegalArgumentException(
          "Not a report: " + String.join(", ", caseReference, by, pouch, lot));
    }
  }

  /** Code of a pouch or a lot: up to 60 letters, digits and signs without spaces, or none. */
  public static boolean isCode(String text) {
    return text.matches(CODE);
  }

  /** True where an entry says the same, so that this report was sent before. */
  boolean saidBy(RecordEntry entry) {
    CutUse use = entry.use();
    return entry.correction() == null
        && use.caseReference().equals(caseReference)
        && use.tooth().equals(tooth)
        && java.util.Objects.equals(use.step(), step)
        && use.instrument().stoodFor(item)
        && (handpiece == null
            ? use.handpiece() == null
            : use.handpiece() != null && use.handpiece().used().stoodFor(handpiece))
        && use.cut().equals(cut)
        && use.by().equals(by)
        && use.at().equals(at.truncatedTo(java.time.temporal.ChronoUnit.MICROS));
  }
}
