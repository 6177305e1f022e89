package kerfwright.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.json.JsonText;
import kerfwright.catalogue.NearestName;
import kerfwright.catalogue.material.MaterialReport;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.material.ModelInput;
import kerfwright.catalogue.material.Property;
import kerfwright.catalogue.material.PropertyValue;
import kerfwright.catalogue.source.Sources;
import kerfwright.quantity.Identified;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "material",
    mixinStandardHelpOptions = true,
    description = "Shows every value known of a material, with range, source and standing.")
final class MaterialCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "MATERIAL", description = "Its id, e.g. lithium-disilicate.")
  private String id = "";

  @Option(names = "--json", description = "Print one JSON object (material/1).")
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
      String problem = "there is no material '" + id + "'; expected one of " + known;
      String nearest = NearestName.nearest(id, materials.ids()).orElse(null);
      throw new BadInput(List.of(new Fault("material", 0, "", problem, nearest)));
    }
    if (json) {
      terminal.printJson(JsonText.of(json(report)));
    } else {
      terminal.print(text(report));
    }
    return Terminal.DONE;
  }

  private static String text(MaterialReport report) {
    StringBuilder text = new StringBuilder();
    text.append(report.material().label()).append(" (").append(report.material().id());
    text.append(", ").append(report.material().group().id());
    text.append(")\n");
    if (!report.note().isBlank()) {
      text.append(report.note()).append('\n');
    }
    text.append("\nWhat the models take\n");
    for (ModelInput input : report.modelInputs()) {
      text.append("  ").append(input.property().label()).append(": ");
      text.append(figures(input.low(), input.typical(), input.high(), input.property().unit()));
      text.append(standing(input.basis().label(), input.sources())).append('\n');
      line(text, input.note());
    }
    text.append("\nPublished and recalled values\n");
    for (PropertyValue value : report.material().values()) {
      text.append("  ").append(label(value.property())).append(": ");
      text.append(figures(value.low(), value.typical(), value.high(), value.unit()));
      text.append(standing(value.basis().label(), value.sources())).append('\n');
      line(text, value.conditions());
      line(text, value.locator());
      line(text, value.note());
    }
    text.append("\nSources\n");
    keys(report)
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

  private static String label(String property) {
    return Identified.of(Property.class, property).map(Property::label).orElse(property);
  }

  private static String standing(String basis, List<SourceKey> sources) {
    String keys = sources.stream().map(SourceKey::key).collect(Collectors.joining(", "));
    return "  [" + basis + (keys.isEmpty() ? "" : "; " + keys) + "]";
  }

  private static String figures(
      @Nullable Double low, @Nullable Double typical, @Nullable Double high, String unit) {
    String ends = "";
    if (low != null && high != null) {
      ends = low.equals(high) ? "" : number(low) + " to " + number(high);
    } else if (low != null) {
      ends = "from " + number(low);
    } else if (high != null) {
      ends = "up to " + number(high);
    }
    String figures = ends.isEmpty() ? "unknown" : ends;
    if (typical != null) {
      figures = number(typical) + (ends.isEmpty() ? "" : " (" + ends + ")");
    }
    return unit.equals("1") || figures.equals("unknown") ? figures : figures + " " + unit;
  }

  private static String number(double value) {
    return JsonText.number(value).decimalValue().toString();
  }

  private static TreeMap<String, String> keys(MaterialReport report) {
    TreeSet<SourceKey> used = new TreeSet<>();
    report.modelInputs().forEach(input -> used.addAll(input.sources()));
    report.material().values().forEach(value -> used.addAll(value.sources()));
    TreeMap<String, String> citations = new TreeMap<>();
    for (SourceKey key : used) {
      String unknown =
          key.equals(SourceKey.COMMON_PRACTICE) ? "common practice, no source" : "not registered";
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
    keys(report).forEach(sources::put);
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
