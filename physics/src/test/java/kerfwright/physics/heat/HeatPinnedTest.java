package kerfwright.physics.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.physics.heat.field.AxisymmetricConduction;
import kerfwright.physics.heat.field.EnergyBalance;
import kerfwright.physics.heat.field.HeatMesh;
import kerfwright.physics.heat.field.HeatProbe;
import kerfwright.physics.heat.field.HeatProblem;
import kerfwright.physics.heat.field.HeatSeries;
import kerfwright.physics.heat.field.HeatSolution;
import kerfwright.physics.heat.field.RadialConduction;
import kerfwright.physics.heat.field.Resolution;
import org.junit.jupiter.api.Test;

/**
 * What the solvers gave before, to nine digits: no evidence that it is right, but any change of it
 * shows. Written anew with {@code -Dpinned.write=true}; read the difference before it is committed.
 */
class HeatPinnedTest {
  private static final String FILE = "heat-pinned.txt";
  private static final HeatLayer CERAMIC = new HeatLayer(1.1, 1.4, 2400, 1100);
  private static final HeatLayer METAL = new HeatLayer(0.4, 13, 8300, 430);
  private static final HeatLayer DENTINE = new HeatLayer(1.9, 0.6, 2100, 1300);
  private static final Coolant SPRAY = new Coolant(3000, 24);
  private static final Coolant UNDER = new Coolant(1500, 22);
  private static final Coolant AIR = new Coolant(15, 23);

  private final List<String> lines = new ArrayList<>();

  @Test
  void everyFigureIsAsItWas() throws IOException {
    columnThroughThreeLayers();
    columnWithWashedBottom();
    columnWithShortStrokes();
    cavityInEvenMesh();
    cavityInGradedMesh();
    dryBodyWithHeldSide();
    chosenMesh();
    roundACanal();
    String now = String.join("\n", lines) + "\n";
    if (Boolean.getBoolean("pinned.write")) {
      Files.writeString(Path.of("src/test/resources/kerfwright/physics/heat", FILE), now);
      return;
    }
    try (InputStream in = HeatPinnedTest.class.getResourceAsStream(FILE)) {
      byte[] kept = Objects.requireNonNull(in, FILE).readAllBytes();
      String before = new String(kept, StandardCharsets.UTF_8);
      assertEquals(before, now, "figures moved");
    }
  }

  private void say(String what, double... values) {
    StringBuilder line = new StringBuilder(what);
    for (double value : values) {
      line.append(String.format(Locale.ROOT, " %.9e", value));
    }
    lines.add(line.toString());
  }

  /** Every value counts, each with another weight, so that nothing cancels. */
  private static double weighed(double[] values) {
    double sum = 0;
    for (int i = 0; i < values.length; i++) {
      sum += values[i] * (1 + (i % 7) / 10.0);
    }
    return sum;
  }

  private void column(String name, HeatBody body, HeatSchedule work, double... depthsMm) {
    ColumnSeries series = new LayeredColumn().run(body, work, depthsMm, 0.37);
    say(name + ".steps", series.steps(), series.timesS().length, weighed(series.timesS()));
    for (int i = 0; i < depthsMm.length; i++) {
      double[] probe = series.probesC()[i];
      say(name + ".probe" + i, weighed(probe), probe[0], probe[probe.length / 2]);
    }
    say(name + ".floor", weighed(series.floorC()), weighed(series.floorDepthMm()));
    say(name + ".peaks", series.peakProbesC());
    say(name + ".peak", series.peakFloorC());
  }

  private void columnThroughThreeLayers() {
    HeatBody body = HeatBody.of(5, List.of(CERAMIC, METAL, DENTINE), 36, Face.held(36.5));
    HeatSchedule work =
        new HeatSchedule(
            1.3,
            List.of(
                new HeatStretch(9.3, 2.1e5, 2, 0.8, UNDER, SPRAY, SPRAY, 0.11),
                new HeatStretch(8.1, 1.4e5, 0.9, 0.4, Coolant.NONE, AIR, AIR, 0.13),
                HeatStretch.pause(7, AIR)));
    column("column-layers", body, work, 0.6, 1.5, 3.4);
  }

  private void columnWithWashedBottom() {
    HeatBody body = HeatBody.of(3, List.of(METAL, DENTINE), 30, Face.washed(new Coolant(400, 33)));
    HeatSchedule work =
        new HeatSchedule(
            0.7, List.of(new HeatStretch(6.2, 8e4, 3.1, 0, Coolant.NONE, AIR, SPRAY, 0)));
    column("column-washed", body, work, 0.2, 2.3);
  }

  private void columnWithShortStrokes() {
    HeatBody body = HeatBody.of(2, List.of(CERAMIC, DENTINE), 35, Face.insulated());
    HeatSchedule work =
        new HeatSchedule(
            1.9,
            List.of(
                new HeatStretch(4.1, 9e4, 0.35, 0.5, UNDER, SPRAY, AIR, 0.4),
                new HeatStretch(2.5, 0, 0, 0.7, UNDER, SPRAY, SPRAY, 0)));
    column("column-short", body, work, 0.3, 2.9);
  }

