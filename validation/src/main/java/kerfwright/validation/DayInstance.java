package kerfwright.validation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import kerfwright.practice.day.Appointment;
import kerfwright.practice.day.DayPlan;
import kerfwright.practice.day.DayProblem;
import kerfwright.practice.day.FixedFacts;
import kerfwright.practice.day.InstrumentRef;
import kerfwright.practice.day.SteriliserLoad;
import kerfwright.practice.day.Stock;
import kerfwright.practice.day.TrayPlace;

/** An instance of the day benchmark in its own JSON, types and cases by number. */
final class DayInstance {
  private DayInstance() {}

  static DayProblem read(Path file) throws IOException {
    JsonNode day = new ObjectMapper().readTree(file.toFile());
    List<Stock> stock = new ArrayList<>();
    for (JsonNode type : day.get("types")) {
      List<Integer> uses = new ArrayList<>();
      type.get("used").forEach(u -> uses.add(u.asInt()));
      stock.add(new Stock("t" + stock.size(), type.get("life").asInt(), uses));
    }
    List<Appointment> appointments = new ArrayList<>();
    for (JsonNode c : day.get("cases")) {
      List<String> needs = new ArrayList<>();
      c.get("types").forEach(t -> needs.add("t" + t.asInt()));
      appointments.add(
          new Appointment(
              "A" + appointments.size(), c.get("start").asInt(), c.get("end").asInt(), needs));
    }
    return new DayProblem(
        LocalTime.of(8, 0),
        day.get("day").asInt(),
        day.get("clean").asInt(),
        day.get("cycle").asInt(),
        day.get("grid").asInt(),
        day.get("sterilisers").asInt(),
        day.get("capacity").asInt(),
        stock,
        appointments,
        FixedFacts.NONE);
  }

  /** The plan as the benchmark's referee reads it. */
  static ObjectNode solution(DayPlan plan) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ArrayNode assign = json.putArray("assign");
    for (TrayPlace t : plan.trays()) {
      assign
          .addArray()
          .add(number(t.appointment()))
          .add(number(t.instrument().type()))
          .add(t.instrument().index());
    }
    ArrayNode loads = json.putArray("loads");
    for (SteriliserLoad l : plan.loads()) {
      ArrayNode units = loads.addObject().put("start", l.startMin()).putArray("units");
      for (InstrumentRef ref : l.instruments()) {
        units.addArray().add(number(ref.type())).add(ref.index());
      }
    }
    return json;
  }

  private static int number(String name) {
    return Integer.parseInt(name.substring(1));
  }
}
