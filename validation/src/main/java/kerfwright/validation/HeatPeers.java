package kerfwright.validation;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.physics.heat.field.HeatSolution;
import org.jspecify.annotations.Nullable;

/** Runs the peers as processes, when they are there. */
final class HeatPeers {
  private final Path folder;
  private final boolean python;
  private final @Nullable Path floor;

  HeatPeers(Path folder) throws IOException, InterruptedException {
    this.folder = folder;
    python =
        Files.exists(folder.resolve("heat_scipy.py"))
            && run(List.of("python3", "-c", "import numpy, scipy")) != null;
    Path binary = Files.createTempDirectory("heat-floor").resolve("floor");
    String source = folder.resolve("heat_adi.c").toString();
    String built =
        run(
            List.of(
                "gcc",
                "-O3",
                "-march=native",
                "-ffast-math",
                source,
                "-o",
                binary.toString(),
                "-lm"));
    floor = built == null ? null : binary;
  }

  Map<String, Object> found() {
    Map<String, Object> found = new LinkedHashMap<>();
    found.put("scipy", python ? "present" : "absent");
    found.put("cFloor", floor == null ? "absent" : "present");
    return found;
  }

  /** Seconds of set-up and stepping the peer reports. */
  double scipy(String script, String... arguments) throws IOException, InterruptedException {
    return python ? reported(run(python(script, arguments)), "solve_s") : Double.NaN;
  }

  /** Median seconds over repeats the C probe reports. */
  double floor(String cellsR, String cellsZ, String step, String repeats, String graded)
      throws IOException, InterruptedException {
    return floor == null
        ? Double.NaN
        : reported(
            run(List.of(floor.toString(), cellsR, cellsZ, step, "/dev/null", repeats, graded)),
            "solve_s_min");
  }

  double wholeProcess(String script, String... arguments) throws IOException, InterruptedException {
    return python ? timed(python(script, arguments)) : Double.NaN;
  }

  double coldJava(String mesh) throws IOException, InterruptedException {
    return timed(
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:+UseSerialGC",
            "-Xshare:auto",
            "-cp",
            System.getProperty("java.class.path"),
            HeatBench.class.getName(),
            "--cold",
            mesh));
  }

  /** Largest error at the two inner probes against the stored reference. */
  double errorK(HeatSolution solution) throws IOException {
    Path file = folder.resolve("heat_ref_H1.csv");
    if (!Files.exists(file)) {
      return Double.NaN;
    }
    List<String> lines = Files.readAllLines(file);
    double largest = 0;
    for (int i = 0; i < lines.size(); i++) {
      String[] cells = lines.get(i).split(",");
      for (int p = 0; p < 2; p++) {
        double difference = solution.temperaturesC(p)[i] - Double.parseDouble(cells[p + 1]);
        largest = Math.max(largest, Math.abs(difference));
      }
    }
    return largest;
  }

  private List<String> python(String script, String... arguments) {
    List<String> command = new ArrayList<>(List.of("python3", folder.resolve(script).toString()));
    command.addAll(List.of(arguments));
    return command;
  }

  private static double reported(@Nullable String output, String field) {
    Matcher matcher =
        Pattern.compile("\"" + field + "\": ?([0-9.eE+-]+)").matcher(output == null ? "" : output);
    return matcher.find() ? Double.parseDouble(matcher.group(1)) : Double.NaN;
  }

  private double timed(List<String> command) throws IOException, InterruptedException {
    long start = System.nanoTime();
    return run(command) == null ? Double.NaN : (System.nanoTime() - start) * 1e-9;
  }

  /** What the process printed, or nothing when it is not there or failed. */
  private @Nullable String run(List<String> command) throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("OMP_NUM_THREADS", "1");
    builder.environment().put("OPENBLAS_NUM_THREADS", "1");
    builder.environment().put("PYTHONDONTWRITEBYTECODE", "1");
    Process process;
    try {
      process = builder.start();
    } catch (IOException notThere) {
      return null;
    }
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return process.waitFor() == 0 ? output : null;
  }
}
