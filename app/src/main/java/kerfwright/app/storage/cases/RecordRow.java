package kerfwright.app.storage.cases;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.util.Locale;
import kerfwright.app.storage.Row;
import kerfwright.practice.record.CanonicalText;
import kerfwright.practice.record.Correction;
import kerfwright.practice.record.CutRecord;
import kerfwright.practice.record.CutUse;
import kerfwright.practice.record.RecordEntry;

/** One entry of the record as a row of its table, both ways. */
final class RecordRow {
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
      return keys(read(row)).isIn(row);
    } catch (IllegalArgumentException | DateTimeException unreadable) {
      return false;
    }
  }

  static Row of(RecordEntry entry) {
    return keys(entry).with("entry", CanonicalText.of(entry)).with("hash", entry.hash());
  }

  /** What an entry is found by. */
  private static Row keys(RecordEntry entry) {
    CutUse use = entry.use();
    Correction correction = entry.correction();
    CutUse.Piece handpiece = use.handpiece();
    return new Row("cut_record")
        .with("number", entry.number())
        .with("id", entry.id())
        .with("case_key", caseKey(use.caseReference()))
        .with("tooth", use.tooth().fdi())
        .with("instrument_id", use.instrument().id())
        .with("load_id", use.origin().load())
        .with("handpiece_id", handpiece == null ? null : handpiece.used().id())
        .with("handpiece_load_id", handpiece == null ? null : handpiece.origin().load())
        .with("at_micros", use.at())
        .with("corrects", correction == null ? null : correction.corrects());
  }

  static String caseKey(String reference) {
    return reference.toUpperCase(Locale.ROOT);
  }
}
