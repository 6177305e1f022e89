package kerfwright.app.storage.cases;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;
import kerfwright.app.storage.Where;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.kept.KeptCase;
import kerfwright.practice.kept.KeptCaseQuery;
import org.jspecify.annotations.Nullable;

/**
 * Where cases are kept. The document is {@code {"kept": 1, "form": query, "steps": [{operation,
 * instrument, setRpm, loadN, cutS}]}}; {@code kept} is the version of that layout.
 */
public final class KeptCases {
  private static final int LAYOUT = 1;
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String NEWEST =
      "version = (SELECT MAX(n.version) FROM kept_case n WHERE n.id = c.id)";
  private static final String ORDER = " ORDER BY sequence DESC, id DESC, version DESC";

  private final Sql sql;

  public KeptCases(Database database) {
    this.sql = database.sql();
  }

  /**
   * Keeps a version of a case.
   *
   * @return false where somebody else kept that version first, and nothing is kept
   */
  public boolean keep(KeptCase kept) {
    return sql.addOnce(
        new Row("kept_case")
            .with("id", kept.id())
            .with("version", kept.version())
            .with("reference", kept.reference())
            .with("reference_small", small(kept.reference()))
            .with("tooth", kept.tooth().fdi())
            .with("procedure_id", kept.procedure())
            .with("at_micros", kept.at())
            .with("document", document(kept))
            .numbered());
  }

  /** The newest version. */
  public Optional<KeptCase> find(UUID id) {
    return ask("id = ? AND " + NEWEST + ORDER, id).stream().findFirst();
  }

  /** Every version of a case, newest first. */
  public List<KeptCase> versions(UUID id) {
    return ask("id = ? ORDER BY version DESC", id);
  }

  /** The newest version of the case with this reference (letters large or small) and procedure. */
  public Optional<KeptCase> find(String reference, Tooth tooth, String procedure) {
    String where = "reference_small = ? AND tooth = ? AND procedure_id = ? AND " + NEWEST + ORDER;
    return ask(where, small(reference), tooth.fdi(), procedure).stream().findFirst();
  }

  /** The newest versions of those that fit, newest first. */
  public List<KeptCase> list(KeptCaseQuery query) {
    Where where =
        new Where()
            .has("reference_small", query.reference())
            .and("tooth = ?", query.tooth() == null ? null : query.tooth().fdi())
            .and("procedure_id = ?", query.procedure())
            .and("at_micros >= ?", query.from())
            .and("at_micros < ?", query.until());
    return ask(
        (where.isEmpty() ? "" : where.text() + " AND ") + NEWEST + ORDER + " LIMIT ? OFFSET ?",
        where.values(query.size(), (long) query.page() * query.size()));
  }

  private List<KeptCase> ask(String where, @Nullable Object... values) {
    return sql.list(KeptCases::kept, "SELECT * FROM kept_case c WHERE " + where, values);
  }

  private static String small(String reference) {
    return reference.toLowerCase(Locale.ROOT);
  }

  private static String document(KeptCase kept) {
    ObjectNode json = JSON.createObjectNode();
    json.put("kept", LAYOUT);
    json.put("form", kept.form());
    json.set("steps", JSON.valueToTree(kept.steps()));
    return json.toString();
  }

  private static KeptCase kept(ResultSet row) throws SQLException {
    String id = row.getString("id");
    try {
      JsonNode json = JSON.readTree(row.getString("document"));
      if (json.path("kept").asInt() != LAYOUT) {
        throw new IllegalStateException("Case " + id + " was kept by a newer program");
      }
      List<KeptCase.Step> steps = new ArrayList<>();
      for (JsonNode step : json.path("steps")) {
        steps.add(JSON.treeToValue(step, KeptCase.Step.class));
      }
      return new KeptCase(
          UUID.fromString(id),
          row.getInt("version"),
          row.getString("reference"),
          new Tooth(row.getInt("tooth")),
          row.getString("procedure_id"),
          Row.time(row, "at_micros"),
          json.path("form").asText(),
          steps);
    } catch (JsonProcessingException broken) {
      throw new IllegalStateException("What is kept of case " + id + " cannot be read", broken);
    }
  }
}
