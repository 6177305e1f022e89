package kerfwright.catalogue.data;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kerfwright.catalogue.Confidence;
import kerfwright.catalogue.NearestName;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.table.Row;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Identified;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * One row being read, with its standing: a cell that does not fit is noted as a fault and reading
 * goes on with something that stands in for it.
 */
public final class DataRow extends Row {
  DataRow(Row row) {
    super(row);
  }

  /** A number above zero, or null where the cell is blank. */
  public @Nullable Double positive(String column) {
    Double value = number(column);
    if (value != null && value <= 0) {
      fault(column, Message.of("fault.cell-above-zero", text(column)));
      return null;
    }
    return value;
  }

  public double positive(String column, double ifBlank) {
    Double value = positive(column);
    return value == null ? ifBlank : value;
  }

  /** A number above zero that must be there; 1 stands in for a faulty one. */
  public double requiredPositive(String column) {
    required(column);
    return positive(column, 1);
  }

  /** A length above zero, or null where the cell is blank. */
  public @Nullable Length millimetres(String column) {
    Double value = positive(column);
    return value == null ? null : Length.ofMillimetres(value);
  }

  /** A whole number above zero, or null where the cell is blank. */
  public @Nullable Integer whole(String column) {
    Double number = positive(column);
    if (number == null) {
      return null;
    }
    if (number != Math.rint(number)) {
      fault(column, Message.of("fault.cell-whole", text(column)));
    }
    return number.intValue();
  }

  public int whole(String column, int ifBlank) {
    Integer value = whole(column);
    return value == null ? ifBlank : value;
  }

  /** Three digits. */
  public String group(String column) {
    if (!text(column).matches("[0-9]{3}")) {
      expected(column, "three digits");
    }
    return text(column);
  }

  /** True for yes, false for no or blank. */
  public boolean yes(String column) {
    if (!text(column).matches("yes|no|")) {
      fault(column, Message.of("fault.cell-yes", text(column)));
    }
    return text(column).equals("yes");
  }

  /** One of the constants by its id; blank gives null. */
  public <E extends Enum<E> & Identified> @Nullable E oneOf(String column, Class<E> all) {
    String text = text(column);
    return text.isEmpty() ? null : known(column, text, all).orElse(null);
  }

  /** One of the constants, which must be there; the first stands in for a faulty cell. */
  public <E extends Enum<E> & Identified> E requiredOneOf(String column, Class<E> all) {
    required(column);
    E constant = oneOf(column, all);
    return constant == null ? all.getEnumConstants()[0] : constant;
  }

  /** Constants by their ids, between semicolons. */
  public <E extends Enum<E> & Identified> List<E> each(String column, Class<E> all) {
    return list(column).stream().flatMap(word -> known(column, word, all).stream()).toList();
  }

  private <E extends Enum<E> & Identified> Optional<E> known(
      String column, String word, Class<E> all) {
    Optional<E> constant = Identified.of(all, word.toLowerCase(Locale.ROOT));
    if (constant.isEmpty()) {
      fault(column, unknown(word, Identified.ids(all)));
    }
    return constant;
  }

  private static Message unknown(String word, Collection<String> known) {
    Message told = Message.of("fault.cell-one-of", word, String.join(", ", known));
    return NearestName.nearest(word, known)
        .map(near -> Message.of("fault.nearest", told, near))
        .orElse(told);
  }

  /** Notes a fault where a word of a cell is none of the known ones. */
  public void known(String column, String word, Collection<String> known) {
    if (!known.contains(word)) {
      fault(column, unknown(word, known));
    }
  }

  /** Words between semicolons, each of which must be known. */
  public List<String> words(String column, Collection<String> known) {
    List<String> words = list(column);
    words.forEach(word -> known(column, word, known));
    return words;
  }

  /** The sources in a column, each of which must stand in the register. */
  public List<SourceKey> keys(String column) {
    return Sources.packaged().keys(this, column);
  }

  /** The sources of the row, at least one. */
  public List<SourceKey> sources() {
    List<SourceKey> keys = keys("source");
    if (keys.isEmpty()) {
      fault("source", "must name a source");
    }
    return keys;
  }

  /** The sources of a row of that standing; only what this project has set may have none. */
  public List<SourceKey> sources(Basis basis) {
    List<SourceKey> keys = keys("source");
    if (keys.isEmpty() && basis != Basis.PROJECT_SETTING) {
      fault("source", "must name a source, or the basis must be project-setting");
    }
    return keys;
  }

  /** The five standing columns; basis, confidence and at least one source are required. */
  public Provenance provenance() {
    required("sources");
    return new Provenance(
        keys("sources"),
        text("locator"),
        basis(),
        requiredOneOf("confidence", Confidence.class),
        text("note"));
  }

  /** Notes a fault of a table that is always packaged, in plain words. */
  public void expected(String column, String expected) {
    fault(column, "'" + text(column) + "' must be " + expected);
  }
}
