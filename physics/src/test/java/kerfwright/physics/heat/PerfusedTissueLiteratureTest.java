package kerfwright.physics.heat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.physics.heat.field.AxisymmetricConduction;
import kerfwright.physics.heat.field.HeatMesh;
import kerfwright.physics.heat.field.HeatProbe;
import kerfwright.physics.heat.field.HeatSeries;
import org.junit.jupiter.api.Test;

/** Tissue with blood against the steady fin (Pennes 1948) and against dead tissue. */
class PerfusedTissueLiteratureTest {
  private static final double K_PULP = 0.6;
  private static final double WASH = 300;
  private static final double HOT_C = 43;
  private static final double BLOOD_C = 37;

  private static HeatLayer pulp(double mm) {
    return new HeatLayer(mm, K_PULP, 1000, 4180);
  }

  private static HeatBody tooth(double pulpMm, Face bottom) {
    return HeatBody.of(5, List.of(HeatCases.dentine(2), pulp(pulpMm)), BLOOD_C, bottom);
  }

  private static HeatSchedule warmWater(double seconds) {
    return new HeatSchedule(1, List.of(HeatStretch.pause(seconds, new Coolant(WASH, HOT_C))));
  }

  /** Series of film, dentine and fin: what the wall settles at. */
  private static double steadyWallC(double flow, double pulpM, double back) {
    double w = 1.05 * flow / 60 * 4.0e6;
    double root = Math.sqrt(K_PULP * w);
    double tip = back / root;
    double tanh = Math.tanh(pulpM * Math.sqrt(w / K_PULP));
    double fin = root * (tanh + tip) / (1 + tip * tanh);
    double resistance = 1 / WASH + 2e-3 / HeatCases.K_DENTINE + 1 / fin;
    return BLOOD_C + (HOT_C - BLOOD_C) / resistance / fin;
  }

  @Test
  void theFinTakesWhatTheSurveyTabulates() {
    // 0.5 mL/(min g): 50, 65 and 90 W/(m2 K) at 1.5, 2 and 3 mm
    double w = Face.Perfused.ofFlow(0.5, 37, 0).sinkWPerM3K();
    assertEquals(35_000, w, 1);
    double[] mm = {1.5, 2, 3};
    double[] wanted = {50, 65, 90};
    for (int i = 0; i < mm.length; i++) {
      double fin = Math.sqrt(K_PULP * w) * Math.tanh(mm[i] * 1e-3 * Math.sqrt(w / K_PULP));
      assertEquals(wanted[i], fin, 1);
    }
  }

  @Test
  void bothSolversSettleWhereTheFinDoes() {
    for (double flow : new double[] {0.2, 0.5, 1}) {
      for (double mm : new double[] {1.5, 3}) {
        double back = mm < 2 ? 40 : 0;
        HeatBody body = tooth(mm, Face.perfused(flow, BLOOD_C, back));
        double wanted = steadyWallC(flow, mm * 1e-3, back);
        double[] column =
            new LayeredColumn().run(body, warmWater(3000), new double[] {2}, 100).probesC()[0];
        assertEquals(wanted, column[column.length - 1], 0.03, flow + ", " + mm + " mm, column");
        HeatSeries series =
            new AxisymmetricConduction(
                    body,
                    warmWater(3000),
                    List.of(HeatProbe.onAxis(2)),
                    HeatMesh.graded(8, 40, 0.5))
                .run(100);
        double[] full = series.probesC()[0];
        assertEquals(wanted, full[full.length - 1], 0.03, flow + ", " + mm + " mm, axisymmetric");
        assertTrue(series.balance().relativeRemainder() < 1e-9);
        assertTrue(series.balance().facesJ() < 0, "blood carries heat away");
      }
    }
  }

  @Test
  void withoutFlowItIsAnInsulatedBottom() {
    HeatBody dead = tooth(1.5, Face.perfused(0, BLOOD_C));
    HeatBody insulated = tooth(1.5, Face.insulated());
    double[] depth = {2};
    assertArrayEquals(
        new LayeredColumn().run(insulated, warmWater(60), depth, 1).probesC()[0],
        new LayeredColumn().run(dead, warmWater(60), depth, 1).probesC()[0]);
    assertArrayEquals(full(insulated), full(dead));
  }

  private static double[] full(HeatBody body) {
    return new AxisymmetricConduction(
            body, warmWater(60), List.of(HeatProbe.onAxis(2)), HeatMesh.graded(8, 40, 0.1))
        .run(1)
        .probesC()[0];
  }

  @Test
  void above45DegreesBloodSavesNothing() {
    HeatSchedule scald =
        new HeatSchedule(1, List.of(HeatStretch.pause(200, new Coolant(2000, 80))));
    double[] depth = {2};
    List<HeatLayer> layers = List.of(HeatCases.dentine(2), pulp(1.5));
    HeatBody dead = HeatBody.of(5, layers, 46, Face.perfused(0, BLOOD_C));
    HeatBody living = HeatBody.of(5, layers, 46, Face.perfused(1, BLOOD_C));
    assertArrayEquals(
        new LayeredColumn().run(dead, scald, depth, 5).probesC()[0],
        new LayeredColumn().run(living, scald, depth, 5).probesC()[0]);
  }

  @Test
  void moreBloodKeepsThePulpCooler() {
    double last = Double.MAX_VALUE;
    for (double flow : new double[] {0, 0.2, 0.5, 1}) {
      HeatBody body = tooth(1.5, Face.perfused(flow, BLOOD_C));
      double peak =
          new LayeredColumn().run(body, warmWater(120), new double[] {2}, 1).peakProbesC()[0];
      assertTrue(peak < last - 0.02, flow + ": " + peak);
      last = peak;
    }
  }

  /**
   * Of a small spot's heat too; the quick column credits blood with less of it, on the safe side.
   */
  @Test
  void bloodTakesFromASmallSpotAndNoMoreThanInTheFullSolver() {
    double column = 0;
    double full = 0;
    for (int sign = -1; sign <= 1; sign += 2) {
      HeatBody body = tooth(3, Face.perfused(sign < 0 ? 1 : 0, BLOOD_C));
      HeatSchedule spot =
          new HeatSchedule(
              1,
              List.of(
                  new HeatStretch(
                      60, 3e4, 60, 0, Coolant.NONE, Coolant.NONE, new Coolant(2000, BLOOD_C), 0)));
      double[] quick = new LayeredColumn().run(body, spot, new double[] {2}, 10).probesC()[0];
      double[] slow =
          new AxisymmetricConduction(
                  body, spot, List.of(HeatProbe.onAxis(2)), HeatMesh.graded(20, 40, 0.5))
              .run(10)
              .probesC()[0];
      column += sign * quick[quick.length - 1];
      full += sign * slow[slow.length - 1];
    }
    assertTrue(column > full / 3 && column < full, column + " K against " + full);
  }
}
