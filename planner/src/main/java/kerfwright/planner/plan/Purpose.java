package kerfwright.planner.plan;

import kerfwright.catalogue.operation.Task;

/** What a step is for, in the four words of the contract. */
public enum Purpose {
  BULK("bulk"),
  APPROACH("approach"),
  FINISH("finish"),
  POLISH("polish");

  private final String id;

  Purpose(String id) {
    this.id = id;
  }

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

  public String id() {
    return id;
  }
}
