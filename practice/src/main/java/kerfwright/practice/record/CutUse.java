package kerfwright.practice.record;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import kerfwright.catalogue.tooth.Tooth;
import org.jspecify.annotations.Nullable;

/**
 * What was used on which tooth, how, and by whom. Never a name of a patient.
 *
 * @param caseReference the practice's own reference
 * @param tooth the tooth
 * @param step the step of a plan, or null where none was followed
 * @param instrument which instrument
 * @param handpiece the handpiece it turned in, or null where none was noted
 * @param origin from which load, pouch and lot
 * @param cut how
 * @param by initials of who cut
 * @param at when, to the microsecond
 */
public record CutUse(
    String caseReference,
    Tooth tooth,
    @Nullable PlanStep step,
    UsedInstrument instrument,
    @Nullable Piece handpiece,
    Origin origin,
    Cut cut,
    String by,
    Instant at) {
  /**
   * A piece of the drawer this use counts for.
   *
   * @param used which one
   * @param origin from which load, pouch and lot
   */
  public record Piece(UsedInstrument used, Origin origin) {}

  private static final String REFERENCE = "[\\p{L}\\p{N}._/#-]{1,40}";
  private static final String INITIALS = "[\\p{L}\\p{N}.-]{1,12}";

  public CutUse {
    if (!isReference(caseReference) || !areInitials(by)) {
      throw new IllegalArgumentException(
          "Not a case reference and initials: '" + caseReference + "', '" + by + "'");
    }
    at = at.truncatedTo(ChronoUnit.MICROS);
  }

  /** The instrument, and the handpiece where it was told. */
  public List<Piece> pieces() {
    Piece first = new Piece(instrument, origin);
    return handpiece == null ? List.of(first) : List.of(first, handpiece);
  }

  /** Up to 40 letters, digits and . _ / # - without spaces, as in the case file. */
  public static boolean isReference(String text) {
    return text.matches(REFERENCE);
  }

  /** Up to 12 letters, digits, full stops and hyphens. */
  public static boolean areInitials(String text) {
    return text.matches(INITIALS);
  }
}
