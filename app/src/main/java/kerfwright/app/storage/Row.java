package kerfwright.app.storage;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** A row to be written, column by column. */
public final class Row {
  private final String table;
  private final Map<String, @Nullable Object> cells = new LinkedHashMap<>();

  public Row(String table) {
    this.table = table;
  }

  /** Times are kept in microseconds, yes and no as 1 and 0, ids as text. */
  public Row with(String column, @Nullable Object value) {
    if (value instanceof Instant at) {
      cells.put(column, micros(at));
    } else if (value instanceof Boolean yes) {
      cells.put(column, yes ? 1 : 0);
    } else {
      cells.put(column, value instanceof UUID id ? id.toString() : value);
    }
    return this;
  }

  public void add(Handle handle) {
    write(handle, "", "", "");
  }

  /** Adds it unless its key is taken; true where it was added. */
  public boolean addOnce(Handle handle) {
    return write(handle, "", "", " ON CONFLICT DO NOTHING");
  }

  /** The same, numbered as it is written, so that no clock decides what came first. */
  public boolean addNumbered(Handle handle) {
    String next = ", (SELECT COALESCE(MAX(sequence), 0) + 1 FROM " + table + ")";
    return write(handle, ", sequence", next, " ON CONFLICT DO NOTHING");
  }

  /** Adds it, or sets one column of the row that has its key. */
  public void addOrSet(Handle handle, String key, String column) {
    String set = " ON CONFLICT (" + key + ") DO UPDATE SET " + column + " = excluded." + column;
    write(handle, "", "", set);
  }

  private boolean write(Handle handle, String column, String value, String conflict) {
    String columns = String.join(", ", cells.keySet()) + column;
    String values = ":" + String.join(", :", cells.keySet()) + value;
    String sql = "INSERT INTO " + table + " (" + columns + ") VALUES (" + values + ")" + conflict;
    return handle.createUpdate(sql).bindMap(cells).execute() == 1;
  }

  public static long micros(Instant at) {
    return Math.multiplyExact(at.getEpochSecond(), 1_000_000L) + at.getNano() / 1000;
  }

  public static Instant instant(long micros) {
    return Instant.EPOCH.plus(micros, ChronoUnit.MICROS);
  }
}
