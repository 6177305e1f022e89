package kerfwright.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.json.JsonText;
import kerfwright.app.reference.Written;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.NearestName;
import kerfwright.catalogue.material.MaterialReport;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.material.ModelInput;
import kerfwright.catalogue.material.PropertyValue;
import kerfwright.catalogue.source.Sources;
import kerfwright.quantity.Message;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "material", mixinStandardHelpOptions = true)
final class MaterialCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "MATERIAL", descriptionKey = "material")
  private String id = "";

  @Option(names = "--json")
  private boolean json;

  MaterialCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws BadInput {
    Materials materials = Materials.packaged();
    MaterialReport report = materials.report(id).orElse(null);
    if (report == null) {
      String known = String.join(", ", materials.ids());
      Message problem = Message.of("fault.unknown", Message.of("fault.what-material"), id, known);
      String nearest = NearestName.nearest(id, materials.ids()).orElse(null);
      throw new BadInput(List.of(new Fault("material", 0, "", problem, nearest)));
    }
    if (json) {
      terminal.printJson(JsonText.of(json(report)));
    } else {
      terminal.print(text(terminal.say(), report));
    }
    return Terminal.DONE;
  }

  private static String text(Say say, MaterialReport report) {
    StringBuilder text = new StringBuilder();
    text.append(Labels.material(say, report.material()))
        .append(" (")
        .append(report.material().id());
    text.append(", ").append(Written.group(say, report.material().group())).append(")\n");
    if (!report.note().isBlank()) {
      text.append(report.note()).append('\n');
    }
    text.append('\n').append(say.at("reference.what-models-take")).append('\n');
    for (ModelInput input : report.modelInputs()) {
      text.append("  ").append(Written.property(say, input.property())).append(": ");
      text.append(
          Written.figures(
              say, input.low(), input.typical(), input.high(), input.property().unit()));
      text.append("  ").append(Written.standing(say, input.basis(), input.sources()));
      line(text.append('\n'), input.note());
    }
    text.append('\n').append(say.at("reference.published")).append('\n');
    for (PropertyValue value : report.material().values()) {
      text.append("  ").append(Written.property(say, value.property())).append(": ");
      text.append(Written.figures(say, value.low(), value.typical(), value.high(), value.unit()));
      text.append("  ").append(Written.standing(say, value.basis(), value.sources()));
      line(text.append('\n'), value.conditions());
      line(text, value.locator());
      line(text, value.note());
    }
    text.append('\n').append(say.at("reference.place-sources")).append('\n');
    keys(say, report)
        .forEach(
            (key, citation) ->
                text.append("  [").append(key).append("] ").append(citation).append('\n'));
    return text.toString();
  }

  private static void line(StringBuilder text, String words) {
    if (!words.isBlank()) {
      text.append("      ").append(words).append('\n');
    }
  }

  private static TreeMap<String, String> keys(Say say, MaterialReport report) {
    TreeSet<SourceKey> used = new TreeSet<>();
    report.modelInputs().forEach(input -> used.addAll(input.sources()));
    report.material().values().forEach(value -> used.addAll(value.sources()));
    TreeMap<String, String> citations = new TreeMap<>();
    for (SourceKey key : used) {
      String unknown =
          say.at(
              key.equals(SourceKey.COMMON_PRACTICE)
                  ? "command.source-practice"
                  : "command.source-unknown");
      citations.put(key.key(), Sources.packaged().find(key).map(s -> s.citation()).orElse(unknown));
    }
    return citations;
  }

  private static ObjectNode json(MaterialReport report) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("contract", "material/1");
    json.put("id", report.material().id());
    json.put("label", report.material().label());
    json.put("group", report.material().group().id());
    json.put("note", report.note());
    ArrayNode inputs = json.putArray("modelInputs");
    for (ModelInput input : report.modelInputs()) {
      ObjectNode one = inputs.addObject();
      one.put("property", input.property().id());
      put(one, input.low(), input.typical(), input.high(), input.property().unit());
      one.put("basis", input.basis().label());
      sources(one, input.sources());
      one.put("note", input.note());
    }
    ArrayNode values = json.putArray("values");
    for (PropertyValue value : report.material().values()) {
      ObjectNode one = values.addObject();
      one.put("id", value.id());
      one.put("property", value.property());
      put(one, value.low(), value.typical(), value.high(), value.unit());
      one.put("conditions", value.conditions());
      one.put("basis", value.basis().label());
      sources(one, value.sources());
      one.put("locator", value.locator());
      one.put("preferred", value.preferred());
      one.put("note", value.note());
    }
    ObjectNode sources = json.putObject("sources");
    keys(Say.in(Language.ENGLISH), report).forEach(sources::put);
    return json;
  }

  private static void put(
      ObjectNode one,
      @Nullable Double low,
      @Nullable Double typical,
      @Nullable Double high,
      String unit) {
    one.set("low", low == null ? null : JsonText.number(low));
    one.set("typical", typical == null ? null : JsonText.number(typical));
    one.set("high", high == null ? null : JsonText.number(high));
    one.put("unit", unit);
  }

  private static void sources(ObjectNode one, List<SourceKey> sources) {
    ArrayNode keys = one.putArray("sources");
    sources.forEach(source -> keys.add(source.key()));
  }
}
