package kerfwright.physics.heat.field;

import kerfwright.quantity.Check;

/**
 * Cells and step of a computation.
 *
 * @param cellsR cells along the radius
 * @param cellsZ cells through the depth
 * @param stepS longest time step
 * @param graded false: cells as even as layers and spot allow; true: finer near the spot, and in
 *     time after each switch
 */
public record HeatMesh(int cellsR, int cellsZ, double stepS, boolean graded) {
  public HeatMesh {
    if (cellsR < 2 || cellsZ < 4) {
      throw new IllegalArgumentException(
          "A mesh needs at least 2 x 4 cells, got " + cellsR + " x " + cellsZ);
    }
    if ((long) cellsR * cellsZ > 4_000_000L) {
      throw new IllegalArgumentException(
          "A mesh may have at most 4000000 cells, got " + cellsR + " x " + cellsZ);
    }
    Check.positive("Time step", "s", stepS);
  }

  public static HeatMesh even(int cellsR, int cellsZ, double stepS) {
    return new HeatMesh(cellsR, cellsZ, stepS, false);
  }

  public static HeatMesh graded(int cellsR, int cellsZ, double stepS) {
    return new HeatMesh(cellsR, cellsZ, stepS, true);
  }
}
