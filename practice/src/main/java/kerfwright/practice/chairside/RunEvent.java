package kerfwright.practice.chairside;

import java.time.Instant;
import java.util.UUID;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * What happened in a run beside the cuts: an instrument that dropped out, a tooth that differs from
 * the plan, something that stopped the work.
 *
 * @param id made at the chair, so that one sent twice is kept once
 * @param run the run
 * @param step in which step of it
 * @param what what happened
 * @param label the instrument, where it is about one, else empty
 * @param depthMm where a layer or the roof of the chamber was seen, mm below the top
 * @param by initials of who told it
 * @param at when, to the microsecond
 */
public record RunEvent(
    UUID id,
    UUID run,
    int step,
    What what,
    String label,
    @Nullable Double depthMm,
    String by,
    Instant at) {
  /** What may happen. */
  public enum What implements Identified {
    BLUNT,
    BROKEN,
    PIECES_MISSING,
    DROPPED,
    NOT_HERE,
    SEEN,
    BLEEDING,
    EXPOSURE,
    PERFORATION,
    FRACTURE,
    FINISHED;
  }

  public RunEvent {
    if (step < 1 || step > 999 || label.length() > 60 || by.isEmpty() || by.length() > 12) {
      throw new IllegalArgumentException("Not an event of a run: step " + step + ", by " + by);
    }
    if (depthMm != null && !(depthMm > 0 && depthMm <= 30)) {
      throw new IllegalArgumentException("Depth in mm must lie above 0 and up to 30: " + depthMm);
    }
  }
}
