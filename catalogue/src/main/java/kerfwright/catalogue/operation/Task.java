package kerfwright.catalogue.operation;

import java.util.Locale;

/** What an operation does, in the trade's words. Inspecting ones cut nothing. */
public enum Task {
  INSPECT,
  OPEN,
  OUTLINE,
  BULK,
  SLOT,
  GROOVE,
  REDUCE,
  PLANE,
  FINISH_LINE,
  APPROACH,
  ENTER,
  DEROOF,
  REFINE,
  FINISH,
  POLISH;

  /** The word used in data files, e.g. finish-line. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
