package kerfwright.physics.heat;

import static kerfwright.physics.heat.HeatCases.A_DENTINE;
import static kerfwright.physics.heat.HeatCases.K_DENTINE;
import static kerfwright.physics.heat.HeatCases.along;
import static kerfwright.physics.heat.HeatCases.dentine;
import static kerfwright.physics.heat.HeatCases.heated;
import static kerfwright.physics.heat.HeatCases.rod;
import static kerfwright.physics.heat.HeatCases.washed;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerfwright.physics.heat.field.HeatMesh;
import kerfwright.physics.heat.field.HeatSeries;
import org.junit.jupiter.api.Test;

/** A surface receding at speed v: Carslaw and Jaeger 2nd ed. 10.7 (moving co-ordinates). */
class RecedingFaceLiteratureTest {
  @Test
  void a8HeldFaceBuildsUpAsInMovingCoordinates() {
    // v = 0.2 mm/s; theta / theta_s at 1 mm below the face after 5 s: 0.26402.
    assertEquals(0.26402, ClosedForms.recedingHeld(1e-3, 0.2e-3, A_DENTINE, 5), 1e-5);
    for (int second : new int[] {1, 2, 5, 10, 20}) {
      double depthMm = 1 + 0.2 * second;
      HeatSeries series =
          along(
              rod(0, Face.insulated(), dentine(20)),
              washed(second, HeatCases.HELD, 40, 0.2),
              HeatMesh.even(2, 400, 0.01),
              second,
              depthMm);
      double expected = 40 * ClosedForms.recedingHeld(1e-3, 0.2e-3, A_DENTINE, second);
      // 0.02 K: second-order error of 50 um cells.
      assertEquals(expected, series.probesC()[0][0], 0.02, second + " s");
    }
  }

  @Test
  void a8SteadyProfileUnderFluxIsExponential() {
    // theta_s = q / (rho c v), theta = theta_s exp(-v x / alpha); v = 0.5 mm/s: 8.375 K at 10
    // kW/m2,
    // time scale alpha / v^2 = 0.8 s, so 20 s is steady.
    HeatSeries series =
        along(
            rod(0, Face.insulated(), dentine(14)),
            heated(20, 1e4, 0.5),
            HeatMesh.even(2, 700, 0.005),
            20,
            10.5,
            11);
    assertEquals(8.375, 1e4 / (K_DENTINE / A_DENTINE * 0.5e-3), 1e-9);
    // 0.3 %: cells of 20 um against a length alpha / v of 402 um, second order, plus half a sliver.
    assertEquals(8.375, series.floorC()[0], 0.003 * 8.375);
    assertEquals(8.375 * 0.288292, series.probesC()[0][0], 0.003 * 8.375);
    assertEquals(8.375 * 0.083112, series.probesC()[1][0], 0.003 * 8.375);
    assertEquals(10, series.floorDepthMm()[0], 1e-9);
  }

  @Test
  void errorOfTheRecedingFaceFallsWithTheSquareOfTheCells() {
    double coarse = largestError(60, 0.01);
    double middle = largestError(120, 0.005);
    double fine = largestError(240, 0.0025);
    // Fourfold for each halving at second order; three allows for the floor's place in its cell.
    assertTrue(middle < coarse / 3 && fine < middle / 3, coarse + " " + middle + " " + fine);
  }

  /** At 2 mm, while a face held at 40 K comes nearer at 0.19 mm/s, stopping within cells. */
  private static double largestError(int cells, double stepS) {
    HeatSeries series =
        along(
            rod(0, Face.insulated(), dentine(12)),
            washed(5, HeatCases.HELD, 40, 0.19),
            HeatMesh.even(2, cells, stepS),
            1,
            2);
    double largest = 0;
    for (int second = 1; second <= 5; second++) {
      double exact =
          40 * ClosedForms.recedingHeld(2e-3 - 0.19e-3 * second, 0.19e-3, A_DENTINE, second);
      largest = Math.max(largest, Math.abs(series.probesC()[0][second - 1] - exact));
    }
    return largest;
  }
}
