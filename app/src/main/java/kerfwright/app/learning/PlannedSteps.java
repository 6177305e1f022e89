package kerfwright.app.learning;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.form.Sent;
import kerfwright.app.storage.StoredDocument;
import kerfwright.app.storage.cases.CutRuns;
import kerfwright.practice.record.PlanStep;

/** What was planned for a step that was run at the chair, by the sheet it was run from. */
public final class PlannedSteps {
  private static final String RUN = "run:";
  private static final int REMEMBERED = 500;

  private final CutRuns runs;
  private final Map<UUID, JsonNode> sheets =
      Collections.synchronizedMap(
          new LinkedHashMap<UUID, JsonNode>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<UUID, JsonNode> eldest) {
              return size() > REMEMBERED;
            }
          });

  public PlannedSteps(CutRuns runs) {
    this.runs = runs;
  }

  /**
   * A step as planned.
   *
   * @param materialId the material cut
   * @param literatureS its time by the models without the practice's own pace, seconds
   */
  public record Planned(String materialId, double literatureS) {}

  /** Empty where the step belongs to no run, or its sheet does not say. */
  public Optional<Planned> find(PlanStep step) {
    return sheet(step).flatMap(sheet -> planned(sheet, step.order()));
  }

  /** Id of the procedure a step belongs to, where its sheet says it. */
  public Optional<String> procedure(PlanStep step) {
    return sheet(step).map(sheet -> sheet.path("procedureId").asText()).filter(id -> !id.isEmpty());
  }

  private Optional<JsonNode> sheet(PlanStep step) {
    return step.plan().startsWith(RUN)
        ? Sent.id(step.plan().substring(RUN.length())).flatMap(this::sheet)
        : Optional.empty();
  }

  private Optional<JsonNode> sheet(UUID run) {
    Optional<JsonNode> sheet =
        Optional.ofNullable(sheets.get(run))
            .or(() -> runs.find(run).map(one -> StoredDocument.SHEET.tree(one.sheet())));
    sheet.ifPresent(one -> sheets.put(run, one));
    return sheet;
  }

  private static Optional<Planned> planned(JsonNode sheet, int order) {
    for (JsonNode step : sheet.path("steps")) {
      double seconds = step.path("literatureS").asDouble(0);
      var materials = step.path("mm3").fieldNames();
      if (step.path("order").asInt() == order && seconds > 0 && materials.hasNext()) {
        return Optional.of(new Planned(materials.next(), seconds));
      }
    }
    return Optional.empty();
  }
}