  private void axisymmetric(String name, HeatSeries series) {
    for (int i = 0; i < series.probesC().length; i++) {
      say(name + ".probe" + i, weighed(series.probesC()[i]), series.cutAwayS()[i]);
    }
    say(name + ".floor", weighed(series.floorC()), weighed(series.floorDepthMm()));
    say(name + ".peaks", series.peakProbesC());
    say(name + ".peak", series.peakFloorC());
    EnergyBalance heat = series.balance();
    say(
        name + ".heat",
        heat.storedJ(),
        heat.cutJ(),
        heat.washedJ(),
        heat.facesJ(),
        heat.removedJ(),
        heat.turnoverJ());
    say(name + ".mesh", series.mesh().cellsR(), series.mesh().cellsZ(), series.mesh().stepS());
  }

  private static final List<HeatProbe> PROBES =
      List.of(
          HeatProbe.onAxis(0.45),
          HeatProbe.onAxis(2.6),
          new HeatProbe(1.1, 1.3),
          new HeatProbe(2.4, 0.2));

  private static HeatSchedule cavity() {
    return new HeatSchedule(
        1.2,
        List.of(
            new HeatStretch(3.2, 1.8e5, 0.8, 0.3, UNDER, SPRAY, SPRAY, 0.21),
            new HeatStretch(2.6, 1.1e5, 1.1, 0.2, Coolant.NONE, AIR, SPRAY, 0.35),
            HeatStretch.pause(1.5, AIR)));
  }

  private void cavityInEvenMesh() {
    HeatBody body =
        new HeatBody(3, List.of(CERAMIC, METAL, DENTINE), 34, Face.held(36), Face.washed(SPRAY));
    axisymmetric(
        "cavity-even",
        new AxisymmetricConduction(body, cavity(), PROBES, HeatMesh.even(15, 22, 0.05)).run(0.23));
  }

  private void cavityInGradedMesh() {
    HeatBody body =
        HeatBody.of(4, List.of(CERAMIC, METAL, DENTINE), 34, Face.washed(new Coolant(250, 37)));
    axisymmetric(
        "cavity-graded",
        new AxisymmetricConduction(body, cavity(), PROBES, HeatMesh.graded(17, 25, 0.07))
            .run(0.31));
  }

  private void dryBodyWithHeldSide() {
    HeatBody body =
        new HeatBody(2.5, List.of(DENTINE, CERAMIC), 20, Face.insulated(), Face.held(25));
    HeatSchedule work =
        new HeatSchedule(2.5, List.of(HeatStretch.strokes(3, 5e4, 0.6, 0.15, AIR, 0.05)));
    axisymmetric(
        "dry-held",
        new AxisymmetricConduction(
                body,
                work,
                List.of(HeatProbe.onAxis(0.05), new HeatProbe(2.1, 1.4)),
                HeatMesh.even(9, 14, 0.04))
            .run(0.2));
  }

  private void chosenMesh() {
    HeatBody body = HeatBody.of(4, List.of(CERAMIC, DENTINE), 36, Face.held(36));
    HeatSchedule work =
        new HeatSchedule(1, List.of(new HeatStretch(1.5, 6e4, 0.9, 0.3, UNDER, SPRAY, SPRAY, 0.1)));
    HeatSolution solution =
        new HeatProblem(body, work, 0.25, List.of(HeatProbe.onAxis(1)), Resolution.withinK(0.05))
            .solve();
    say("chosen.error", solution.errorEstimateK());
    axisymmetric("chosen", solution.series());
  }

  private void roundACanal() {
    HeatLayer cementum = new HeatLayer(0.13, 0.5, 2000, 1200);
    HeatLayer bone = new HeatLayer(2.3, 0.5, 1900, 1400);
    List<HeatStretch> work =
        List.of(
            new HeatStretch(5.3, 4e4, 1.3, 0.6, new Coolant(60, 24), SPRAY, AIR, 0),
            new HeatStretch(3.1, 7e4, 0.8, 0, Coolant.NONE, AIR, AIR, 0),
            HeatStretch.pause(230, AIR));
    bore("bore-blood", 0.55, List.of(DENTINE, cementum, bone), Face.perfused(0.4, 36), 2.0, work);
    bore("bore-hot", 0.3, List.of(DENTINE, bone), Face.perfused(0.9, 37, 30), 1.93, work);
    bore("bore-held", 0.8, List.of(DENTINE, cementum), Face.held(35), 0, work);
    bore("bore-washed", 0.45, List.of(DENTINE), Face.washed(new Coolant(150, 33)), 1.9, work);
  }

  private void bore(
      String name,
      double radiusMm,
      List<HeatLayer> layers,
      Face outside,
      double depthMm,
      List<HeatStretch> work) {
    HeatBody body = HeatBody.of(5, layers, 34, outside);
    RadialConduction wall = new RadialConduction(radiusMm, body);
    ColumnSeries series = wall.run(work, depthMm, 0.41);
    say(name + ".steps", series.steps(), series.timesS().length, weighed(series.timesS()));
    say(name + ".probe", weighed(series.probesC()[0]), series.peakProbesC()[0]);
    say(name + ".wall", weighed(series.floorC()), series.peakFloorC(), wall.heatJPerM());
  }
}
