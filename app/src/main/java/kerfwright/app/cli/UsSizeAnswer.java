package kerfwright.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.json.JsonText;
import kerfwright.app.reference.NumberWords;
import kerfwright.app.reference.Written;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.number.IsoCandidate;
import kerfwright.catalogue.number.UsSize;
import kerfwright.catalogue.number.UsSizes;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;

/** A US bur size and the ISO 6360 numbers it may stand for, as a carbide bur on friction grip. */
record UsSizeAnswer(UsSize size, List<IsoCandidate> candidates) {
  static UsSizeAnswer of(String typed) throws BadInput {
    UsSize size = UsSizes.find(typed).orElse(null);
    if (size == null) {
      List<String> near = UsSizes.suggestions(typed);
      String nearest = near.isEmpty() ? null : String.join(", ", near);
      throw new BadInput(
          List.of(new Fault("--us", 0, "", Message.of("reference.us-unknown", typed), nearest)));
    }
    return new UsSizeAnswer(
        size, UsSizes.isoCandidates(size, InstrumentKind.CARBIDE, ShankType.FG));
  }

  String text(Say say) {
    Length length = size.headLength();
    StringBuilder text = new StringBuilder("US " + size.number() + ": ");
    text.append(Labels.shape(say, size.family()));
    text.append(" (").append(NumberWords.series(say, size)).append(")\n");
    line(text, say.at("command.us-head"), millimetres(say, size.headDiameter()));
    line(
        text,
        say.at("command.us-head-length"),
        length == null ? say.at("reference.length-unknown") : millimetres(say, length));
    line(text, say.at("command.us-blades"), blades(say));
    line(text, say.at("command.us-nominal"), size.isoSize());
    line(text, say.at("command.us-standing"), Written.standing(say, size.provenance()));
    text.append(say.at("reference.iso-candidates")).append(":\n");
    for (IsoCandidate candidate : candidates) {
      text.append("  ").append(candidate.number().encode()).append("  ").append(candidate.reason());
      text.append(" [").append(Labels.basis(say, candidate.basis())).append(", ");
      text.append(Written.confidence(say, candidate.confidence())).append("]\n");
    }
    if (candidates.isEmpty()) {
      text.append("  ").append(say.at("reference.no-candidates")).append('\n');
    }
    return text.toString();
  }

  private String blades(Say say) {
    Integer low = size.bladesLow();
    Integer high = size.bladesHigh();
    if (low == null || high == null) {
      return say.at("reference.count-blades");
    }
    return (low.equals(high) ? "" + low : Written.range(say, low, high))
        + (size.crossCut() ? ", " + say.at("reference.cross-cut") : "");
  }

  private static void line(StringBuilder text, String label, String words) {
    text.append("  ").append(label).append(": ").append(words).append('\n');
  }

  private static String millimetres(Say say, Length length) {
    return Written.number(say, length.millimetres()) + " mm";
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
    json.put("confidence", size.provenance().confidence().id());
    ArrayNode sources = json.putArray("sources");
    size.provenance().sources().forEach(source -> sources.add(source.key()));
    ArrayNode numbers = json.putArray("isoCandidates");
    for (IsoCandidate candidate : candidates) {
      ObjectNode one = numbers.addObject();
      one.put("number", candidate.number().encode());
      one.put("basis", candidate.basis().label());
      one.put("confidence", candidate.confidence().id());
      one.put("reason", candidate.reason());
    }
    return json;
  }
}
