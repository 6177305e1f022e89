package kerfwright.physics.heat;

import static kerfwright.physics.heat.HeatCases.A_DENTINE;
import static kerfwright.physics.heat.HeatCases.A_ENAMEL;
import static kerfwright.physics.heat.HeatCases.K_DENTINE;
import static kerfwright.physics.heat.HeatCases.K_ENAMEL;
import static kerfwright.physics.heat.HeatCases.along;
import static kerfwright.physics.heat.HeatCases.dentine;
import static kerfwright.physics.heat.HeatCases.enamel;
import static kerfwright.physics.heat.HeatCases.heated;
import static kerfwright.physics.heat.HeatCases.rod;
import static kerfwright.physics.heat.HeatCases.washed;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerfwright.physics.heat.field.AxisymmetricConduction;
import kerfwright.physics.heat.field.HeatMesh;
import kerfwright.physics.heat.field.HeatProbe;
import kerfwright.physics.heat.field.HeatSeries;
import org.junit.jupiter.api.Test;

/**
 * Half-spaces of Carslaw and Jaeger (2nd ed. 1959) and Incropera and DeWitt. Tolerance 0.02 K on
 * rises of about 40 K: the second-order error of 25 um cells at the steepest curve.
 */
class HalfSpaceLiteratureTest {
  private static final double WITHIN_K = 0.02;
  private static final HeatMesh MESH = HeatMesh.even(2, 1000, 0.01);
  private static final double[] DEPTHS_MM = {0, 0.5, 1, 2, 3};
  private static final int[] SECONDS = {1, 2, 5, 10, 30};

  private interface Form {
    double at(double depthM, double timeS);
  }

  private static void hold(HeatBody body, HeatStretch stretch, int firstDepth, Form form) {
    HeatSeries series = along(body, stretch, MESH, 1, DEPTHS_MM);
    for (int d = firstDepth; d < DEPTHS_MM.length; d++) {
      for (int second : SECONDS) {
        assertEquals(
            form.at(DEPTHS_MM[d] * 1e-3, second),
            series.probesC()[d][second - 1],
            WITHIN_K,
            DEPTHS_MM[d] + " mm, " + second + " s");
      }
    }
  }

  @Test
  void a1SurfaceHeldFollowsTheErrorFunction() {
    // C&J 2.5; Incropera 5.7 case 1.
    assertEquals(12.7407, 40 * ClosedForms.heldSurface(2e-3, A_DENTINE, 10), 1e-4);
    hold(
        rod(0, Face.insulated(), dentine(25)),
        washed(30, HeatCases.HELD, 40, 0),
        1,
        (x, t) -> 40 * ClosedForms.heldSurface(x, A_DENTINE, t));
  }

  @Test
  void a1FluxThroughAHeldSurfaceFallsWithTheRootOfTime() {
    // k theta / sqrt(pi alpha t): 7640.6 W/m2 at 10 s; heat taken up until then twice flux x time.
    HeatSeries series =
        along(rod(0, Face.insulated(), dentine(25)), washed(10, HeatCases.HELD, 40, 0), MESH, 1, 1);
    double area = Math.PI * 1e-6;
    assertEquals(2 * 7640.6 * 10, series.balance().washedJ() / area, 0.003 * 152812);
  }

  @Test
  void a2ConstantFluxFollowsIerfc() {
    // C&J 2.9; Incropera 5.7 case 2.
    assertEquals(16.5563, ClosedForms.constantFlux(1e-3, 1e4, K_DENTINE, A_DENTINE, 10), 1e-4);
    hold(
        rod(0, Face.insulated(), dentine(25)),
        heated(30, 1e4, 0),
        0,
        (x, t) -> ClosedForms.constantFlux(x, 1e4, K_DENTINE, A_DENTINE, t));
  }

