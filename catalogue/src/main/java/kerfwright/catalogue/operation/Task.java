package kerfwright.catalogue.operation;

import kerfwright.quantity.Identified;

/** What an operation does, in the trade's words. Inspecting ones cut nothing. */
public enum Task implements Identified {
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
}
