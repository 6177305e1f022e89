package kerfwright.catalogue.table;

import kerfwright.quantity.Message;

/**
 * One fault of a table.
 *
 * @param file file below the catalogue, e.g. material/values.csv
 * @param line line in the file, counted from 1; 0 for the file as a whole
 * @param column column header, or "-" for the row as a whole
 * @param expected what stands there and what was expected
 */
public record DataFault(String file, long line, String column, Message expected) {
  @Override
  public String toString() {
    return file
        + ":"
        + line
        + ", column "
        + column
        + ": "
        + expected.key()
        + " "
        + expected.values();
  }
}
