package kerfwright.physics.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.physics.heat.field.AxisymmetricConduction;
import kerfwright.physics.heat.field.HeatMesh;
import kerfwright.physics.heat.field.HeatProbe;
import kerfwright.physics.heat.field.HeatSeries;
import org.junit.jupiter.api.Test;

/** What must hold for any work on any tooth; seeded random cases. */
class HeatPropertyTest {
  private static final HeatMesh MESH = HeatMesh.graded(16, 32, 0.04);

  /** Fewer when planted faults are looked for, which runs these tests hundreds of times. */
  private static final int CASES = Integer.getInteger("heat.cases", 60);

  @Test
  void temperaturesStayFiniteAndTheBooksClose() {
    RandomCases cases = new RandomCases(101);
    for (int n = 0; n < 3 * CASES; n++) {
      RandomCases.Case one = cases.next();
      HeatSeries series = one.solve(MESH, 0.5);
      for (double value : series.probesC()[0]) {
        assertTrue(Double.isFinite(value), one.toString());
      }
      assertTrue(Double.isFinite(series.peakFloorC()), one.toString());
      double remainder = series.balance().relativeRemainder();
      assertTrue(remainder < 1e-9, remainder + " " + one);
    }
  }

  @Test
  void booksCloseForEveryKindOfFace() {
    List<Face> faces = List.of(Face.insulated(), Face.held(30), Face.washed(new Coolant(300, 20)));
    for (Face bottom : faces) {
      for (Face side : faces) {
        for (double spotMm : new double[] {1, 3}) {
          HeatBody body =
              new HeatBody(3, List.of(HeatCases.enamel(1), HeatCases.dentine(3)), 37, bottom, side);
          HeatSchedule schedule =
              new HeatSchedule(
                  spotMm, List.of(HeatStretch.strokes(9, 1e5, 2, 1, new Coolant(3000, 25), 0.1)));
          HeatSeries series =
              new AxisymmetricConduction(
                      body, schedule, List.of(HeatProbe.onAxis(2)), HeatMesh.graded(20, 30, 0.03))
                  .run(1);
          assertTrue(series.balance().relativeRemainder() < 1e-9);
        }
      }
    }
  }

  @Test
  void moreFluxIsHotterAndMoreWaterIsCooler() {
    RandomCases cases = new RandomCases(102);
    for (int n = 0; n < CASES; n++) {
      RandomCases.Case one = cases.next();
      HeatStretch w = one.work();
      HeatStretch hotter =
          new HeatStretch(
              w.durationS(),
              1.5 * w.fluxWPerM2(),
              w.onS(),
              w.offS(),
              w.spotWhileOn(),
              w.spotWhileOff(),
              w.outside(),
              w.feedMmPerS());
      HeatStretch wetter =
          new HeatStretch(
              w.durationS(),
              w.fluxWPerM2(),
              w.onS(),
              w.offS(),
              more(w.spotWhileOn()),
              more(w.spotWhileOff()),
              more(w.outside()),
              w.feedMmPerS());
      double[] base = one.solve(MESH, 1).probesC()[0];
      double[] hot = one.with(hotter).solve(MESH, 1).probesC()[0];
      double[] wet = one.with(wetter).solve(MESH, 1).probesC()[0];
      for (int i = 0; i < base.length; i++) {
        assertTrue(hot[i] >= base[i] - 1e-6, one.toString());
        assertTrue(wet[i] <= base[i] + 1e-6, one.toString());
      }
    }
  }

  private static Coolant more(Coolant coolant) {
    return new Coolant(1.5 * coolant.coefficientWPerM2K(), coolant.temperatureC());
  }

  @Test
  void thickerDentineKeepsThePulpCooler() {
    RandomCases cases = new RandomCases(103);
    for (int n = 0; n < CASES; n++) {
      double spot = cases.between(0.5, 3);
      double flux = 0.2 / (Math.PI * spot * spot * 1e-6);
      double before = Double.POSITIVE_INFINITY;
      for (double dentineMm : new double[] {1, 1.5, 2, 3}) {
        HeatBody body =
            HeatBody.of(
                6,
                List.of(HeatCases.enamel(1), HeatCases.dentine(dentineMm), HeatCases.dentine(3)),
                37,
                Face.held(37));
        HeatSchedule schedule =
            new HeatSchedule(
                spot, List.of(HeatStretch.strokes(20, flux, 2, 1, new Coolant(20, 25), 0)));
        double peak =
            new AxisymmetricConduction(
                    body, schedule, List.of(HeatProbe.onAxis(1 + dentineMm)), MESH)
                .run(1)
                .peakProbesC()[0];
        assertTrue(peak <= before + 1e-6);
        before = peak;
      }
    }
  }

