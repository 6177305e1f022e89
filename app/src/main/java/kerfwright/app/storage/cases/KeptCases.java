package kerfwright.app.storage.cases;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;
import kerfwright.app.storage.StoredDocument;
import kerfwright.app.storage.Where;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.kept.KeptCase;
import kerfwright.practice.kept.KeptCaseQuery;
import org.jspecify.annotations.Nullable;

/** Where cases are kept. */
public final class KeptCases {
  private static final String NEWEST =
      "version = (SELECT MAX(n.version) FROM kept_case n WHERE n.id = c.id)";
  private static final String ORDER = " ORDER BY sequence DESC, id DESC, version DESC";

  private final Sql sql;

  /** What of a case has no column of its own. */
  public record Document(String form, List<KeptCase.Step> steps) {}

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
            .with("document", StoredDocument.CASE.text(new Document(kept.form(), kept.steps())))
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

  private static KeptCase kept(ResultSet row) throws SQLException {
    Document document = StoredDocument.CASE.read(row.getString("document"), Document.class);
    return new KeptCase(
        UUID.fromString(row.getString("id")),
        row.getInt("version"),
        row.getString("reference"),
        new Tooth(row.getInt("tooth")),
        row.getString("procedure_id"),
        Row.time(row, "at_micros"),
        document.form(),
        document.steps());
  }
}
