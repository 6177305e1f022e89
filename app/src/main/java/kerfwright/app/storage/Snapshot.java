package kerfwright.app.storage;

import java.io.IOException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.result.ResultIterator;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;
import org.jspecify.annotations.Nullable;

/**
 * Everything that is kept, as it stood at one moment, while others go on writing: a repeatable-read
 * transaction on PostgreSQL, a read transaction of the write-ahead log on SQLite.
 */
public final class Snapshot implements AutoCloseable {
  private static final int ROWS_AT_A_TIME = 1000;

  private final Handle handle;
  private final Sql sql;
  private final boolean server;

  private Snapshot(Handle handle, boolean server) {
    this.handle = handle;
    this.sql = new Sql(Jdbi.create(handle.getConnection()));
    this.server = server;
  }

  /** Takes one of a database that may be in use. */
  public static Snapshot of(Database database) {
    Handle handle = Jdbi.open(database.urlForReading());
    if (database.onServer()) {
      handle.setTransactionIsolationLevel(TransactionIsolationLevel.REPEATABLE_READ);
      handle.setReadOnly(true);
    }
    return new Snapshot(handle.begin(), database.onServer());
  }

  /** Looks from within a transaction that is still open. */
  static Snapshot within(Handle handle, boolean server) {
    return new Snapshot(handle, server);
  }

  Sql sql() {
    return sql;
  }

  /** Ends of the chains in it. */
  public Seal seal() {
    return Seal.of(sql);
  }

  /** Whether the chains in it hold. */
  public Chains chains() {
    return Chains.of(sql);
  }

  public List<TableShape> tables() {
    return TableShapes.of(sql);
  }

  /** Version of the schema. */
  public String schema() {
    return sql
        .list(String.class, "SELECT version FROM flyway_schema_history WHERE version IS NOT NULL")
        .stream()
        .max(Comparator.comparing(Integer::valueOf))
        .orElse("0");
  }

  /** Takes rows as they come; a value is null, a String, a Long, a Double or bytes. */
  @FunctionalInterface
  public interface Rows {
    void row(@Nullable Object[] values) throws IOException;
  }

  /** Every row of a table, in the same order on every database. */
  public void rows(TableShape table, Rows rows) throws IOException {
    String columns = table.names().stream().map(Snapshot::quoted).collect(Collectors.joining(", "));
    String order =
        table.order().stream()
            .map(name -> quoted(name) + (server && table.isText(name) ? " COLLATE \"C\"" : ""))
            .collect(Collectors.joining(", "));
    String all = "SELECT " + columns + " FROM " + quoted(table.name()) + " ORDER BY " + order;
    try (ResultIterator<@Nullable Object[]> found =
        handle
            .createQuery(all)
            .setFetchSize(ROWS_AT_A_TIME)
            .map((row, context) -> values(table, row))
            .iterator()) {
      while (found.hasNext()) {
        rows.row(found.next());
      }
    }
  }

  static String quoted(String name) {
    return '"' + name.replace("\"", "\"\"") + '"';
  }

  private static @Nullable Object[] values(TableShape table, ResultSet row) throws SQLException {
    @Nullable Object[] values = new Object[table.columns().size()];
    for (int i = 0; i < values.length; i++) {
      Object value =
          switch (table.columns().get(i).kind()) {
            case TEXT -> row.getString(i + 1);
            case WHOLE -> row.getLong(i + 1);
            case REAL -> row.getDouble(i + 1);
            case BYTES -> row.getBytes(i + 1);
          };
      values[i] = row.wasNull() ? null : value;
    }
    return values;
  }

  @Override
  public void close() {
    handle.rollback();
    handle.close();
  }
}
