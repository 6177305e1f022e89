package kerfwright.planner.choice;

import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Procedure;

/** Which shapes make the walls a procedure wants: common practice. */
public final class Forms {
  private static final double STRAIGHT_SIDE = 0.8;

  private Forms() {}

  /** Whether a procedure leaves walls that a straight or tapered side has to make. */
  public static boolean straightSided(CutCase c) {
    return Procedure.CROWN_PREPARATION.equals(c.procedure())
        || Procedure.VENEER_PREPARATION.equals(c.procedure())
        || Procedure.CROWN_SECTIONING.equals(c.procedure());
  }

  /**
   * Walls of crowns and veneers, and the slot through a crown, are made with a straight or tapered
   * side, not with a ball or the bulge of a pear.
   */
  public static boolean wrongFor(CutCase c, ShapeFamily shape) {
    boolean straight = shape.sideFraction() >= STRAIGHT_SIDE && shape != ShapeFamily.PEAR_ELONGATED;
    return straightSided(c) && !straight;
  }
}
