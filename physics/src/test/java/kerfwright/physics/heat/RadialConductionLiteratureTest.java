package kerfwright.physics.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerfwright.physics.heat.field.RadialConduction;
import org.junit.jupiter.api.Test;

/** Steady cylinder, wide bore against the slab, stored heat, blood. */
class RadialConductionLiteratureTest {
  private static final double Q = 1e4;
  private static final HeatLayer WALL = HeatCases.dentine(2);

  private static List<HeatStretch> heated(double seconds) {
    return List.of(
        new HeatStretch(seconds, Q, seconds, 0, Coolant.NONE, Coolant.NONE, Coolant.NONE, 0));
  }

  @Test
  void steadyItIsTheLogarithmOfTheRadii() {
    // Carslaw and Jaeger 7.2: T_1 - T_2 = q r_1 ln(r_2 / r_1) / k, outside held at 30 degC
    HeatBody body = HeatBody.of(5, List.of(WALL), 30, Face.held(30));
    ColumnSeries series = new RadialConduction(0.5, body).run(heated(600), 0.5, 60);
    double wall = series.floorC()[9];
    double half = series.probesC()[0][9];
    assertEquals(Q * 0.5e-3 * Math.log(2.5 / 0.5) / HeatCases.K_DENTINE, wall - 30, 0.02);
    assertEquals(Q * 0.5e-3 * Math.log(2.5 / 1.0) / HeatCases.K_DENTINE, half - 30, 0.02);
  }

  @Test
  void washedOutsideItLosesThroughTheOuterRound() {
    // Carslaw and Jaeger 7.2: T_2 - T_0 = q r_1 / (h r_2), and the wall as above
    HeatBody body = HeatBody.of(5, List.of(WALL), 30, Face.washed(new Coolant(500, 30)));
    ColumnSeries series = new RadialConduction(0.5, body).run(heated(600), 2, 60);
    double outside = Q * 0.5e-3 / (500 * 2.5e-3);
    assertEquals(outside, series.probesC()[0][9] - 30, 0.01);
    double through = Q * 0.5e-3 * Math.log(2.5 / 0.5) / HeatCases.K_DENTINE;
    assertEquals(outside + through, series.floorC()[9] - 30, 0.03);
  }

  @Test
  void aWideBoreIsASlab() {
    HeatBody body = HeatBody.of(5, List.of(WALL), 0, Face.insulated());
    ColumnSeries round = new RadialConduction(2000, body).run(heated(20), 2, 1);
    // 0.05 K: first order in steps of 0.1 s. Carslaw and Jaeger 3.8, table A5(b): 4.2315 K after 5
    // s, 14.0523 K after 10 s
    assertEquals(4.2315, round.probesC()[0][4], 0.05);
    assertEquals(14.0523, round.probesC()[0][9], 0.05);
  }

  @Test
  void allHeatIsKeptWhereNoneLeaves() {
    HeatBody body = HeatBody.of(5, List.of(WALL, HeatCases.enamel(0.3)), 20, Face.insulated());
    RadialConduction wall = new RadialConduction(0.6, body);
    double before = wall.heatJPerM();
    wall.run(heated(30), 1, 1);
    double brought = Q * 2 * Math.PI * 0.6e-3 * 30;
    assertEquals(brought, wall.heatJPerM() - before, 1e-9 * brought);
  }

  @Test
  void bloodOutsideKeepsTheRootCooler() {
    List<HeatLayer> layers = List.of(WALL, HeatCases.enamel(0.2), HeatCases.dentine(2));
    double last = Double.MAX_VALUE;
    for (double flow : new double[] {0, 0.3, 1}) {
      HeatBody body = HeatBody.of(5, layers, 37, Face.perfused(flow, 37));
      double peak = new RadialConduction(0.6, body).run(heated(40), 2, 1).peakProbesC()[0];
      assertTrue(peak < last - 0.01, flow + ": " + peak);
      last = peak;
    }
  }

  @Test
  void aThickerWallKeepsTheOutsideCooler() {
    double last = Double.MAX_VALUE;
    for (double mm : new double[] {0.5, 1, 2, 3}) {
      HeatBody body =
          HeatBody.of(5, List.of(HeatCases.dentine(mm)), 37, Face.washed(new Coolant(20, 37)));
      double peak = new RadialConduction(0.6, body).run(heated(20), mm, 1).peakProbesC()[0];
      assertTrue(peak < last, mm + " mm: " + peak);
      last = peak;
    }
  }
}
