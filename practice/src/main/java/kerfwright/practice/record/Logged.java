package kerfwright.practice.record;

import java.util.Optional;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * What became of a report or correction: an entry, or the reason against it.
 *
 * @param entry the entry, null where nothing was written
 * @param refusal why nothing was written, null where there is an entry
 * @param before true where the entry stood there already
 */
public record Logged(@Nullable RecordEntry entry, @Nullable Refusal refusal, boolean before) {
  /** Why nothing was written. */
  public enum Refusal implements Identified {
    /** The drawer knows no such instrument. */
    UNKNOWN_INSTRUMENT,
    /** This id stands for another statement. */
    ID_TAKEN,
    /** There is no such entry to correct. */
    UNKNOWN_ENTRY,
    /** It was corrected already; the newest correction is to be corrected. */
    CORRECTED_ALREADY,
    /** It says that a use did not take place: that is not corrected, a new use is entered. */
    STRUCK,
    /** Whoever corrects is none of the practice's people. */
    UNKNOWN_PERSON
  }

  static Logged as(RecordEntry entry, boolean before) {
    return new Logged(entry, null, before);
  }

  static Logged refused(Refusal refusal) {
    return new Logged(null, refusal, false);
  }

  public Optional<RecordEntry> written() {
    return Optional.ofNullable(entry);
  }
}
