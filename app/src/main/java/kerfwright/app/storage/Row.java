package kerfwright.app.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A row to be written, column by column. */
public final class Row {
  private final String table;
  private final Map<String, @Nullable Object> cells = new LinkedHashMap<>();
  private boolean numbered;

  public Row(String table) {
    this.table = table;
  }

  public Row with(String column, @Nullable Object value) {
    cells.put(column, Sql.kept(value));
    return this;
  }

  /** Numbered as it is written, so that no clock decides what came first. */
  public Row numbered() {
    numbered = true;
    return this;
  }

  /** Whether each column there says the same; one that an older schema lacks holds nothing. */
  public boolean isIn(ResultSet row) throws SQLException {
    Set<String> there = new HashSet<>();
    for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
      there.add(row.getMetaData().getColumnName(i));
    }
    for (Map.Entry<String, @Nullable Object> cell : cells.entrySet()) {
      String told = there.contains(cell.getKey()) ? row.getString(cell.getKey()) : null;
      if (!Objects.equals(told, Objects.toString(cell.getValue(), null))) {
        return false;
      }
    }
    return true;
  }

  Map<String, @Nullable Object> cells() {
    return cells;
  }

  String insert() {
    String sequence = "(SELECT COALESCE(MAX(sequence), 0) + 1 FROM " + table + ")";
    return "INSERT INTO %s (%s%s) VALUES (:%s%s)"
        .formatted(
            table,
            String.join(", ", cells.keySet()),
            numbered ? ", sequence" : "",
            String.join(", :", cells.keySet()),
            numbered ? ", " + sequence : "");
  }

  /** In place of the version before; the first column is its key. */
  String update() {
    String key = cells.keySet().iterator().next();
    return cells.keySet().stream()
        .filter(column -> !column.equals(key))
        .map(column -> column + " = :" + column)
        .collect(Collectors.joining(", ", "UPDATE " + table + " SET ", " WHERE "))
        .concat(key + " = :" + key + " AND version = :version - 1");
  }

  public static UUID id(ResultSet row, String column) throws SQLException {
    return UUID.fromString(row.getString(column));
  }

  public static Instant time(ResultSet row, String column) throws SQLException {
    return instant(row.getLong(column));
  }

  /** Null where the column is empty. */
  public static <T> @Nullable T perhaps(@Nullable String text, Function<String, T> read) {
    return text == null ? null : read.apply(text);
  }

  public static long micros(Instant at) {
    return Math.multiplyExact(at.getEpochSecond(), 1_000_000L) + at.getNano() / 1000;
  }

  public static Instant instant(long micros) {
    return Instant.EPOCH.plus(micros, ChronoUnit.MICROS);
  }
}
