package kerfwright.app.storage.stock;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import kerfwright.practice.reprocessing.Cycle;
import kerfwright.practice.reprocessing.Indicator;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.LoadEvent;
import kerfwright.practice.reprocessing.Pouch;
import kerfwright.quantity.Identified;

/** Loads as JSON text, the way they stand in their column. */
final class LoadJson {
  private static final ObjectMapper JSON = new ObjectMapper();

  private LoadJson() {}

  static String text(Load load) {
    ObjectNode node = JSON.createObjectNode();
    node.put("id", load.id().toString()).put("version", load.version()).put("name", load.name());
    node.put("steriliser", load.steriliser()).put("cycle", load.cycle().id());
    node.put("started", load.started().toString()).put("minutes", load.minutes());
    node.put("state", load.state().name());
    ArrayNode pouches = node.putArray("pouches");
    load.pouches().forEach(pouch -> pouch(pouches.addObject(), pouch));
    ArrayNode events = node.putArray("events");
    load.events().forEach(event -> event(events.addObject(), event));
    return node.toString();
  }

  private static void pouch(ObjectNode node, Pouch pouch) {
    node.put("id", pouch.id().toString()).put("code", pouch.code()).put("set", pouch.set());
    LocalDate last = pouch.lastDay();
    if (last != null) {
      node.put("last_day", last.toString());
    }
    ArrayNode contents = node.putArray("contents");
    for (Pouch.Content one : pouch.contents()) {
      contents.addObject().put("item", one.item().toString()).put("label", one.label());
    }
  }

  private static void event(ObjectNode node, LoadEvent event) {
    node.put("at", event.at().toString()).put("by", event.by()).put("what", event.what().name());
    Indicator indicator = event.indicator();
    Indicator.Result result = event.result();
    if (indicator != null && result != null) {
      node.put("indicator", indicator.id()).put("result", result.id());
    }
    node.put("note", event.note());
  }

  static Load load(String text) {
    try {
      return load(JSON.readTree(text));
    } catch (JsonProcessingException broken) {
      throw new IllegalStateException("Broken JSON in the database", broken);
    }
  }

  private static Load load(JsonNode node) {
    List<Pouch> pouches = new ArrayList<>();
    for (JsonNode one : node.get("pouches")) {
      List<Pouch.Content> contents = new ArrayList<>();
      for (JsonNode content : one.get("contents")) {
        contents.add(
            new Pouch.Content(
                UUID.fromString(content.get("item").asText()), content.get("label").asText()));
      }
      JsonNode last = one.get("last_day");
      pouches.add(
          new Pouch(
              UUID.fromString(one.get("id").asText()),
              one.get("code").asText(),
              one.get("set").asText(),
              contents,
              last == null ? null : LocalDate.parse(last.asText())));
    }
    List<LoadEvent> events = new ArrayList<>();
    for (JsonNode one : node.get("events")) {
      JsonNode indicator = one.get("indicator");
      events.add(
          new LoadEvent(
              Instant.parse(one.get("at").asText()),
              one.get("by").asText(),
              LoadEvent.What.valueOf(one.get("what").asText()),
              indicator == null
                  ? null
                  : Identified.of(Indicator.class, indicator.asText()).orElseThrow(),
              indicator == null
                  ? null
                  : Identified.of(Indicator.Result.class, one.get("result").asText()).orElseThrow(),
              one.get("note").asText()));
    }
    return new Load(
        UUID.fromString(node.get("id").asText()),
        node.get("version").asInt(),
        node.get("name").asText(),
        node.get("steriliser").asText(),
        Cycle.byId(node.get("cycle").asText()).orElseThrow(),
        Instant.parse(node.get("started").asText()),
        node.get("minutes").asInt(),
        Load.State.valueOf(node.get("state").asText()),
        pouches,
        events);
  }
}
