package kerfwright.practice.reprocessing;

import java.util.List;
import kerfwright.quantity.Identified;

/**
 * Why something is not done with a load.
 *
 * @param kind why
 * @param arguments names and figures, as the kind says
 */
public record LoadRefusal(Kind kind, List<String> arguments) {
  /** Kinds of refusal. */
  public enum Kind implements Identified {
    /** Nothing was put into it. */
    EMPTY,
    /** The steriliser is none of the practice's; argument: its name. */
    UNKNOWN_STERILISER,
    /** A load still runs in it; arguments: steriliser, load. */
    STERILISER_BUSY,
    /** Cycle N takes no wrapped instruments. */
    CYCLE_UNWRAPPED_ONLY,
    /** The maker has not stated wrapped loads for this S cycle. */
    CYCLE_S_NOT_STATED,
    /** Hollow, which an S cycle is not stated for and B takes; argument: label. */
    HOLLOW_NEEDS_B,
    /** Not in cleaning, so that it cannot be loaded; arguments: label, id of its state. */
    NOT_CLEANED,
    /** For single use; argument: label. */
    SINGLE_USE,
    /** Twice in the load; argument: label. */
    TWICE,
    /** The drawer knows no such instrument; argument: its id. */
    UNKNOWN_INSTRUMENT,
    /** The person is none of the practice's; argument: initials. */
    UNKNOWN_PERSON,
    /** Their role may not release; argument: initials. */
    MAY_NOT_RELEASE,
    /** The cycle is not over; argument: minutes left. */
    STILL_RUNS,
    /** An indicator was not read; argument: id of the indicator. */
    NOT_READ,
    /** An indicator failed: the load can only be failed; argument: id of the indicator. */
    INDICATOR_FAILED,
    /** It was decided already; argument: id of its state. */
    DECIDED,
    /** There is no such load. */
    UNKNOWN_LOAD,
    /** A spore test failed in the steriliser; arguments: steriliser, load whose test failed. */
    STERILISER_LOCKED,
    /** It ran in doubt of the spore test of a load and can only be failed; argument: that load. */
    IN_QUESTION,
    /** Repeat spore tests are missing; arguments: passed, needed. */
    TESTS_MISSING,
    /** A reason is missing. */
    NO_REASON,
    /** Changed by someone else meanwhile. */
    MEANWHILE
  }

  public LoadRefusal {
    arguments = List.copyOf(arguments);
  }

  static LoadRefusal of(Kind kind, String... arguments) {
    return new LoadRefusal(kind, List.of(arguments));
  }
}
