package kerfwright.validation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import kerfwright.physics.heat.Coolant;
import kerfwright.physics.heat.Face;
import kerfwright.physics.heat.HeatBody;
import kerfwright.physics.heat.HeatLayer;
import kerfwright.physics.heat.HeatSchedule;
import kerfwright.physics.heat.HeatStretch;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.physics.heat.field.HeatMesh;
import kerfwright.physics.heat.field.HeatProbe;
import kerfwright.physics.heat.field.HeatProblem;
import kerfwright.physics.heat.field.HeatSeries;
import kerfwright.physics.heat.field.Resolution;

/** The work that is measured: strokes on a metal-ceramic crown, with and without a cavity. */
final class HeatBenchCases {
  private static volatile double kept;

  private HeatBenchCases() {}

  static HeatProblem crown(double feedMmPerS, Resolution resolution) {
    return variant(1.2, 4e5, feedMmPerS, resolution);
  }

  private static HeatProblem variant(
      double ceramicMm, double fluxWPerM2, double feedMmPerS, Resolution resolution) {
    HeatBody body =
        HeatBody.of(
            5,
            List.of(
                new HeatLayer(ceramicMm, 1, 2400, 850),
                new HeatLayer(0.4, 13, 8300, 450),
                new HeatLayer(0.1, 0.9, 2000, 1000),
                new HeatLayer(4.3, 0.58, 2140, 1260)),
            36,
            Face.held(36));
    HeatStretch strokes =
        HeatStretch.strokes(20, fluxWPerM2, 2, 1, new Coolant(2000, 25), feedMmPerS);
    return new HeatProblem(
        body,
        new HeatSchedule(0.8, List.of(strokes)),
        0.1,
        List.of(HeatProbe.onAxis(ceramicMm + 0.5), HeatProbe.onAxis(ceramicMm + 3.3)),
        resolution);
  }

  static void warm(HeatProblem problem, int times) {
    for (int i = 0; i < times; i++) {
      kept = problem.solve().temperaturesC(0)[0];
    }
  }

  /** Fastest of three, as the peers report theirs; seconds. */
  static double bestOfThree(HeatProblem problem) {
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 3; i++) {
      long start = System.nanoTime();
      kept = problem.solve().temperaturesC(0)[0];
      best = Math.min(best, (System.nanoTime() - start) * 1e-9);
    }
    return best;
  }

  static double differenceK(HeatSeries a, HeatSeries b, List<Integer> probes) {
    double largest = 0;
    for (int p : probes) {
      for (int i = 0; i < a.timesS().length; i++) {
        largest = Math.max(largest, Math.abs(a.probesC()[p][i] - b.probesC()[p][i]));
      }
    }
    return largest;
  }

  static Map<String, Object> batch(HeatMesh mesh, int rounds) throws InterruptedException {
    List<HeatProblem> problems = new ArrayList<>();
    for (int n = 0; n < 200; n++) {
      problems.add(variant(0.8 + 0.004 * n, 1e5 + 1500 * n, 0, Resolution.on(mesh)));
    }
    ExecutorService threads = Executors.newFixedThreadPool(2);
    try {
      Timings t = new Timings();
      for (int round = 0; round < rounds; round++) {
        long start = System.nanoTime();
        List<Future<Double>> running = new ArrayList<>();
        for (HeatProblem problem : problems) {
          running.add(threads.submit(() -> problem.solve().temperaturesC(0)[199]));
        }
        for (Future<Double> one : running) {
          kept = one.get();
        }
        t.add("ours", (System.nanoTime() - start) * 1e-9);
      }
      Map<String, Object> result = new LinkedHashMap<>();
      result.put("casesPerSecond", 200 / t.median("ours"));
      result.put("mesh", mesh.cellsR() + " x " + mesh.cellsZ() + " graded, 33 ms");
      return result;
    } catch (ExecutionException e) {
      throw new IllegalStateException("A variant failed", e);
    } finally {
      threads.shutdown();
    }
  }

  static Map<String, Object> column(int rounds) {
    HeatBody body = crown(0, Resolution.withinK(1)).body();
    Coolant water = new Coolant(3000, 25);
    HeatSchedule schedule =
        new HeatSchedule(1, List.of(HeatStretch.strokes(120, 1e5, 2, 1, water, 0.01)));
    LayeredColumn column = new LayeredColumn();
    Timings t = new Timings();
    for (int i = 0; i < 500 + 100 * rounds; i++) {
      long start = System.nanoTime();
      kept = column.run(body, schedule, new double[] {3}, 0.5).peakFloorC();
      if (i >= 500) {
        t.add("ours", (System.nanoTime() - start) * 1e-9);
      }
    }
    return t.summary();
  }
}
