package kerfwright.app.storage;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * All tables of the practice, read from the database itself; a table comes after those it names.
 */
final class TableShapes {
  private static final String OF_MIGRATION = "flyway_schema_history";

  /** What is of the day alone: sessions, pauses after wrong passwords. */
  private static final String PASSING = "passing_";

  private final DatabaseMetaData data;
  private final String schema;

  private TableShapes(Connection connection) throws SQLException {
    this.data = connection.getMetaData();
    String named = connection.getSchema();
    this.schema = named == null ? "" : named;
  }

  static List<TableShape> of(Connection connection) throws SQLException {
    return new TableShapes(connection).all();
  }

  private List<TableShape> all() throws SQLException {
    Set<String> names = new TreeSet<>();
    try (ResultSet tables = data.getTables(null, pattern(), "%", new String[] {"TABLE"})) {
      while (tables.next()) {
        String name = tables.getString("TABLE_NAME");
        if (!name.equals(OF_MIGRATION)
            && !name.startsWith(PASSING)
            && !name.startsWith("sqlite_")) {
          names.add(name);
        }
      }
    }
    Set<String> sorted = new LinkedHashSet<>();
    for (String name : names) {
      add(name, names, sorted, new TreeSet<>());
    }
    List<TableShape> shapes = new ArrayList<>();
    for (String name : sorted) {
      shapes.add(shape(name));
    }
    return shapes;
  }

  private @org.jspecify.annotations.Nullable String pattern() {
    return schema.isEmpty() ? null : schema;
  }

  private void add(String name, Set<String> all, Set<String> sorted, Set<String> above)
      throws SQLException {
    if (sorted.contains(name) || !above.add(name)) {
      return;
    }
    Set<String> named = new TreeSet<>();
    try (ResultSet keys = data.getImportedKeys(null, pattern(), name)) {
      while (keys.next()) {
        named.add(keys.getString("PKTABLE_NAME"));
      }
    }
    for (String one : named) {
      if (all.contains(one)) {
        add(one, all, sorted, above);
      }
    }
    sorted.add(name);
  }

  private TableShape shape(String name) throws SQLException {
    List<TableShape.Column> columns = new ArrayList<>();
    try (ResultSet row = data.getColumns(null, pattern(), name, "%")) {
      while (row.next()) {
        String column = row.getString("COLUMN_NAME");
        columns.add(new TableShape.Column(column, kind(name, column, row.getInt("DATA_TYPE"))));
      }
    }
    Map<Integer, String> key = new TreeMap<>();
    try (ResultSet row = data.getPrimaryKeys(null, pattern(), name)) {
      while (row.next()) {
        key.put((int) row.getShort("KEY_SEQ"), row.getString("COLUMN_NAME"));
      }
    }
    Map<String, TableShape.Kind> kinds = new LinkedHashMap<>();
    columns.forEach(column -> kinds.put(column.name(), column.kind()));
    return new TableShape(
        name, columns, key.isEmpty() ? List.copyOf(kinds.keySet()) : List.copyOf(key.values()));
  }

  private static TableShape.Kind kind(String table, String column, int type) {
    return switch (type) {
      case Types.VARCHAR, Types.LONGVARCHAR, Types.CHAR, Types.CLOB -> TableShape.Kind.TEXT;
      case Types.INTEGER, Types.BIGINT, Types.SMALLINT -> TableShape.Kind.WHOLE;
      case Types.DOUBLE, Types.REAL, Types.FLOAT -> TableShape.Kind.REAL;
      case Types.BINARY, Types.VARBINARY, Types.LONGVARBINARY, Types.BLOB -> TableShape.Kind.BYTES;
      default ->
          throw new IllegalStateException(
              "Column " + table + "." + column + " has a type no archive keeps: " + type);
    };
  }
}
