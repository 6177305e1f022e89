package kerfwright.planner.operation;

import java.util.List;
import kerfwright.catalogue.operation.Operation;

/**
 * An operation that no turning instrument does now: something looked at, a hand instrument or a
 * tip, or something only the mouth shows to be needed.
 *
 * @param after how many works stand before it; 0 at the beginning
 * @param operation the operation
 * @param why why it cuts nothing here
 * @param saidMm figures its texts name as {0}, {1} and so on, mm
 */
public record Cue(int after, Operation operation, Why why, List<Double> saidMm) {
  public Cue {
    saidMm = List.copyOf(saidMm);
  }

  /** Why an operation is no work. */
  public enum Why {
    /** It is looked at, felt or measured. */
    INSPECT,
    /** A hand instrument, a tip, a brush or a strip does it. */
    HAND,
    /** Whether it is needed shows only in the mouth. */
    IF_NEEDED
  }
}
