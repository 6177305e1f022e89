package kerfwright.physics.heat;

import static kerfwright.physics.heat.HeatCases.A_DENTINE;
import static kerfwright.physics.heat.HeatCases.K_DENTINE;
import static kerfwright.physics.heat.HeatCases.along;
import static kerfwright.physics.heat.HeatCases.dentine;
import static kerfwright.physics.heat.HeatCases.enamel;
import static kerfwright.physics.heat.HeatCases.heated;
import static kerfwright.physics.heat.HeatCases.rod;
import static kerfwright.physics.heat.HeatCases.washed;
import static org.junit.jupiter.api.Assertions.assertEquals;

import kerfwright.physics.heat.field.HeatMesh;
import kerfwright.physics.heat.field.HeatSeries;
import org.junit.jupiter.api.Test;

/** Slabs of Carslaw and Jaeger (2nd ed. 1959). Tolerance as for half-spaces, 20 um cells. */
class SlabLiteratureTest {
  private static final double WITHIN_K = 0.02;
  private static final double L = 2e-3;
  private static final HeatMesh MESH = HeatMesh.even(2, 100, 0.01);
  private static final int[] SECONDS = {1, 2, 5, 10, 20};

  @Test
  void a5HeldAboveAndInsulatedBelow() {
    // C&J 3.3.
    assertEquals(20.5806, 40 * ClosedForms.slabHeldInsulated(1e-3, L, A_DENTINE, 5), 1e-4);
    HeatSeries series =
        along(
            rod(0, Face.insulated(), dentine(2)),
            washed(20, HeatCases.HELD, 40, 0),
            MESH,
            1,
            0.5,
            1,
            2);
    double[] depths = {0.5e-3, 1e-3, 2e-3};
    for (int second : SECONDS) {
      for (int d = 0; d < 3; d++) {
        assertEquals(
            40 * ClosedForms.slabHeldInsulated(depths[d], L, A_DENTINE, second),
            series.probesC()[d][second - 1],
            WITHIN_K);
      }
    }
  }

  @Test
  void a5HeldAboveAndBelow() {
    // C&J 3.4.
    assertEquals(17.8669, 40 * ClosedForms.slabHeldHeld(1e-3, L, A_DENTINE, 5), 1e-4);
    HeatSeries series =
        along(
            rod(0, Face.held(0), dentine(2)),
            washed(20, HeatCases.HELD, 40, 0),
            MESH,
            1,
            0.5,
            1,
            1.5);
    double[] depths = {0.5e-3, 1e-3, 1.5e-3};
    for (int second : SECONDS) {
      for (int d = 0; d < 3; d++) {
        assertEquals(
            40 * ClosedForms.slabHeldHeld(depths[d], L, A_DENTINE, second),
            series.probesC()[d][second - 1],
            WITHIN_K);
      }
    }
  }

  @Test
  void a5FluxAboveAndInsulatedBelow() {
    // C&J 3.8.
    assertEquals(14.0523, ClosedForms.slabFluxInsulated(L, 1e4, L, K_DENTINE, A_DENTINE, 10), 1e-4);
    HeatSeries series =
        along(rod(0, Face.insulated(), dentine(2)), heated(10, 1e4, 0), MESH, 1, 0, 1, 2);
    for (int second : new int[] {1, 2, 5, 10}) {
      for (int d = 0; d < 3; d++) {
        assertEquals(
            ClosedForms.slabFluxInsulated(d * 1e-3, 1e4, L, K_DENTINE, A_DENTINE, second),
            series.probesC()[d][second - 1],
            WITHIN_K);
      }
    }
  }

  @Test
  void a5InsulatedAboveAndWashedBelow() {
    // Incropera 5.5: Bi 20.8333.
    assertEquals(
        -8.2507, -14 * ClosedForms.slabInsulatedWashed(0, 5000, L, K_DENTINE, A_DENTINE, 10), 1e-4);
    HeatSeries series =
        along(
            rod(37, Face.washed(new Coolant(5000, 23)), dentine(2)),
            heated(10, 0, 0),
            MESH,
            1,
            0,
            1,
            2);
    for (int second : new int[] {2, 5, 10}) {
      for (int d = 0; d < 3; d++) {
        assertEquals(
            37
                - 14
                    * ClosedForms.slabInsulatedWashed(
                        d * 1e-3, 5000, L, K_DENTINE, A_DENTINE, second),
            series.probesC()[d][second - 1],
            WITHIN_K);
      }
    }
  }

  @Test
  void a7SteadyFluxThroughEnamelAndDentine() {
    // Incropera 3.1: 77 | 37 degC over 1 mm enamel and 2 mm dentine: 7405.71 W/m2, 67.8571 degC.
    HeatSeries series =
        along(
            rod(37, Face.held(37), enamel(1), dentine(2)),
            washed(400, HeatCases.HELD, 77, 0),
            HeatMesh.even(2, 30, 0.05),
            1,
            0.5,
            1);
    assertEquals(67.8571, series.probesC()[1][399], 1e-3);
    double flux =
        HeatCases.K_ENAMEL * (series.probesC()[0][399] - series.probesC()[1][399]) / 0.5e-3;
    assertEquals(7405.71, flux, 0.5);
  }
}
