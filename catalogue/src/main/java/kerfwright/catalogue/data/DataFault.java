package kerfwright.catalogue.data;

/**
 * One fault of a data file.
 *
 * @param file file within the catalogue
 * @param line line of the file, the header being line 1
 * @param column column of the file
 * @param found what stands there
 * @param expected what should
 */
public record DataFault(String file, long line, String column, String found, String expected) {
  @Override
  public String toString() {
    return file + ":" + line + ", " + column + ": expected " + expected + ", found '" + found + "'";
  }
}
