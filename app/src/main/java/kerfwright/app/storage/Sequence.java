package kerfwright.app.storage;

/** Numbers rows as they are written, so that no clock decides what came first. */
public final class Sequence {
  private Sequence() {}

  /** The next number of a table, as part of the statement that writes the row. */
  public static String next(String table) {
    return "(SELECT COALESCE(MAX(sequence), 0) + 1 FROM " + table + ")";
  }
}
