package kerfwright.validation;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerfwright.physics.heat.field.HeatMesh;
import kerfwright.physics.heat.field.HeatProblem;
import kerfwright.physics.heat.field.HeatSolution;
import kerfwright.physics.heat.field.Resolution;

/**
 * Measures the heat solver beside general-purpose peers, in alternating rounds on one machine, and
 * prints medians and ratios as JSON.
 *
 * <p>Use: {@code HeatBench PEERS [ROUNDS]}, where PEERS is the folder with heat_scipy.py,
 * heat_scipy_ablate.py, heat_adi.c and heat_ref_H1.csv. What is absent is said to be absent. Quote
 * ratios, never seconds; otherLoad (runnable processes at the start) tells how quiet the machine
 * was.
 */
public final class HeatBench {
  private static final HeatMesh FIXED = HeatMesh.even(100, 120, 0.01);
  private static final HeatMesh CHOSEN = HeatMesh.graded(40, 50, 1 / 30.0);
  private static final HeatMesh CAVITY = HeatMesh.graded(92, 184, 1 / 60.0);

  private HeatBench() {}

  public static void main(String[] arguments) throws IOException, InterruptedException {
    if (arguments.length > 0 && arguments[0].equals("--cold")) {
      HeatSolution once =
          HeatBenchCases.crown(0, Resolution.on(arguments[1].equals("fixed") ? FIXED : CHOSEN))
              .solve();
      System.out.println(once.temperaturesC(0)[199]);
      return;
    }
    if (arguments.length == 0) {
      System.err.println("Use: HeatBench PEERS [ROUNDS]");
      System.exit(2);
    }
    int rounds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 5;
    HeatPeers peers = new HeatPeers(Path.of(arguments[0]).toAbsolutePath());
    Map<String, Object> report = new LinkedHashMap<>();
    report.put("command", "HeatBench PEERS " + rounds);
    report.put("java", System.getProperty("java.version"));
    report.put("processors", Runtime.getRuntime().availableProcessors());
    report.put("otherLoad", ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    report.put("rounds", rounds);
    report.put("peers", peers.found());
    report.put("h1Fixed", h1Fixed(peers, rounds));
    report.put("h1ToATwentiethOfAKelvin", h1ToError(peers, rounds));
    report.put("coldProcess", cold(peers, rounds));
    report.put("h2Cavity", cavity(peers, rounds));
    report.put("batchOf200OnTwoThreads", HeatBenchCases.batch(CHOSEN, rounds));
    report.put("column120s", HeatBenchCases.column(rounds));
    System.out.println(Json.text(report));
  }

  private static Map<String, Object> h1Fixed(HeatPeers peers, int rounds)
      throws IOException, InterruptedException {
    Timings t = new Timings();
    HeatProblem problem = HeatBenchCases.crown(0, Resolution.on(FIXED));
    HeatBenchCases.warm(problem, 15);
    for (int round = 0; round < rounds; round++) {
      t.add("ours", HeatBenchCases.bestOfThree(problem));
      t.add("cFloor", peers.floor("100", "120", "0.01", "3", "0"));
      t.add("scipy", peers.scipy("heat_scipy.py", "100", "120", "0.01"));
    }
    Map<String, Object> result = t.summary();
    result.put("mesh", "100 x 120, 10 ms, 2000 steps");
    result.put("errorK", peers.errorK(problem.solve()));
    return result;
  }

  private static Map<String, Object> h1ToError(HeatPeers peers, int rounds)
      throws IOException, InterruptedException {
    Timings t = new Timings();
    HeatProblem known = HeatBenchCases.crown(0, Resolution.on(CHOSEN));
    HeatProblem controlled = HeatBenchCases.crown(0, Resolution.withinK(0.05));
    HeatBenchCases.warm(known, 150);
    HeatBenchCases.warm(controlled, 80);
    for (int round = 0; round < rounds; round++) {
      t.add("ours", HeatBenchCases.bestOfThree(known));
      t.add("oursChoosingTheMeshItself", HeatBenchCases.bestOfThree(controlled));
      t.add("cFloor", peers.floor("50", "60", "0.02", "5", "1"));
      t.add("scipy", peers.scipy("heat_scipy.py", "50", "60", "0.02", "--graded"));
    }
    Map<String, Object> result = t.summary();
    result.put("mesh", "graded 40 x 50, 33 ms; peers graded 50 x 60, 20 ms");
    result.put("errorK", peers.errorK(known.solve()));
    HeatSolution solution = controlled.solve();
    result.put("errorKChoosingTheMeshItself", peers.errorK(solution));
    result.put("meshItChose", solution.cellsR() + " x " + solution.cellsZ());
    return result;
  }

  private static Map<String, Object> cold(HeatPeers peers, int rounds)
      throws IOException, InterruptedException {
    Timings t = new Timings();
    for (int round = 0; round < rounds; round++) {
      t.add("ours", peers.coldJava("fixed"));
      t.add("oursOnTheChosenMesh", peers.coldJava("chosen"));
      t.add("scipy", peers.wholeProcess("heat_scipy.py", "100", "120", "0.01"));
    }
    Map<String, Object> result = t.summary();
    result.put("mesh", "100 x 120, 10 ms, both; process start included");
    return result;
  }

  private static Map<String, Object> cavity(HeatPeers peers, int rounds)
      throws IOException, InterruptedException {
    Timings t = new Timings();
    HeatProblem problem = HeatBenchCases.crown(0.05, Resolution.on(CAVITY));
    HeatBenchCases.warm(problem, 10);
    for (int round = 0; round < rounds; round++) {
      t.add("ours", HeatBenchCases.bestOfThree(problem));
      t.add("scipy", peers.scipy("heat_scipy_ablate.py", "100", "120", "0.01"));
    }
    Map<String, Object> result = t.summary();
    result.put("mesh", "ours graded 92 x 184, 17 ms, partial cells; peer 100 x 120, whole rows");
    HeatSolution fine =
        HeatBenchCases.crown(0.05, Resolution.on(HeatMesh.graded(320, 800, 0.01))).solve();
    result.put(
        "differenceFrom320x800K",
        HeatBenchCases.differenceK(problem.solve().series(), fine.series(), List.of(0, 1)));
    return result;
  }
}
