package kerfwright.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.concurrent.Callable;
import kerfwright.app.heatfile.HeatFile;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.TimeLimit;
import kerfwright.app.json.JsonText;
import kerfwright.physics.heat.field.HeatProbe;
import kerfwright.physics.heat.field.HeatProblem;
import kerfwright.physics.heat.field.HeatSolution;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "heat",
    mixinStandardHelpOptions = true,
    description = {
      "Computes temperatures at probes against time in a layered body.",
      "Coolant reaches the spot in pauses, and what lies outside it always."
    })
final class HeatCommand implements Callable<Integer> {
  private static final int ROWS = 20;
  private static final Duration LONGEST = Duration.ofSeconds(60);

  private final Terminal terminal;

  @Parameters(paramLabel = "PROBLEM.yaml", description = "The heat problem.")
  private @Nullable Path file;

  @Option(names = "--json", description = "Print one JSON object (heat/1).")
  private boolean json;

  HeatCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws BadInput {
    if (file == null) {
      throw new BadInput("heat", "a heat problem was expected");
    }
    HeatProblem problem = HeatFile.read(file);
    long begun = System.nanoTime();
    HeatSolution solution;
    try {
      solution =
          TimeLimit.within(
              LONGEST,
              file.toString(),
              "a coarser mesh, a longer step, fewer outputs or a larger error_k make it shorter",
              problem::solve);
    } catch (IllegalArgumentException outside) {
      throw new BadInput(file.toString(), String.valueOf(outside.getMessage()));
    }
    double seconds = (System.nanoTime() - begun) * 1e-9;
    if (json) {
      terminal.printJson(JsonText.of(json(problem, solution, seconds)));
    } else {
      terminal.print(text(problem, solution));
    }
    if (!solution.reached()) {
      terminal.say("the error asked for was not reached on the finest mesh; see errorEstimateK");
    }
    return Terminal.DONE;
  }

  private static ObjectNode json(HeatProblem problem, HeatSolution solution, double seconds) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("contract", "heat/1");
    json.set("timesS", numbers(solution.timesS()));
    ArrayNode probes = json.putArray("probes");
    for (int i = 0; i < problem.probes().size(); i++) {
      HeatProbe probe = problem.probes().get(i);
      ObjectNode one = probes.addObject();
      one.set("r", JsonText.number(probe.rMm()));
      one.set("z", JsonText.number(probe.zMm()));
      one.set("temperatureC", numbers(solution.temperaturesC(i)));
    }
    ObjectNode mesh = json.putObject("mesh");
    mesh.put("cellsR", solution.cellsR());
    mesh.put("cellsZ", solution.cellsZ());
    mesh.set("stepS", JsonText.number(solution.stepS()));
    double error = solution.errorEstimateK();
    json.set("errorEstimateK", Double.isNaN(error) ? null : JsonText.number(error));
    json.put("errorReached", solution.reached());
    json.set("solveSeconds", JsonText.number(seconds));
    return json;
  }

  private static ArrayNode numbers(double[] values) {
    ArrayNode all = JsonNodeFactory.instance.arrayNode();
    for (double value : values) {
      all.add(JsonText.number(value));
    }
    return all;
  }

  private static String text(HeatProblem problem, HeatSolution solution) {
    StringBuilder text = new StringBuilder("   time, s");
    for (HeatProbe probe : problem.probes()) {
      text.append(String.format(Locale.ROOT, "  r %.2f z %.2f", probe.rMm(), probe.zMm()));
    }
    text.append("   (mm; temperatures in degC)\n");
    double[] times = solution.timesS();
    int every = Math.max(1, times.length / ROWS);
    for (int i = 0; i < times.length; i++) {
      if ((i + 1) % every == 0 || i == times.length - 1) {
        text.append(String.format(Locale.ROOT, "%10.3f", times[i]));
        for (int p = 0; p < problem.probes().size(); p++) {
          text.append(String.format(Locale.ROOT, "  %13.3f", solution.temperaturesC(p)[i]));
        }
        text.append('\n');
      }
    }
    text.append(
        String.format(
            Locale.ROOT,
            "Mesh: %d x %d cells, step %.3g s.",
            solution.cellsR(),
            solution.cellsZ(),
            solution.stepS()));
    double error = solution.errorEstimateK();
    text.append(
        Double.isNaN(error)
            ? " The mesh was given: its error is not known.\n"
            : String.format(Locale.ROOT, " Estimated error %.2g K.\n", error));
    return text.toString();
  }
}
