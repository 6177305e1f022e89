package kerfwright.app.storage;

import java.io.IOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Types;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Puts rows into a database that is as empty as a new one, in one transaction. */
public final class Refill implements AutoCloseable {
  private static final int ROWS_AT_A_TIME = 1000;

  private final Connection connection;
  private final List<TableShape> tables;

  private Refill(Connection connection) throws SQLException {
    this.connection = connection;
    this.tables = TableShapes.of(connection);
  }

  /** Begins: whatever a new database holds is taken out. */
  public static Refill of(Database database) {
    try {
      Connection connection = database.connection();
      connection.setAutoCommit(false);
      Refill refill = new Refill(connection);
      refill.clear(!database.onServer());
      return refill;
    } catch (SQLException failed) {
      throw new IllegalStateException("The database cannot be written", failed);
    }
  }

  private void clear(boolean sqlite) throws SQLException {
    List<TableShape> namingFirst = new ArrayList<>(tables);
    java.util.Collections.reverse(namingFirst);
    try (Statement statement = connection.createStatement()) {
      if (sqlite) {
        statement.execute("PRAGMA defer_foreign_keys = ON");
      }
      for (TableShape table : namingFirst) {
        statement.execute("DELETE FROM " + Snapshot.quoted(table.name()));
      }
    }
  }

  public List<TableShape> tables() {
    return tables;
  }

  /** Gives rows one after the other, null after the last. */
  @FunctionalInterface
  public interface Source {
    @Nullable Object @Nullable [] next() throws IOException;
  }

  /** Fills one table; tables come in the order of {@link #tables}. */
  public void fill(TableShape table, Source rows) throws IOException {
    String columns = table.names().stream().map(Snapshot::quoted).collect(Collectors.joining(", "));
    String places = String.join(", ", java.util.Collections.nCopies(table.names().size(), "?"));
    String sql =
        "INSERT INTO "
            + Snapshot.quoted(table.name())
            + " ("
            + columns
            + ") VALUES ("
            + places
            + ")";
    try (PreparedStatement insert = connection.prepareStatement(sql)) {
      int waiting = 0;
      for (@Nullable Object[] row = rows.next(); row != null; row = rows.next()) {
        bind(insert, table, row);
        insert.addBatch();
        if (++waiting == ROWS_AT_A_TIME) {
          insert.executeBatch();
          waiting = 0;
        }
      }
      insert.executeBatch();
    } catch (SQLException failed) {
      throw new IllegalStateException("Table " + table.name() + " cannot be filled", failed);
    }
  }

  private static void bind(PreparedStatement insert, TableShape table, @Nullable Object[] row)
      throws SQLException {
    for (int i = 0; i < row.length; i++) {
      Object value = row[i];
      switch (table.columns().get(i).kind()) {
        case TEXT -> insert.setString(i + 1, (String) value);
        case WHOLE -> set(insert, i + 1, value, Types.BIGINT);
        case REAL -> set(insert, i + 1, value, Types.DOUBLE);
        case BYTES -> insert.setBytes(i + 1, (byte[]) value);
      }
    }
  }

  private static void set(PreparedStatement insert, int place, @Nullable Object value, int type)
      throws SQLException {
    if (value == null) {
      insert.setNull(place, type);
    } else {
      insert.setObject(place, value);
    }
  }

  /** What stands there now, before it is kept. */
  public Snapshot filled() {
    try {
      return Snapshot.within(connection);
    } catch (SQLException failed) {
      throw new IllegalStateException(failed);
    }
  }

  /** Whether the chains in it hold, before it is kept. */
  public Chains chains() {
    try {
      return Chains.within(connection);
    } catch (SQLException failed) {
      throw new IllegalStateException(failed);
    }
  }

  /** Keeps everything. */
  public void keep() {
    try {
      connection.commit();
    } catch (SQLException failed) {
      throw new IllegalStateException("The database does not take it", failed);
    }
  }

  @Override
  public void close() {
    try {
      connection.rollback();
      connection.setAutoCommit(true);
      connection.close();
    } catch (SQLException failed) {
      throw new IllegalStateException(failed);
    }
  }
}
