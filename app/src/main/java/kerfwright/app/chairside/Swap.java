package kerfwright.app.chairside;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.BadRequestResponse;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import kerfwright.planner.FixedSteps;
import org.jspecify.annotations.Nullable;

/**
 * A swap as the chair tells it.
 *
 * @param done the steps before, as they were done
 * @param step order of the step that gets another instrument
 * @param label which one
 * @param out labels of instruments no longer at hand
 * @param items the items this run has used so far
 * @param seen where the tooth was found to differ, or null
 */
record Swap(
    List<FixedSteps.Taken> done,
    int step,
    String label,
    Set<String> out,
    Set<UUID> items,
    @Nullable Seen seen) {

  static Swap of(JsonNode json) {
    List<FixedSteps.Taken> done = new ArrayList<>();
    json.path("done")
        .forEach(
            one ->
                done.add(
                    new FixedSteps.Taken(
                        one.path("label").asText(), one.path("handpieceId").asText())));
    Set<String> out = new HashSet<>();
    json.path("out").forEach(one -> out.add(one.asText()));
    Set<UUID> items = new HashSet<>();
    try {
      json.path("items").forEach(one -> items.add(UUID.fromString(one.asText())));
    } catch (IllegalArgumentException unsound) {
      throw new BadRequestResponse();
    }
    int step = json.path("step").asInt();
    String label = json.path("label").asText();
    if (step != done.size() + 1 || label.isEmpty()) {
      throw new BadRequestResponse();
    }
    JsonNode seen = json.path("seen");
    return new Swap(
        done,
        step,
        label,
        out,
        items,
        seen.isObject() ? new Seen(seen.path("border").asInt(), seen.path("mm").asDouble()) : null);
  }
}
