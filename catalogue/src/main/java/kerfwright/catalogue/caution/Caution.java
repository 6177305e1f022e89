package kerfwright.catalogue.caution;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Message;
import kerfwright.quantity.SourceKey;

/**
 * A standing caution: a reminder for a licensed clinician.
 *
 * @param id C01 and so on
 * @param when conditions, any one of which calls it up
 * @param text the caution in English
 * @param sources where it comes from
 * @param basis how sure it is
 */
public record Caution(
    String id, Set<CautionCondition> when, String text, List<SourceKey> sources, Basis basis) {
  /** The caution as a note with code caution-c01 and so on. */
  public Finding finding() {
    String small = id.toLowerCase(Locale.ROOT);
    return new Finding(
        Finding.Severity.NOTE, "caution-" + small, Message.of("caution." + small), sources);
  }
}
