package kerfwright.catalogue.source;

import kerfwright.quantity.SourceKey;

/**
 * An entry of the register of sources. Blanks stay blank: what was not read is not made up.
 *
 * @param key key used in the tables
 * @param authors authors, separated by semicolons
 * @param title title, or what the work is about where its title was not shown
 * @param year year, may be blank
 * @param where journal, publisher, standard or archive number
 * @param doi DOI, may be blank
 * @param seen what of it was read, or that it stands here from memory
 */
public record Source(
    SourceKey key,
    String authors,
    String title,
    String year,
    String where,
    String doi,
    String seen) {

  /** One line for a list of sources. */
  public String citation() {
    StringBuilder line = new StringBuilder();
    append(line, authors.replace(";", ","), ". ");
    append(line, title, ". ");
    append(line, where, where.isBlank() ? "" : year.isBlank() ? ". " : ", ");
    append(line, year, ". ");
    append(line, doi.isBlank() ? "" : "doi " + doi, ". ");
    return line.toString().strip();
  }

  private static void append(StringBuilder line, String part, String end) {
    if (!part.isBlank()) {
      line.append(part).append(end);
    }
  }
}
