package kerfwright.physics.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.physics.heat.field.AxisymmetricConduction;
import kerfwright.physics.heat.field.HeatMesh;
import kerfwright.physics.heat.field.HeatProbe;
import kerfwright.physics.heat.field.HeatSeries;
import org.junit.jupiter.api.Test;

class HeatInputTest {
  private static final Coolant WATER = new Coolant(2000, 25);

  private static void refused(String part, org.junit.jupiter.api.function.Executable what) {
    String message = assertThrows(IllegalArgumentException.class, what).getMessage();
    assertTrue(message.contains(part), message);
  }

  @Test
  void faultsNameQuantityAndValue() {
    refused("Layer thickness", () -> new HeatLayer(0, 1, 1, 1));
    refused("conductivity", () -> new HeatLayer(1, Double.NaN, 1, 1));
    refused("coefficient", () -> new Coolant(-1, 25));
    refused("Duration", () -> HeatStretch.strokes(-1, 0, 1, 1, WATER, 0));
    refused("stroke or a pause", () -> HeatStretch.strokes(1, 0, 0, 0, WATER, 0));
    refused("100000 strokes", () -> HeatStretch.strokes(1000, 0, 1e-6, 1e-6, WATER, 0));
    refused("at least one layer", () -> HeatBody.of(1, List.of(), 37, Face.insulated()));
    refused("at least one stretch", () -> new HeatSchedule(1, List.of()));
    refused("Radius of a probe", () -> new HeatProbe(-1, 0));
    refused("2 x 4", () -> HeatMesh.even(1, 10, 0.1));
    refused("4000000", () -> HeatMesh.even(10_000, 10_000, 0.1));
  }

  @Test
  void aProbeOutsideAndACutThroughTheBodyAreRefused() {
    HeatBody body = HeatBody.of(2, List.of(HeatCases.dentine(2)), 37, Face.held(37));
    HeatSchedule shallow =
        new HeatSchedule(1, List.of(HeatStretch.strokes(1, 1e5, 1, 0, WATER, 0)));
    HeatSchedule through =
        new HeatSchedule(1, List.of(HeatStretch.strokes(30, 1e5, 1, 0, WATER, 0.1)));
    HeatMesh mesh = HeatMesh.even(10, 10, 0.1);
    refused(
        "outside the body",
        () -> new AxisymmetricConduction(body, shallow, List.of(HeatProbe.onAxis(3)), mesh));
    refused(
        "The cut goes down",
        () -> new AxisymmetricConduction(body, through, List.of(HeatProbe.onAxis(1)), mesh));
    refused(
        "The cut goes down", () -> new LayeredColumn().run(body, through, new double[] {1}, 0.1));
    refused("outside 0 to", () -> new LayeredColumn().run(body, shallow, new double[] {3}, 0.1));
  }

  @Test
  void cuttingTimeCountsStrokesOnly() {
    assertEquals(14, HeatStretch.strokes(20, 1, 2, 1, WATER, 0).cuttingS(), 1e-12);
    assertEquals(20, HeatStretch.strokes(20, 1, 2, 0, WATER, 0).cuttingS(), 1e-12);
    assertEquals(0, HeatStretch.pause(5, WATER).cuttingS(), 1e-12);
    assertEquals(0.7, HeatStretch.strokes(20, 1, 2, 1, WATER, 0.05).cutDepthMm(), 1e-12);
  }

  @Test
  void theSameProblemGivesTheSameAnswerAndAWorkspaceMayBeUsedAgain() {
    AxisymmetricConduction solver =
        new AxisymmetricConduction(
            HeatCases.crown(),
            HeatCases.strokesOnCrown(0.05),
            HeatCases.CROWN_PROBES,
            HeatMesh.graded(20, 30, 0.05));
    double[] first = solver.run(1).probesC()[0];
    double[] second = solver.run(1).probesC()[0];
    org.junit.jupiter.api.Assertions.assertArrayEquals(first, second);
  }

  @Test
  void floorGoesOnWhereItStoodInTheNextStretch() {
    HeatStretch cut = HeatStretch.strokes(3, 1e5, 2, 1, WATER, 0.1);
    HeatSchedule schedule = new HeatSchedule(1, List.of(cut, HeatStretch.pause(2, WATER), cut));
    HeatBody body = HeatBody.of(4, List.of(HeatCases.dentine(4)), 37, Face.held(37));
    HeatSeries series =
        new AxisymmetricConduction(
                body, schedule, List.of(HeatProbe.onAxis(0.3)), HeatMesh.graded(20, 40, 0.02))
            .run(1);
    assertEquals(8, series.timesS().length);
    assertEquals(0.2, series.floorDepthMm()[4], 1e-9);
    assertEquals(0.4, series.floorDepthMm()[7], 1e-9);
    assertEquals(6, series.cutAwayS()[0], 0.1);
    ColumnSeries column = new LayeredColumn().run(body, schedule, new double[] {2}, 1);
    assertEquals(0.4, column.floorDepthMm()[7], 1e-9);
  }
}
