package kerfwright.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Collectors;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.json.JsonText;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.number.IsoCandidate;
import kerfwright.catalogue.number.UsSize;
import kerfwright.catalogue.number.UsSizes;
import kerfwright.quantity.Length;
import kerfwright.quantity.SourceKey;

/** A US bur size and the ISO 6360 numbers it may stand for, as a carbide bur on friction grip. */
record UsSizeAnswer(UsSize size, List<IsoCandidate> candidates) {
  static UsSizeAnswer of(String typed) throws BadInput {
    UsSize size = UsSizes.find(typed).orElse(null);
    if (size == null) {
      List<String> near = UsSizes.suggestions(typed);
      String problem =
          "there is no US size '" + typed + "'; expected a size such as 330, 557 or 7901";
      String nearest = near.isEmpty() ? null : String.join(" or ", near);
      throw new BadInput(List.of(new Fault("--us", 0, "", problem, nearest)));
    }
    return new UsSizeAnswer(
        size, UsSizes.isoCandidates(size, InstrumentKind.CARBIDE, ShankType.FG));
  }

  String text() {
    StringBuilder text = new StringBuilder("US " + size.number() + ": " + size.shapeName());
    text.append(" (").append(size.series()).append(")\n");
    line(text, "head diameter", millimetres(size.headDiameter()));
    Length length = size.headLength();
    line(text, "head length", length == null ? "unknown" : millimetres(length));
    line(text, "blades", blades());
    line(text, "nominal size", size.isoSize());
    line(text, "standing", size.provenance().inWords() + sources());
    text.append("ISO 6360 numbers it may stand for, as a carbide bur on friction grip:\n");
    for (IsoCandidate candidate : candidates) {
      text.append("  ").append(candidate.number().encode()).append("  ").append(candidate.reason());
      text.append(" [").append(candidate.basis().label());
      text.append(", confidence ").append(candidate.confidence().label()).append("]\n");
    }
    if (candidates.isEmpty()) {
      text.append("  none known\n");
    }
    return text.toString();
  }

  private String blades() {
    Integer low = size.bladesLow();
    Integer high = size.bladesHigh();
    if (low == null || high == null) {
      return "unknown";
    }
    return (low.equals(high) ? "" + low : low + " to " + high)
        + (size.crossCut() ? ", cross-cut" : "");
  }

  private String sources() {
    List<SourceKey> keys = size.provenance().sources();
    return keys.stream().map(SourceKey::key).collect(Collectors.joining(", ", " [", "]"));
  }

  private static void line(StringBuilder text, String label, String words) {
    text.append("  ").append(label).append(" ".repeat(15 - label.length())).append(words);
    text.append('\n');
  }

  private static String millimetres(Length length) {
    return JsonText.number(length.millimetres()).decimalValue().toPlainString() + " mm";
  }

  ObjectNode json() {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("contract", "us-size/1");
    json.put("us", size.number());
    json.put("series", size.series());
    json.put("shape", size.shapeName());
    json.set("headDiameterMm", JsonText.number(size.headDiameter().millimetres()));
    Length length = size.headLength();
    json.set("headLengthMm", length == null ? null : JsonText.number(length.millimetres()));
    json.put("bladesLow", size.bladesLow());
    json.put("bladesHigh", size.bladesHigh());
    json.put("crossCut", size.crossCut());
    json.put("basis", size.provenance().basis().label());
    json.put("confidence", size.provenance().confidence().label());
    ArrayNode sources = json.putArray("sources");
    size.provenance().sources().forEach(source -> sources.add(source.key()));
    ArrayNode numbers = json.putArray("isoCandidates");
    for (IsoCandidate candidate : candidates) {
      ObjectNode one = numbers.addObject();
      one.put("number", candidate.number().encode());
      one.put("basis", candidate.basis().label());
      one.put("confidence", candidate.confidence().label());
      one.put("reason", candidate.reason());
    }
    return json;
  }
}
