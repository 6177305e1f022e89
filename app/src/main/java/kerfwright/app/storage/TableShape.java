package kerfwright.app.storage;

import java.util.List;
import kerfwright.quantity.Identified;

/**
 * A table as the database describes it.
 *
 * @param name its name
 * @param columns in their order
 * @param order what its rows are sorted by: the primary key, or all columns where there is none
 */
public record TableShape(String name, List<Column> columns, List<String> order) {
  public TableShape {
    columns = List.copyOf(columns);
    order = List.copyOf(order);
  }

  /** What a column holds. */
  public enum Kind implements Identified {
    TEXT,
    WHOLE,
    REAL,
    BYTES
  }

  /** One column. */
  public record Column(String name, Kind kind) {}

  public List<String> names() {
    return columns.stream().map(Column::name).toList();
  }

  boolean isText(String name) {
    return columns.contains(new Column(name, Kind.TEXT));
  }
}
