package kerfwright.planner.casework;

import kerfwright.quantity.Identified;
import kerfwright.quantity.Length;

/**
 * Shape of the opening seen along the axis of the cut, or of the surface worked on.
 *
 * @param shape ellipse, circle, rectangle, slot (openings with walls all round) or band, patch
 *     (open surfaces, unrolled: length x width)
 * @param length the longer side
 * @param width the shorter side; the head must fit through it where there are walls
 */
public record Outline(Shape shape, Length length, Length width) {
  /** Shapes of an outline. */
  public enum Shape implements Identified {
    ELLIPSE(true),
    CIRCLE(true),
    RECTANGLE(true),
    SLOT(true),
    BAND(false),
    PATCH(false);

    private final boolean walled;

    Shape(boolean walled) {
      this.walled = walled;
    }

    /** True where the head has to fit between walls. */
    public boolean walled() {
      return walled;
    }
  }

  /** Area seen along the axis, m2. */
  public double areaM2() {
    double box = length.metres() * width.metres();
    return switch (shape) {
      case ELLIPSE, CIRCLE -> Math.PI / 4 * box;
      case SLOT ->
          (length.metres() - width.metres()) * width.metres()
              + Math.PI / 4 * width.metres() * width.metres();
      case RECTANGLE, BAND, PATCH -> box;
    };
  }
}
