package kerfwright.app.storage.cases;

import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.UUID;
import kerfwright.app.storage.Row;
import kerfwright.practice.record.CanonicalText;
import kerfwright.practice.record.Correction;
import kerfwright.practice.record.CutRecord;
import kerfwright.practice.record.CutUse;
import kerfwright.practice.record.RecordEntry;
import org.jdbi.v3.core.statement.SqlStatement;
import org.jspecify.annotations.Nullable;

/** One entry of the record as a row of its table, both ways. */
public final class RecordRow {
  static final String INSERT =
      "INSERT INTO cut_record (number, id, case_key, tooth, instrument_id, load_id,"
          + " handpiece_id, handpiece_load_id, at_micros, corrects, entry, hash) VALUES (:number,"
          + " :id, :case_key, :tooth, :instrument_id, :load_id, :handpiece_id,"
          + " :handpiece_load_id, :at_micros, :corrects, :entry, :hash)";

  private RecordRow() {}

  static RecordEntry read(ResultSet row) throws SQLException {
    return CanonicalText.entry(row.getString("entry"), row.getString("hash"));
  }

  static CutRecord.Stored stored(ResultSet row) throws SQLException {
    return new CutRecord.Stored(
        row.getLong("number"), row.getString("entry"), row.getString("hash"), found(row));
  }

  private static boolean found(ResultSet row) throws SQLException {
    try {
      RecordEntry entry = read(row);
      List<@Nullable Object> told = keys(entry);
      return told.equals(
          Arrays.asList(
              row.getLong("number"),
              row.getString("id"),
              row.getString("case_key"),
              row.getInt("tooth"),
              row.getString("instrument_id"),
              row.getString("load_id"),
              ofHandpiece(row, "handpiece_id"),
              ofHandpiece(row, "handpiece_load_id"),
              row.getLong("at_micros"),
              row.getString("corrects")));
    } catch (IllegalArgumentException | DateTimeException unreadable) {
      return false;
    }
  }

  /** Null too in a database of before schema 100, which is backed up as it is. */
  private static @Nullable String ofHandpiece(ResultSet row, String column) throws SQLException {
    ResultSetMetaData columns = row.getMetaData();
    for (int i = 1; i <= columns.getColumnCount(); i++) {
      if (columns.getColumnName(i).equals(column)) {
        return row.getString(i);
      }
    }
    return null;
  }

  /** What an entry is found by, in the order of the columns. */
  private static List<@Nullable Object> keys(RecordEntry entry) {
    CutUse use = entry.use();
    Correction correction = entry.correction();
    CutUse.Piece handpiece = use.handpiece();
    return Arrays.asList(
        entry.number(),
        entry.id().toString(),
        caseKey(use.caseReference()),
        use.tooth().fdi(),
        use.instrument().id().toString(),
        text(use.origin().load()),
        handpiece == null ? null : handpiece.used().id().toString(),
        handpiece == null ? null : text(handpiece.origin().load()),
        Row.micros(use.at()),
        correction == null ? null : correction.corrects().toString());
  }

  static <S extends SqlStatement<S>> S bind(S statement, RecordEntry entry) {
    String[] names = {
      "number",
      "id",
      "case_key",
      "tooth",
      "instrument_id",
      "load_id",
      "handpiece_id",
      "handpiece_load_id",
      "at_micros",
      "corrects"
    };
    List<@Nullable Object> keys = keys(entry);
    for (int i = 0; i < names.length; i++) {
      statement.bind(names[i], keys.get(i));
    }
    return statement.bind("entry", CanonicalText.of(entry)).bind("hash", entry.hash());
  }

  static String caseKey(String reference) {
    return reference.toUpperCase(Locale.ROOT);
  }

  private static @Nullable String text(@Nullable UUID id) {
    return Objects.toString(id, null);
  }
}
