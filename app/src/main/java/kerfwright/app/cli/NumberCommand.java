package kerfwright.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import kerfwright.app.input.BadInput;
import kerfwright.app.json.JsonText;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.number.IsoNumber;
import kerfwright.catalogue.number.MalformedNumberException;
import kerfwright.catalogue.number.NumberExplanation;
import kerfwright.catalogue.number.NumberGroup;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "number",
    mixinStandardHelpOptions = true,
    description = {
      "Explains an ISO 6360 number of 15, 18 or 9 digits, group by group.",
      "With --us, tells a US bur size and the ISO 6360 numbers it may stand for."
    })
final class NumberCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(
      paramLabel = "NUMBER",
      arity = "0..*",
      description = "The number, e.g. \"806 314 001 524 016\".")
  private List<String> number = List.of();

  @Option(names = "--us", paramLabel = "SIZE", description = "A US bur size, e.g. 330.")
  private @Nullable String us;

  @Option(names = "--json", description = "Print one JSON object (number/1).")
  private boolean json;

  NumberCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws BadInput {
    if (us != null && number.isEmpty()) {
      UsSizeAnswer answer = UsSizeAnswer.of(us);
      if (json) {
        terminal.printJson(JsonText.of(answer.json()));
      } else {
        terminal.print(answer.text());
      }
      return Terminal.DONE;
    }
    if (us != null || number.isEmpty()) {
      throw new BadInput("number", "either a number or --us with a size was expected");
    }
    NumberExplanation explained;
    try {
      explained = IsoNumber.parse(String.join(" ", number)).explain();
    } catch (MalformedNumberException malformed) {
      throw new BadInput("number", String.valueOf(malformed.getMessage()));
    }
    if (json) {
      terminal.printJson(JsonText.of(json(explained)));
    } else {
      terminal.print(text(explained));
    }
    return Terminal.DONE;
  }

  private static String text(NumberExplanation explained) {
    StringBuilder text = new StringBuilder("ISO " + explained.number().encode() + "\n");
    for (NumberGroup group : explained.groups()) {
      text.append("  ").append(group.digits()).append("  ").append(group.role().label());
      text.append(": ").append(group.meaning()).append(standing(group.provenance())).append('\n');
    }
    return text.toString();
  }

  private static String standing(@Nullable Provenance known) {
    if (known == null) {
      return "";
    }
    String keys = known.sources().stream().map(SourceKey::key).collect(Collectors.joining(", "));
    return " [" + known.inWords() + (keys.isEmpty() ? "" : "; " + keys) + "]";
  }

  private static ObjectNode json(NumberExplanation explained) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("contract", "number/1");
    json.put("number", explained.number().encode());
    json.put("rootCanal", explained.rootCanal());
    ArrayNode groups = json.putArray("groups");
    for (NumberGroup group : explained.groups()) {
      ObjectNode one = groups.addObject();
      one.put("digits", group.digits());
      one.put("role", group.role().id());
      one.put("known", group.known());
      one.put("meaning", group.meaning());
      Provenance known = group.provenance();
      one.put("basis", known == null ? null : known.basis().label());
      one.put("confidence", known == null ? null : known.confidence().label());
      ArrayNode sources = one.putArray("sources");
      if (known != null) {
        known.sources().forEach(source -> sources.add(source.key()));
      }
    }
    return json;
  }
}
