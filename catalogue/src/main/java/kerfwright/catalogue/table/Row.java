package kerfwright.catalogue.table;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Identified;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** One row of a packaged table; whatever is wrong in a cell is noted as a fault of the table. */
public class Row {
  private final String file;
  private final long line;
  private final List<String> header;
  private final List<String> cells;
  private final Faults faults;

  Row(String file, long line, List<String> header, List<String> cells, Faults faults) {
    this.file = file;
    this.line = line;
    this.header = header;
    this.cells = cells;
    this.faults = faults;
  }

  /** The same row, for a reader of more than its cells. */
  protected Row(Row other) {
    this(other.file, other.line, other.header, other.cells, other.faults);
  }

  public List<String> header() {
    return header;
  }

  /** Text of a cell, maybe empty; a column the file lacks is a fault. */
  public String text(String column) {
    int at = header.indexOf(column);
    if (at < 0) {
      fault(column, "the file has no such column");
      return "";
    }
    return cells.get(at);
  }

  /** Text of a cell that may not be empty. */
  public String required(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      fault(column, Message.of("fault.cell-empty"));
    }
    return text;
  }

  /** An id that no earlier row holds; adds it to those seen. */
  public String uniqueId(String column, Set<String> seen) {
    String id = required(column);
    if (!id.matches("[A-Za-z0-9][A-Za-z0-9.-]*")) {
      fault(column, Message.of("fault.cell-id", id));
    }
    if (!seen.add(id)) {
      fault(column, Message.of("fault.cell-id-twice", id));
    }
    return id;
  }

  /** A number, or null for an empty cell. */
  public @Nullable Double number(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      return null;
    }
    try {
      double value = Double.parseDouble(text);
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // told below, together with infinite values
    }
    fault(column, Message.of("fault.cell-number", text));
    return null;
  }

  /** Low, typical and high of the row, each of which may be blank, in rising order. */
  public Numbers numbers() {
    Numbers numbers = new Numbers(number("low"), number("typical"), number("high"));
    if (!numbers.ordered()) {
      fault("low", "low, typical and high must rise, got " + numbers);
    }
    return numbers;
  }

  /** One of a closed set of words. */
  public String oneOf(String column, Collection<String> words) {
    String text = text(column);
    if (!words.contains(text)) {
      fault(column, Message.of("fault.cell-one-of", text, String.join(", ", words)));
    }
    return text;
  }

  /** The standing of the row; project setting if the cell cannot be read, which is a fault. */
  public Basis basis() {
    return Identified.of(Basis.class, oneOf("basis", Identified.ids(Basis.class)))
        .orElse(Basis.PROJECT_SETTING);
  }

  /** Parts of a cell between semicolons. */
  public List<String> list(String column) {
    return Arrays.stream(text(column).split(";"))
        .map(String::trim)
        .filter(s -> !s.isEmpty())
        .toList();
  }

  /** What only a packaged table can have, in plain words. */
  public void fault(String column, String expected) {
    faults.add(file, line, column, expected);
  }

  public void fault(String column, Message expected) {
    faults.add(file, line, column, expected);
  }

  /** Whether no fault was noted since this row was read in; only then may its values be used. */
  public boolean sound() {
    return faults.found().stream().noneMatch(f -> f.line() == line && f.file().equals(file));
  }
}
