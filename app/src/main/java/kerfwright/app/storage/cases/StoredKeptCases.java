package kerfwright.app.storage.cases;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.StoredDocument;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.kept.KeptCase;
import kerfwright.practice.kept.KeptCaseQuery;
import kerfwright.practice.kept.KeptCases;
import org.jdbi.v3.core.Jdbi;

/** The kept cases in a database. */
public final class StoredKeptCases implements KeptCases {
  private static final String COLUMNS =
      "SELECT id, version, reference, tooth, procedure_id, at_micros, document FROM kept_case c ";
  private static final String NEWEST =
      "version = (SELECT MAX(n.version) FROM kept_case n WHERE n.id = c.id)";

  private final Jdbi jdbi;

  /** What of a case has no column of its own. */
  public record Document(String form, List<KeptCase.Step> steps) {}

  public StoredKeptCases(Database database) {
    this.jdbi = database.jdbi();
  }

  @Override
  public boolean keep(KeptCase kept) {
    return jdbi.withHandle(
        new Row("kept_case")
                .with("id", kept.id())
                .with("version", kept.version())
                .with("reference", kept.reference())
                .with("reference_small", small(kept.reference()))
                .with("tooth", kept.tooth().fdi())
                .with("procedure_id", kept.procedure())
                .with("at_micros", kept.at())
                .with("document", StoredDocument.CASE.text(new Document(kept.form(), kept.steps())))
            ::addNumbered);
  }

  @Override
  public Optional<KeptCase> find(UUID id) {
    return ask("id = :id AND " + NEWEST, Map.of("id", id.toString()), "").stream().findFirst();
  }

  @Override
  public List<KeptCase> versions(UUID id) {
    return ask("id = :id", Map.of("id", id.toString()), "version DESC", "");
  }

  @Override
  public Optional<KeptCase> find(String reference, Tooth tooth, String procedure) {
    Map<String, Object> values =
        Map.of("reference", small(reference), "tooth", tooth.fdi(), "procedure", procedure);
    String where =
        "reference_small = :reference AND tooth = :tooth AND procedure_id = :procedure AND ";
    return ask(where + NEWEST, values, "").stream().findFirst();
  }

  @Override
  public List<KeptCase> list(KeptCaseQuery query) {
    List<String> where = new ArrayList<>(List.of(NEWEST));
    Map<String, Object> values = new LinkedHashMap<>();
    if (query.reference() != null) {
      where.add("reference_small LIKE :reference ESCAPE '!'");
      String part = small(query.reference()).replaceAll("([!%_])", "!$1");
      values.put("reference", "%" + part + "%");
    }
    if (query.tooth() != null) {
      where.add("tooth = :tooth");
      values.put("tooth", query.tooth().fdi());
    }
    if (query.procedure() != null) {
      where.add("procedure_id = :procedure");
      values.put("procedure", query.procedure());
    }
    if (query.from() != null) {
      where.add("at_micros >= :from");
      values.put("from", Row.micros(query.from()));
    }
    if (query.until() != null) {
      where.add("at_micros < :until");
      values.put("until", Row.micros(query.until()));
    }
    String page = " LIMIT " + query.size() + " OFFSET " + (long) query.page() * query.size();
    return ask(String.join(" AND ", where), values, page);
  }

  private List<KeptCase> ask(String where, Map<String, Object> values, String page) {
    return ask(where, values, "sequence DESC, id DESC, version DESC", page);
  }

  private List<KeptCase> ask(String where, Map<String, Object> values, String order, String page) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(COLUMNS + "WHERE " + where + " ORDER BY " + order + page)
                .bindMap(values)
                .map((row, context) -> kept(row))
                .list());
  }

  private static String small(String reference) {
    return reference.toLowerCase(Locale.ROOT);
  }

  private static KeptCase kept(ResultSet row) throws SQLException {
    Document document = StoredDocument.CASE.read(row.getString("document"), Document.class);
    return new KeptCase(
        UUID.fromString(row.getString("id")),
        row.getInt("version"),
        row.getString("reference"),
        new Tooth(row.getInt("tooth")),
        row.getString("procedure_id"),
        Row.instant(row.getLong("at_micros")),
        document.form(),
        document.steps());
  }
}
