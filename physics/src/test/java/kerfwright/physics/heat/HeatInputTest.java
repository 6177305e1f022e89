package kerfwright.physics.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.physics.heat.field.AxisymmetricConduction;
import kerfwright.physics.heat.field.HeatMesh;
import kerfwright.physics.heat.field.HeatProbe;
import kerfwright.physics.heat.field.HeatProblem;
import kerfwright.physics.heat.field.HeatSeries;
import kerfwright.physics.heat.field.RadialConduction;
import kerfwright.physics.heat.field.Resolution;
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

  /** Each figure on its own, what it must not be, and the word its fault names it by. */
  @Test
  void everyFigureIsLookedAt() {
    Coolant none = Coolant.NONE;
    double nan = Double.NaN;
    for (double bad : new double[] {nan, Double.POSITIVE_INFINITY, -1, 0}) {
      refused("thickness", () -> new HeatLayer(bad, 1, 1, 1));
      refused("conductivity", () -> new HeatLayer(1, bad, 1, 1));
      refused("Density", () -> new HeatLayer(1, 1, bad, 1));
      refused("Specific heat", () -> new HeatLayer(1, 1, 1, bad));
      refused("Duration", () -> new HeatStretch(bad, 1, 1, 1, none, none, none, 0));
      refused("Radius of the body", () -> HeatBody.of(bad, List.of(LAYER), 37, Face.insulated()));
      refused("Radius of the spot", () -> new HeatSchedule(bad, List.of(PAUSE)));
      refused("Time step", () -> HeatMesh.even(10, 10, bad));
      refused("Allowed error", () -> Resolution.withinK(bad));
      refused("Flux limit", () -> new WettedContact(bad, 0.1));
      refused("Share of the spray", () -> new WettedContact(1, bad));
      refused("Area", () -> new WettedContact(1, 0.1).wettedShare(1, bad, 50, 25));
      refused("source", () -> MovingHeatSource.peakRiseK(1, bad, 0.1, 1, 1e-6));
      refused("bore", () -> new RadialConduction(bad, BODY));
      refused("Output interval", () -> new RadialConduction(1, BODY).run(WORK, 0, bad));
      refused("Output interval", () -> new LayeredColumn().run(BODY, SCHEDULE, ON_TOP, bad));
      refused(
          "Output interval",
          () ->
              new HeatProblem(
                  BODY, SCHEDULE, bad, List.of(HeatProbe.onAxis(0)), Resolution.withinK(0.1)));
    }
    for (double bad : new double[] {nan, Double.POSITIVE_INFINITY, -1e-9}) {
      refused("stroke", () -> new HeatStretch(1, 1, bad, 1, none, none, none, 0));
      refused("pause", () -> new HeatStretch(1, 1, 1, bad, none, none, none, 0));
      refused("Feed", () -> new HeatStretch(1, 1, 1, 1, none, none, none, bad));
      refused("coefficient", () -> new Coolant(bad, 25));
      refused("Radius of a probe", () -> new HeatProbe(bad, 0));
      refused("Depth of a probe", () -> new HeatProbe(0, bad));
      refused("Blood sink", () -> new Face.Perfused(bad, 37, 0));
      refused("Conductance", () -> new Face.Perfused(1, 37, bad));
      refused("Speed", () -> MovingHeatSource.peakRiseK(1, 1e-3, bad, 1, 1e-6));
    }
    refused("flux", () -> new HeatStretch(1, nan, 1, 1, none, none, none, 0));
    refused("Coolant temperature", () -> new Coolant(1, nan));
    refused("Initial", () -> HeatBody.of(1, List.of(LAYER), nan, Face.insulated()));
    refused("Temperature of a face", () -> Face.held(nan));
    refused("blood", () -> new Face.Perfused(1, nan, 0));
    refused("at least one probe", () -> problem(List.of()));
    refused("outside the layers", () -> new RadialConduction(1, BODY).run(WORK, 2.001, 1));
    refused("outside the layers", () -> new RadialConduction(1, BODY).run(WORK, -0.001, 1));
  }

  /** The last figure that is still allowed is taken. */
  @Test
  void theEdgeItselfIsAllowed() {
    assertEquals(0, new Coolant(0, -5).coefficientWPerM2K());
    assertEquals(0, new HeatProbe(0, 0).rMm());
    assertEquals(0, new Face.Perfused(0, 37, 0).sinkWPerM3K());
    assertEquals(0, new HeatStretch(1, 0, 0, 1, WATER, WATER, WATER, 0).cuttingS());
    assertEquals(
        1, new HeatStretch(100_000, 0, 0.5, 0.5, WATER, WATER, WATER, 0).onS() * 2, "strokes");
    assertEquals(2, HeatMesh.even(2, 4, 0.1).cellsR());
    assertEquals(2000, HeatMesh.even(2000, 2000, 0.1).cellsZ());
    refused("2 x 4", () -> HeatMesh.even(2, 3, 0.1));
    refused("4000000", () -> HeatMesh.even(2001, 2000, 0.1));
    assertEquals(0, new WettedContact(1e6, 0.1).wettedShare(1, 1e-6, 0, 25));
    assertTrue(new WettedContact(1e6, 0.1).wettedShare(1e-6, 1e-6, 1e-9, 25) >= 0);
    assertTrue(new RadialConduction(1, BODY).run(WORK, 2, 1).probesC()[0][0] < 37);
    assertTrue(new RadialConduction(1, BODY).run(WORK, 0, 1).probesC()[0][0] < 37);
  }

  private static final HeatLayer LAYER = HeatCases.dentine(2);
  private static final HeatBody BODY = HeatBody.of(2, List.of(LAYER), 37, Face.insulated());
  private static final HeatStretch PAUSE = HeatStretch.pause(1, WATER);
  private static final List<HeatStretch> WORK = List.of(PAUSE);
  private static final HeatSchedule SCHEDULE = new HeatSchedule(1, WORK);
  private static final double[] ON_TOP = {0};

  private static HeatProblem problem(List<HeatProbe> probes) {
    return new HeatProblem(BODY, SCHEDULE, 1, probes, Resolution.withinK(0.1));
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
