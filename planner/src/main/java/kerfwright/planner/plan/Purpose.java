package kerfwright.planner.plan;

import kerfwright.catalogue.operation.Task;
import kerfwright.quantity.Identified;

/** What a step is for, in the four words of the contract. */
public enum Purpose implements Identified {
  BULK,
  APPROACH,
  FINISH,
  POLISH;

  /** The word for a task. */
  public static Purpose of(Task task) {
    return switch (task) {
      case APPROACH, ENTER -> APPROACH;
      case FINISH -> FINISH;
      case POLISH -> POLISH;
      case INSPECT, OPEN, OUTLINE, BULK, SLOT, GROOVE, REDUCE, PLANE, FINISH_LINE, DEROOF, REFINE ->
          BULK;
    };
  }
}
