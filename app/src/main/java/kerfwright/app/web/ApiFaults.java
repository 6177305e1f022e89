package kerfwright.app.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.json.JsonText;
import kerfwright.planner.casework.Contradiction.Fix;

/** Faults of a request as JSON, with status 422. */
final class ApiFaults {
  private ApiFaults() {}

  static void answer(Context call, BadInput bad) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("contract", "faults/1");
    ArrayNode faults = json.putArray("faults");
    for (Fault fault : bad.faults()) {
      ObjectNode one = faults.addObject();
      one.put("line", fault.line());
      one.put("field", fault.field());
      one.put("problem", fault.problem());
      one.put("nearest", fault.nearest());
      one.put("code", fault.code());
      Fix fix = fault.fix();
      if (fix == null) {
        one.putNull("fix");
      } else {
        one.putObject("fix").put("field", fix.field()).put("value", fix.value());
      }
    }
    call.status(422).contentType("application/json; charset=utf-8").result(JsonText.of(json));
  }
}
