package kerfwright.planner.explain;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.operation.Operation;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;

/** The texts of an operation: {@code operation.<variant>.<id>.<text>}. */
public final class OperationWords {
  private OperationWords() {}

  /** What is done: "Cut a small outline through the enamel". */
  public static Message name(Operation row) {
    return text(row, "name", List.of());
  }

  /** When it is done. */
  public static Message end(Operation row, List<Double> saidMm) {
    return text(row, "cue", saidMm);
  }

  /** How the hand leads the instrument. */
  public static Message way(Operation row) {
    return text(row, "way", List.of());
  }

  /** When to stop although it is not done. */
  public static Message stop(Operation row, List<Double> saidMm) {
    return text(row, "stop", saidMm);
  }

  /** What may go wrong. */
  public static Message hazard(Operation row) {
    return text(row, "hazard", List.of());
  }

  private static Message text(Operation row, String text, List<Double> saidMm) {
    List<Object> values = new ArrayList<>();
    saidMm.forEach(mm -> values.add(Rounded.places(mm, 1)));
    return new Message("operation." + row.variant() + "." + row.id() + "." + text, values);
  }
}
