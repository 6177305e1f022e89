package kerfwright.app.chairside;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import kerfwright.app.words.Say;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.record.Cut;
import kerfwright.practice.record.Logged;
import kerfwright.practice.record.PlanStep;
import kerfwright.practice.record.UseReport;
import org.jspecify.annotations.Nullable;

/**
 * Takes what the chair logged, perhaps hours later and perhaps twice, and answers for each entry
 * whether it stands in the record now. What is refused stays on the device, with the reason.
 */
public final class ChairReports {
  static final int MOST = 200;

  private static final Instant FIRST = Instant.parse("2000-01-01T00:00:00Z");
  private static final Instant LAST = Instant.parse("2200-01-01T00:00:00Z");

  private final Function<UseReport, Logged> record;
  private final EventReports events;

  /** Takes uses to a record, and what else happened to where it is kept. */
  public ChairReports(Function<UseReport, Logged> record, EventReports events) {
    this.record = record;
    this.events = events;
  }

  /**
   * Takes what was sent.
   *
   * @param signed initials of who is signed in; empty where nobody signs in
   */
  ArrayNode take(JsonNode sent, Optional<String> signed, Say say) {
    ArrayNode answers = JsonNodeFactory.instance.arrayNode();
    for (JsonNode one : sent) {
      ObjectNode answer = answers.addObject();
      answer.put("id", one.path("id").asText());
      String refusal = refusal(one, signed, say);
      answer.put("stands", refusal == null);
      answer.put("reason", refusal == null ? "" : refusal);
    }
    return answers;
  }

  private @Nullable String refusal(JsonNode one, Optional<String> signed, Say say) {
    String by = one.path("by").asText();
    // made before somebody else took the device: only who made it can send it
    if (signed.isPresent() && !signed.get().equals(by)) {
      return say.at("chairside.entry-of-another", by);
    }
    UseReport report;
    try {
      if (one.has("event")) {
        Instant at = Instant.parse(one.path("at").asText());
        if (at.isBefore(FIRST) || at.isAfter(LAST)) {
          return say.at("chairside.entry-no-time");
        }
        events.take(one, say);
        return null;
      }
      report = report(one);
    } catch (IllegalArgumentException | DateTimeException unsound) {
      return say.at("chairside.entry-unsound");
    }
    for (String material : report.cut().mm3ByMaterial().keySet()) {
      if (Materials.packaged().find(material).isEmpty()) {
        return say.at("chairside.entry-unknown-material", material);
      }
    }
    if (report.at().isBefore(FIRST) || report.at().isAfter(LAST)) {
      return say.at("chairside.entry-no-time");
    }
    Logged logged = record.apply(report);
    Logged.Refusal refusal = logged.refusal();
    return refusal == null
        ? null
        : switch (refusal) {
          case UNKNOWN_INSTRUMENT -> say.at("chairside.entry-unknown-instrument");
          case ID_TAKEN -> say.at("chairside.entry-id-taken");
          default -> say.at("chairside.entry-unsound");
        };
  }

  private static UseReport report(JsonNode one) {
    Map<String, Double> mm3 = new HashMap<>();
    one.path("mm3").properties().forEach(of -> mm3.put(of.getKey(), of.getValue().asDouble(-1)));
    return new UseReport(
        UUID.fromString(one.path("id").asText()),
        one.path("case").asText(),
        new Tooth(one.path("tooth").asInt()),
        new PlanStep("run:" + one.path("run").asText(), one.path("step").asInt()),
        UUID.fromString(one.path("item").asText()),
        one.path("handpiece").isTextual() ? UUID.fromString(one.path("handpiece").asText()) : null,
        "",
        "",
        new Cut(number(one, "setRpm"), null, number(one, "totalSeconds"), null, null, mm3),
        one.path("by").asText(),
        Instant.parse(one.path("at").asText()));
  }

  private static @Nullable Double number(JsonNode one, String name) {
    return one.path(name).isNumber() ? one.path(name).asDouble() : null;
  }
}