  @Test
  void a3TwoBodiesInContactMeetAtTheMeanByEffusivity() {
    // C&J 2.15: 77 degC enamel on 37 degC dentine: 58.6886 degC.
    double e1 = K_ENAMEL / Math.sqrt(A_ENAMEL);
    double e2 = K_DENTINE / Math.sqrt(A_DENTINE);
    double contact = (e1 * 77 + e2 * 37) / (e1 + e2);
    assertEquals(58.6886, contact, 1e-4);
    double c1 = K_ENAMEL / A_ENAMEL;
    double c2 = K_DENTINE / A_DENTINE;
    HeatBody body = rod(37, Face.insulated(), enamel(12), dentine(13));
    HeatSchedule schedule = new HeatSchedule(1, List.of(heated(5, 0, 0)));
    HeatSeries series =
        new AxisymmetricConduction(body, schedule, List.of(HeatProbe.onAxis(12)), MESH)
            .run(
                1,
                z ->
                    Math.abs(z - 12e-3) < 1e-9
                        ? (c1 * 77 + c2 * 37) / (c1 + c2)
                        : z < 12e-3 ? 77 : 37);
    for (double value : series.probesC()[0]) {
      assertEquals(contact, value, WITHIN_K);
    }
  }

  @Test
  void a4WashedSurfaceFollowsItsClosedForm() {
    // C&J 2.7; Incropera 5.7 case 3. Coolant 23 degC on a body of 37 degC.
    assertEquals(
        -7.5508, -14 * ClosedForms.washedSurface(1e-3, 2000, K_DENTINE, A_DENTINE, 10), 1e-4);
    for (double h : new double[] {500, 2000, 5000, 20000}) {
      hold(
          rod(37, Face.insulated(), dentine(25)),
          washed(30, h, 23, 0),
          0,
          (x, t) -> 37 - 14 * ClosedForms.washedSurface(x, h, K_DENTINE, A_DENTINE, t));
    }
  }

  @Test
  void a6EnamelOnDentineHeldAtTheSurface() {
    // C&J 12.8. Junction after 10 s: 30.4533 K of 40 K.
    assertEquals(
        30.4533,
        40 * ClosedForms.twoLayersHeld(1e-3, 1e-3, K_ENAMEL, A_ENAMEL, K_DENTINE, A_DENTINE, 10),
        1e-4);
    hold(
        rod(0, Face.insulated(), enamel(1), dentine(24)),
        washed(30, HeatCases.HELD, 40, 0),
        1,
        (x, t) ->
            40 * ClosedForms.twoLayersHeld(x, 1e-3, K_ENAMEL, A_ENAMEL, K_DENTINE, A_DENTINE, t));
  }

  @Test
  void a7EnamelOnDentineUnderConstantFlux() {
    // Image series of C&J 12.8; junction after 10 s: 19.4745 K at 10 kW/m2.
    assertEquals(
        19.4745,
        ClosedForms.twoLayersFlux(1e-3, 1e4, 1e-3, K_ENAMEL, A_ENAMEL, K_DENTINE, A_DENTINE, 10),
        1e-4);
    hold(
        rod(0, Face.insulated(), enamel(1), dentine(24)),
        heated(30, 1e4, 0),
        0,
        (x, t) ->
            ClosedForms.twoLayersFlux(x, 1e4, 1e-3, K_ENAMEL, A_ENAMEL, K_DENTINE, A_DENTINE, t));
  }

  @Test
  void a9StrokesAddUpBySuperposition() {
    // C&J 1.14 (Duhamel): the sum of +q and -q. Five strokes of 20 kW/m2, 2 s on and 2 s off.
    HeatStretch strokes =
        new HeatStretch(20, 2e4, 2, 2, Coolant.NONE, Coolant.NONE, Coolant.NONE, 0);
    HeatBody body = rod(0, Face.insulated(), dentine(25));
    HeatSchedule schedule =
        new HeatSchedule(1, List.of(strokes, HeatStretch.pause(10, Coolant.NONE)));
    List<HeatProbe> probes = List.of(HeatProbe.onAxis(0), HeatProbe.onAxis(1), HeatProbe.onAxis(2));
    HeatSeries series = new AxisymmetricConduction(body, schedule, probes, MESH).run(2);
    assertEquals(28.5202, strokesAt(1e-3, 18), 1e-4);
    for (int output = 0; output < 15; output++) {
      for (int d = 0; d < 3; d++) {
        assertEquals(
            strokesAt(d * 1e-3, 2.0 * (output + 1)), series.probesC()[d][output], WITHIN_K);
      }
    }
  }

  private static double strokesAt(double x, double t) {
    double sum = 0;
    for (int stroke = 0; stroke < 5; stroke++) {
      sum += ClosedForms.constantFlux(x, 2e4, K_DENTINE, A_DENTINE, t - 4 * stroke);
      sum -= ClosedForms.constantFlux(x, 2e4, K_DENTINE, A_DENTINE, t - 4 * stroke - 2);
    }
    return sum;
  }
}
