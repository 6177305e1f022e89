package kerfwright.app.storage;

import java.io.IOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Everything that is kept, as it stood at one moment, while others go on writing: a repeatable-read
 * transaction on PostgreSQL, a read transaction of the write-ahead log on SQLite.
 */
public final class Snapshot implements AutoCloseable {
  private static final int ROWS_AT_A_TIME = 1000;

  private final Connection connection;
  private final List<TableShape> tables;
  private final String schema;
  private final boolean own;

  private Snapshot(Connection connection, boolean own) throws SQLException {
    this.connection = connection;
    this.own = own;
    this.tables = TableShapes.of(connection);
    this.schema = version(connection);
  }

  /** Takes one of a database that may be in use. */
  public static Snapshot of(Database database) {
    try {
      Connection connection = DriverManager.getConnection(database.urlForReading());
      try {
        connection.setAutoCommit(false);
        if (database.onServer()) {
          connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
          connection.setReadOnly(true);
        }
        return new Snapshot(connection, true);
      } catch (SQLException | RuntimeException failed) {
        connection.close();
        throw failed;
      }
    } catch (SQLException failed) {
      throw new IllegalStateException("The database cannot be read", failed);
    }
  }

  /** Looks from within a transaction that is still open; closing it leaves that one alone. */
  static Snapshot within(Connection connection) throws SQLException {
    return new Snapshot(connection, false);
  }

  private static String version(Connection connection) throws SQLException {
    try (Statement ask = connection.createStatement();
        ResultSet rows =
            ask.executeQuery(
                "SELECT version FROM flyway_schema_history WHERE version IS NOT NULL")) {
      int newest = 0;
      while (rows.next()) {
        newest = Math.max(newest, Integer.parseInt(rows.getString(1)));
      }
      return Integer.toString(newest);
    }
  }

  /** Ends of the chains in it. */
  public Seal seal() {
    try {
      return Seal.of(connection);
    } catch (SQLException failed) {
      throw new IllegalStateException("The ends of the chains cannot be read", failed);
    }
  }

  public List<TableShape> tables() {
    return tables;
  }

  /** Version of the schema. */
  public String schema() {
    return schema;
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
            .map(name -> quoted(name) + binary(table, name))
            .collect(Collectors.joining(", "));
    String sql = "SELECT " + columns + " FROM " + quoted(table.name()) + " ORDER BY " + order;
    try (Statement ask = connection.createStatement()) {
      ask.setFetchSize(ROWS_AT_A_TIME);
      try (ResultSet found = ask.executeQuery(sql)) {
        while (found.next()) {
          rows.row(values(table, found));
        }
      }
    } catch (SQLException failed) {
      throw new IllegalStateException("Table " + table.name() + " cannot be read", failed);
    }
  }

  private String binary(TableShape table, String column) {
    boolean text =
        table.columns().stream()
            .anyMatch(one -> one.name().equals(column) && one.kind() == TableShape.Kind.TEXT);
    try {
      boolean server = connection.getMetaData().getURL().startsWith("jdbc:postgresql:");
      return text && server ? " COLLATE \"C\"" : "";
    } catch (SQLException failed) {
      throw new IllegalStateException(failed);
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
    if (!own) {
      return;
    }
    try {
      connection.rollback();
      connection.close();
    } catch (SQLException alreadyGone) {
      throw new IllegalStateException(alreadyGone);
    }
  }
}
