package kerfwright.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.concurrent.Callable;
import kerfwright.app.input.BadInput;
import kerfwright.app.json.JsonText;
import kerfwright.app.reference.NumberWords;
import kerfwright.app.reference.Written;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.number.IsoNumber;
import kerfwright.catalogue.number.MalformedNumberException;
import kerfwright.catalogue.number.NumberExplanation;
import kerfwright.catalogue.number.NumberGroup;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "number", mixinStandardHelpOptions = true)
final class NumberCommand implements Callable<Integer> {
  private static final Say ENGLISH = Say.in(Language.ENGLISH);

  private final Terminal terminal;

  @Parameters(paramLabel = "NUMBER", descriptionKey = "number", arity = "0..*")
  private List<String> number = List.of();

  @Option(names = "--us", paramLabel = "SIZE")
  private @Nullable String us;

  @Option(names = "--json")
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
        terminal.print(answer.text(terminal.say()));
      }
      return Terminal.DONE;
    }
    if (us != null || number.isEmpty()) {
      throw new BadInput("number", Message.of("command.number-none"));
    }
    NumberExplanation explained;
    try {
      explained = IsoNumber.parse(String.join(" ", number)).explain();
    } catch (MalformedNumberException malformed) {
      throw new BadInput("number", malformed.remark().message());
    }
    if (json) {
      terminal.printJson(JsonText.of(json(explained)));
    } else {
      terminal.print(text(terminal.say(), explained));
    }
    return Terminal.DONE;
  }

  private static String text(Say say, NumberExplanation explained) {
    StringBuilder text = new StringBuilder("ISO " + explained.number().encode() + "\n");
    for (NumberGroup group : explained.groups()) {
      Provenance known = group.provenance();
      text.append("  ").append(group.digits()).append("  ").append(NumberWords.role(say, group));
      text.append(": ").append(NumberWords.meaning(say, explained, group));
      text.append(known == null ? "" : " " + Written.standing(say, known)).append('\n');
    }
    return text.toString();
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
      one.put("meaning", NumberWords.meaning(ENGLISH, explained, group));
      Provenance known = group.provenance();
      one.put("basis", known == null ? null : known.basis().label());
      one.put("confidence", known == null ? null : known.confidence().id());
      ArrayNode sources = one.putArray("sources");
      if (known != null) {
        known.sources().forEach(source -> sources.add(source.key()));
      }
    }
    return json;
  }
}
