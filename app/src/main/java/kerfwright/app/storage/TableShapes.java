package kerfwright.app.storage;

import java.sql.Types;
import java.util.ArrayList;
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

  private TableShapes() {}

  static List<TableShape> of(Sql sql) {
    Set<String> names = new TreeSet<>(sql.tables("%"));
    names.removeIf(
        name ->
            name.equals(OF_MIGRATION) || name.startsWith(PASSING) || name.startsWith("sqlite_"));
    Set<String> sorted = new LinkedHashSet<>();
    for (String name : names) {
      add(sql, name, names, sorted, new TreeSet<>());
    }
    return sorted.stream().map(name -> shape(sql, name)).toList();
  }

  private static void add(
      Sql sql, String name, Set<String> all, Set<String> sorted, Set<String> above) {
    if (sorted.contains(name) || !above.add(name)) {
      return;
    }
    Set<String> named =
        new TreeSet<>(
            sql.told(
                (data, schema) -> data.getImportedKeys(null, schema, name),
                row -> row.getString("PKTABLE_NAME")));
    named.retainAll(all);
    named.forEach(one -> add(sql, one, all, sorted, above));
    sorted.add(name);
  }

  private static TableShape shape(Sql sql, String name) {
    List<TableShape.Column> columns =
        sql.told(
            (data, schema) -> data.getColumns(null, schema, name, "%"),
            row -> {
              String column = row.getString("COLUMN_NAME");
              return new TableShape.Column(column, kind(name, column, row.getInt("DATA_TYPE")));
            });
    Map<Integer, String> key = new TreeMap<>();
    sql.told(
            (data, schema) -> data.getPrimaryKeys(null, schema, name),
            row -> Map.entry(row.getInt("KEY_SEQ"), row.getString("COLUMN_NAME")))
        .forEach(one -> key.put(one.getKey(), one.getValue()));
    List<String> order = new ArrayList<>(key.values());
    if (order.isEmpty()) {
      columns.forEach(column -> order.add(column.name()));
    }
    return new TableShape(name, columns, order);
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
