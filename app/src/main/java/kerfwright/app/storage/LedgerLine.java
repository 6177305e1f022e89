package kerfwright.app.storage;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HexFormat;
import java.util.List;
import kerfwright.quantity.Identified;

/**
 * What the ledger says of one row: its kind, its id, its version and the SHA-256 of all it holds.
 *
 * @param kind what it is a row of
 * @param id its id
 * @param text the whole line
 */
record LedgerLine(Kind kind, String id, String text) {
  static final String ENTRIES = "SELECT * FROM stock_entry ";
  static final String LOADS = "SELECT * FROM steriliser_load ";

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

  enum Kind implements Identified {
    DRAWER,
    LOAD
  }

  static LedgerLine entry(ResultSet row) throws SQLException {
    String id = row.getString("id");
    return new LedgerLine(Kind.DRAWER, id, "DRAWER " + id + " " + sum(row, OF_ENTRY));
  }

  static LedgerLine load(ResultSet row) throws SQLException {
    String id = row.getString("id");
    String line = "LOAD " + id + " " + sum(row, OF_LOAD);
    return new LedgerLine(Kind.LOAD, id, line);
  }

  /**
   * A line as it stands in the ledger.
   *
   * @throws IllegalArgumentException where it is none
   */
  static LedgerLine of(String text) {
    String[] words = text.split(" ", -1);
    if (words.length != 3) {
      throw new IllegalArgumentException("Not a line of the ledger: " + text);
    }
    return new LedgerLine(Kind.valueOf(words[0]), words[1], text);
  }

  /** Every value with its length before it, so that none can run into the next. */
  private static String sum(ResultSet row, List<String> columns) throws SQLException {
    StringBuilder all = new StringBuilder();
    for (String column : columns) {
      String value = row.getString(column);
      all.append(value == null ? "-" : value.length() + ":" + value).append('\n');
    }
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of()
          .formatHex(digest.digest(all.toString().getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException everyJdkHasIt) {
      throw new IllegalStateException(everyJdkHasIt);
    }
  }
}
