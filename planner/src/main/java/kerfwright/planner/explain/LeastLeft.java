package kerfwright.planner.explain;

import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Layer;
import org.jspecify.annotations.Nullable;

/** The least thickness of a layer that may stay, as published. */
final class LeastLeft {
  private LeastLeft() {}

  /** In millimetres, null where none is published. */
  static @Nullable Double mm(CutCase c, Layer layer) {
    return null;
  }
}
