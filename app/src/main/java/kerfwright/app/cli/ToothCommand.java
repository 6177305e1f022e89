package kerfwright.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.concurrent.Callable;
import kerfwright.app.input.BadInput;
import kerfwright.app.json.JsonText;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.catalogue.tooth.ToothNotation;
import kerfwright.catalogue.tooth.ToothReading;
import kerfwright.catalogue.tooth.ToothSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "tooth",
    mixinStandardHelpOptions = true,
    description = "Tells a tooth in FDI, Universal and Palmer notation.")
final class ToothCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "TOOTH", description = "A tooth in any of the three, e.g. 16 or UR6.")
  private String tooth = "";

  @Option(names = "--json", description = "Print one JSON object (tooth/1).")
  private boolean json;

  ToothCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws BadInput {
    ToothReading reading;
    try {
      reading = ToothNotation.parse(tooth);
    } catch (IllegalArgumentException none) {
      throw new BadInput("tooth", String.valueOf(none.getMessage()));
    }
    if (json) {
      terminal.printJson(JsonText.of(json(reading)));
      return Terminal.DONE;
    }
    StringBuilder text = new StringBuilder();
    for (ToothReading.Meaning meaning : reading.meanings()) {
      Tooth one = meaning.tooth();
      if (reading.ambiguous()) {
        text.append("Read as ").append(meaning.system().label()).append(":\n");
      }
      text.append(ToothNotation.name(one)).append('\n');
      text.append("  FDI        ").append(one.fdi()).append('\n');
      text.append("  Universal  ").append(ToothNotation.write(one, ToothSystem.UNIVERSAL));
      text.append("\n  Palmer     ").append(ToothNotation.write(one, ToothSystem.PALMER));
      text.append("  ").append(ToothNotation.palmerSign(one)).append('\n');
    }
    terminal.print(text.toString());
    if (reading.ambiguous()) {
      terminal.say("'" + tooth + "' means different teeth in different systems; files take FDI");
    }
    return Terminal.DONE;
  }

  private static ObjectNode json(ToothReading reading) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("contract", "tooth/1");
    json.put("typed", reading.text());
    json.put("ambiguous", reading.ambiguous());
    ArrayNode readings = json.putArray("readings");
    for (ToothReading.Meaning meaning : reading.meanings()) {
      Tooth one = meaning.tooth();
      ObjectNode node = readings.addObject();
      node.put("readAs", meaning.system().id());
      node.put("name", ToothNotation.name(one));
      node.put("fdi", one.fdi());
      node.put("universal", ToothNotation.write(one, ToothSystem.UNIVERSAL));
      node.put("palmer", ToothNotation.write(one, ToothSystem.PALMER));
      node.put("palmerSign", ToothNotation.palmerSign(one));
    }
    ArrayNode sources = json.putArray("sources");
    ToothNotation.SOURCES.forEach(source -> sources.add(source.key()));
    return json;
  }
}
