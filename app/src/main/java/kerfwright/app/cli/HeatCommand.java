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
import kerfwright.app.words.Say;
import kerfwright.physics.heat.field.HeatProbe;
import kerfwright.physics.heat.field.HeatProblem;
import kerfwright.physics.heat.field.HeatSolution;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "heat", mixinStandardHelpOptions = true)
final class HeatCommand implements Callable<Integer> {
  private static final int ROWS = 20;
  private static final Duration LONGEST = Duration.ofSeconds(60);

  private final Terminal terminal;

  @Parameters(paramLabel = "PROBLEM.yaml", descriptionKey = "problem")
  private @Nullable Path file;

  @Option(names = "--json")
  private boolean json;

  HeatCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws BadInput {
    if (file == null) {
      throw new BadInput("heat", Message.of("command.heat-no-problem"));
    }
    HeatProblem problem = HeatFile.read(file);
    long begun = System.nanoTime();
    HeatSolution solution;
    try {
      solution =
          TimeLimit.within(
              LONGEST, file.toString(), Message.of("command.heat-shorter"), problem::solve);
    } catch (IllegalArgumentException outside) {
      throw new BadInput(
          file.toString(), Message.of("fault.plain", String.valueOf(outside.getMessage())));
    }
    double seconds = (System.nanoTime() - begun) * 1e-9;
    if (json) {
      terminal.printJson(JsonText.of(json(problem, solution, seconds)));
    } else {
      terminal.print(text(terminal.say(), problem, solution));
    }
    if (!solution.reached()) {
      terminal.tell("command.heat-not-reached");
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

  private static String text(Say say, HeatProblem problem, HeatSolution solution) {
    StringBuilder text = new StringBuilder(say.at("command.heat-time"));
    for (HeatProbe probe : problem.probes()) {
      text.append(
          say.figures(String.format(Locale.ROOT, "  r %.2f z %.2f", probe.rMm(), probe.zMm())));
    }
    text.append(say.at("command.heat-units")).append('\n');
    double[] times = solution.timesS();
    int every = Math.max(1, times.length / ROWS);
    for (int i = 0; i < times.length; i++) {
      if ((i + 1) % every == 0 || i == times.length - 1) {
        text.append(say.figures(String.format(Locale.ROOT, "%10.3f", times[i])));
        for (int p = 0; p < problem.probes().size(); p++) {
          text.append(
              say.figures(String.format(Locale.ROOT, "  %13.3f", solution.temperaturesC(p)[i])));
        }
        text.append('\n');
      }
    }
    text.append(
        say.at(
            "command.heat-mesh",
            solution.cellsR(),
            solution.cellsZ(),
            say.figures(String.format(Locale.ROOT, "%.3g", solution.stepS()))));
    double error = solution.errorEstimateK();
    text.append(
        Double.isNaN(error)
            ? say.at("command.heat-error-unknown")
            : say.at("command.heat-error", say.figures(String.format(Locale.ROOT, "%.2g", error))));
    text.append('\n');
    return text.toString();
  }
}
