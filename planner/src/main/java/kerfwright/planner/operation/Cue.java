package kerfwright.planner.operation;

import java.util.List;
import kerfwright.catalogue.operation.Operation;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;

/**
 * An operation that no rotary instrument does now: something looked at, a hand instrument or a tip,
 * or something only the mouth shows to be needed.
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

  /** One of its texts: name, cue, stop, hazard, way or when, with the figures of this case. */
  public Message text(String text) {
    return text(operation, text, saidMm);
  }

  /** Figures of a tenth of a millimetre are said as such, finer ones to a hundredth. */
  static Message text(Operation operation, String text, List<Double> saidMm) {
    Object[] figures =
        saidMm.stream()
            .map(mm -> Rounded.places(mm, Math.abs(mm * 10 - Math.rint(mm * 10)) < 1e-6 ? 1 : 2))
            .toArray();
    return Message.of(operation.key(text), figures);
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
