package kerfwright.planner.choice;

import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Procedure;

/** Which shapes make the walls a procedure wants: common practice. */
public final class Forms {
  private static final double STRAIGHT_SIDE = 0.8;

  private Forms() {}

  /** Walls of crowns and veneers are made with a straight or tapered side, not with a ball. */
  public static boolean wrongFor(CutCase c, ShapeFamily shape) {
    boolean walls =
        c.procedure() == Procedure.CROWN_PREPARATION
            || c.procedure() == Procedure.VENEER_PREPARATION;
    return walls && shape.sideFraction() < STRAIGHT_SIDE;
  }
}