  @Test
  void risesAddUpBecauseConductionIsLinear() {
    RandomCases cases = new RandomCases(104);
    for (int n = 0; n < CASES; n++) {
      RandomCases.Case one = cases.next();
      double[] base = one.solve(MESH, 1).probesC()[0];
      double[] none = one.with(flux(one.work(), 0)).solve(MESH, 1).probesC()[0];
      double[] triple =
          one.with(flux(one.work(), 3 * one.work().fluxWPerM2())).solve(MESH, 1).probesC()[0];
      for (int i = 0; i < base.length; i++) {
        assertEquals(3 * (base[i] - none[i]), triple[i] - none[i], 1e-8);
      }
    }
  }

  private static HeatStretch flux(HeatStretch w, double flux) {
    return new HeatStretch(
        w.durationS(),
        flux,
        w.onS(),
        w.offS(),
        w.spotWhileOn(),
        w.spotWhileOff(),
        w.outside(),
        w.feedMmPerS());
  }

  @Test
  void unitsScaleAsDimensionsDemand() {
    // Lengths x s, times x s^2, fluxes / s, coefficients / s, feed / s: the same temperatures.
    RandomCases cases = new RandomCases(105);
    for (int n = 0; n < CASES; n++) {
      RandomCases.Case one = cases.next();
      double s = cases.between(0.5, 2);
      List<HeatLayer> layers = new ArrayList<>();
      for (HeatLayer l : one.body().layers()) {
        layers.add(
            new HeatLayer(
                l.thicknessMm() * s,
                l.conductivityWPerMK(),
                l.densityKgPerM3(),
                l.specificHeatJPerKgK()));
      }
      List<HeatStretch> stretches = new ArrayList<>();
      for (HeatStretch w : one.schedule().stretches()) {
        stretches.add(
            new HeatStretch(
                w.durationS() * s * s,
                w.fluxWPerM2() / s,
                w.onS() * s * s,
                w.offS() * s * s,
                scaled(w.spotWhileOn(), s),
                scaled(w.spotWhileOff(), s),
                scaled(w.outside(), s),
                w.feedMmPerS() / s));
      }
      RandomCases.Case other =
          new RandomCases.Case(
              HeatBody.of(one.body().radiusMm() * s, layers, 37, Face.held(37)),
              new HeatSchedule(one.schedule().spotRadiusMm() * s, stretches),
              one.pulpMm() * s);
      HeatMesh scaledMesh = HeatMesh.graded(16, 32, 0.04 * s * s);
      double[] base = one.solve(MESH, 1).probesC()[0];
      double[] same = other.solve(scaledMesh, s * s).probesC()[0];
      for (int i = 0; i < Math.min(base.length, same.length); i++) {
        // Rounding may send the floor past a mesh line one step earlier.
        assertEquals(base[i], same[i], 1e-3 * Math.max(1, Math.abs(base[i] - 37)));
      }
    }
  }

  private static Coolant scaled(Coolant coolant, double s) {
    return new Coolant(coolant.coefficientWPerM2K() / s, coolant.temperatureC());
  }

  @Test
  void columnIsFiniteAndOrderedToo() {
    RandomCases cases = new RandomCases(106);
    LayeredColumn column = new LayeredColumn();
    for (int n = 0; n < 20 * CASES; n++) {
      RandomCases.Case one = cases.next();
      double[] depth = {one.pulpMm()};
      double[] base = column.run(one.body(), one.schedule(), depth, 1).probesC()[0];
      double[] hot =
          column.run(
                  one.body(),
                  one.with(flux(one.work(), 1.5 * one.work().fluxWPerM2())).schedule(),
                  depth,
                  1)
              .probesC()[0];
      for (int i = 0; i < base.length; i++) {
        assertTrue(Double.isFinite(base[i]), one.toString());
        assertTrue(hot[i] >= base[i] - 1e-6, one.toString());
      }
    }
  }
}
