package kerfwright.app.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import kerfwright.practice.record.Sha256;

/**
 * What the ledger says of one row: what it is a row of, its id, and the SHA-256 of all it holds.
 */
final class LedgerLine {
  static final String ENTRIES = "SELECT * FROM stock_entry ";
  static final String LOADS = "SELECT * FROM steriliser_load ";
  static final String DRAWER = "DRAWER ";

  private static final List<String> OF_ENTRY =
      List.of(
          "id",
          "batch",
          "item_id",
          "at_micros",
          "what",
          "note",
          "item_before",
          "item_after",
          "undoes");
  private static final List<String> OF_LOAD =
      List.of(
          "id",
          "version",
          "name",
          "steriliser",
          "started_micros",
          "state",
          "decided_micros",
          "load");

  private LedgerLine() {}

  static String entry(ResultSet row) throws SQLException {
    return DRAWER + row.getString("id") + " " + sum(row, OF_ENTRY);
  }

  static String load(ResultSet row) throws SQLException {
    return "LOAD " + row.getString("id") + " " + sum(row, OF_LOAD);
  }

  /** The id in a line as it stands in the ledger; a text that is no line names itself. */
  static String id(String line) {
    String[] words = line.split(" ", -1);
    return words.length == 3 ? words[1] : line;
  }

  /** Every value with its length before it, so that none can run into the next. */
  private static String sum(ResultSet row, List<String> columns) throws SQLException {
    StringBuilder all = new StringBuilder();
    for (String column : columns) {
      String value = row.getString(column);
      all.append(value == null ? "-" : value.length() + ":" + value).append('\n');
    }
    return Sha256.of(all.toString());
  }
}
