package kerfwright.practice.reprocessing;

import java.time.Instant;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * Something done to a load.
 *
 * @param at when
 * @param by initials of who did it
 * @param what kind
 * @param indicator what was read, or null
 * @param result its result, or null
 * @param note in their words, may be empty
 */
public record LoadEvent(
    Instant at,
    String by,
    What what,
    @Nullable Indicator indicator,
    Indicator.@Nullable Result result,
    String note) {
  /** Kinds of events. */
  public enum What implements Identified {
    STARTED,
    READ,
    RELEASED,
    FAILED,
    /** The steriliser returned to service after this load's spore test had failed. */
    RETURNED
  }
}
