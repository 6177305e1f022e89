package kerfwright.physics.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerfwright.physics.heat.field.AxisymmetricConduction;
import kerfwright.physics.heat.field.HeatMesh;
import kerfwright.physics.heat.field.HeatProblem;
import kerfwright.physics.heat.field.HeatSeries;
import kerfwright.physics.heat.field.HeatSolution;
import kerfwright.physics.heat.field.Resolution;
import org.junit.jupiter.api.Test;

/** Strokes on a metal-ceramic crown against an independent extrapolated solution. */
class CrownStrokesTest {
  private static final ReferenceCurve REFERENCE =
      ReferenceCurve.read("crown-strokes-reference.csv");

  private static HeatSeries on(HeatMesh mesh) {
    return new AxisymmetricConduction(
            HeatCases.crown(), HeatCases.strokesOnCrown(0), HeatCases.CROWN_PROBES, mesh)
        .run(0.1);
  }

  @Test
  void anEvenMeshComesWithinATwentiethOfAKelvin() {
    assertTrue(REFERENCE.differenceK(on(HeatMesh.even(100, 120, 0.01))) <= 0.05);
  }

  @Test
  void aGradedMeshOfATenthOfTheCellsDoesTheSame() {
    assertTrue(REFERENCE.differenceK(on(HeatMesh.graded(40, 50, 0.03334))) <= 0.05);
  }

  @Test
  void errorFallsWithTheSquareOfTheCells() {
    double coarse = REFERENCE.differenceK(on(HeatMesh.graded(20, 25, 0.02)));
    double middle = REFERENCE.differenceK(on(HeatMesh.graded(40, 50, 0.01)));
    double fine = REFERENCE.differenceK(on(HeatMesh.graded(80, 100, 0.005)));
    // Fourfold at second order; the jump of flux at the edge of the spot takes a little off.
    assertTrue(coarse / middle > 2.8 && middle / fine > 2.8, coarse + " " + middle + " " + fine);
  }

  @Test
  void errorFallsWithTheSquareOfTheStep() {
    HeatSeries exact = on(HeatMesh.graded(40, 50, 0.0025));
    double coarse = difference(exact, on(HeatMesh.graded(40, 50, 0.1)));
    double middle = difference(exact, on(HeatMesh.graded(40, 50, 0.05)));
    double fine = difference(exact, on(HeatMesh.graded(40, 50, 0.025)));
    assertTrue(coarse / middle > 3 && middle / fine > 3, coarse + " " + middle + " " + fine);
  }

  private static double difference(HeatSeries a, HeatSeries b) {
    double largest = 0;
    for (int i = 0; i < a.timesS().length; i++) {
      largest = Math.max(largest, Math.abs(a.probesC()[0][i] - b.probesC()[0][i]));
    }
    return largest;
  }

  @Test
  void theSurfaceBeginsLikeADiscOnAHalfSpace() {
    // Carslaw and Jaeger 10.5 in ceramic (k 1, alpha 4.902e-7): the metal lies 5 diffusion lengths
    // below and the washing outside has not reached the middle. 0.1 K of a rise of 99.5 K.
    double rise = ClosedForms.disc(0, 0.8e-3, 4e5, 1, 1 / 2.04e6, 0.1);
    assertEquals(36 + rise, on(HeatMesh.graded(60, 90, 0.02)).probesC()[2][0], 0.1);
  }

  @Test
  void theAllowedErrorIsKept() {
    for (double allowed : new double[] {0.2, 0.05, 0.02}) {
      HeatSolution solution =
          new HeatProblem(
                  HeatCases.crown(),
                  HeatCases.strokesOnCrown(0),
                  0.1,
                  HeatCases.CROWN_PROBES.subList(0, 2),
                  Resolution.withinK(allowed))
              .solve();
      assertTrue(solution.reached());
      assertTrue(solution.errorEstimateK() <= allowed);
      double error = REFERENCE.differenceK(solution.series());
      assertTrue(error <= allowed, allowed + ": " + error);
    }
  }
}
