package kerfwright.app.drawerfile;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import kerfwright.app.input.Bounds;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Fields;
import kerfwright.app.input.Node;
import kerfwright.catalogue.NearestName;
import kerfwright.quantity.Message;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/** One line of the drawer file by the names of its columns. */
final class Row {
  private final Map<String, Integer> header;
  private final CSVRecord cells;
  private final int line;
  private final Faults faults;
  private boolean faulty;

  Row(Map<String, Integer> header, CSVRecord cells, int line, Faults faults) {
    this.header = header;
    this.cells = cells;
    this.line = line;
    this.faults = faults;
    if (cells.size() != header.size()) {
      fault("", Message.of("listed.many-cells", cells.size(), header.size()));
    }
  }

  boolean faulty() {
    return faulty;
  }

  void fault(String column, Message problem) {
    fault(column, problem, null);
  }

  void fault(String column, Message problem, @Nullable String nearest) {
    faulty = true;
    faults.add(line, column, problem, nearest);
  }

  /** The cell, empty where blank or without its column. */
  String text(String column) {
    Integer index = header.get(column);
    return index == null || index >= cells.size() ? "" : cells.get(index).strip();
  }

  @Nullable String optional(String column) {
    String text = text(column);
    return text.isEmpty() ? null : text;
  }

  @Nullable Double number(String column, Bounds bounds) {
    String text = text(column);
    if (text.isEmpty()) {
      return null;
    }
    Faults own = new Faults("");
    Node cell = new Node.Scalar(text, Node.Scalar.Kind.TEXT, line);
    Double value = Fields.number(column, cell, bounds, own);
    if (value == null) {
      fault(column, Message.of("fault.must-be", bounds.allowed(), cell.found()));
    }
    return value;
  }

  @Nullable Integer count(String column, Bounds bounds) {
    Double value = number(column, bounds);
    if (value != null && value != Math.rint(value)) {
      fault(column, Message.of("fault.whole", Message.of("fault.found-text", text(column))));
      return null;
    }
    return value == null ? null : value.intValue();
  }

  /** One of a closed set of names, case ignored; null where blank or unknown. */
  @Nullable String oneOf(String column, String what, Collection<String> names) {
    String text = text(column);
    for (String name : names) {
      if (name.toLowerCase(Locale.ROOT).equals(text.toLowerCase(Locale.ROOT))) {
        return name;
      }
    }
    if (!text.isEmpty()) {
      fault(
          column,
          Message.of(
              "fault.unknown", Message.of("fault.what-" + what), text, String.join(", ", names)),
          NearestName.nearest(text, names).orElse(null));
    }
    return null;
  }
}
