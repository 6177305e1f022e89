package kerfwright.app.storage;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;

/** Puts rows into a database that is as empty as a new one, in one transaction. */
public final class Refill implements AutoCloseable {
  private static final int ROWS_AT_A_TIME = 1000;

  private final Handle handle;
  private final Snapshot filled;

  private Refill(Database database) {
    this.handle = database.jdbi().open().begin();
    this.filled = Snapshot.within(handle, database.onServer());
  }

  /** Begins: whatever a new database holds is taken out. */
  public static Refill of(Database database) {
    Refill refill = new Refill(database);
    if (!database.onServer()) {
      refill.handle.execute("PRAGMA defer_foreign_keys = ON");
    }
    List<TableShape> namingFirst = new ArrayList<>(refill.tables());
    Collections.reverse(namingFirst);
    namingFirst.forEach(
        table -> refill.handle.execute("DELETE FROM " + Snapshot.quoted(table.name())));
    return refill;
  }

  public List<TableShape> tables() {
    return filled.tables();
  }

  /** Gives rows one after the other, null after the last. */
  @FunctionalInterface
  public interface Source {
    @Nullable Object @Nullable [] next() throws IOException;
  }

  /** Fills one table; tables come in the order of {@link #tables}. */
  public void fill(TableShape table, Source rows) throws IOException {
    String columns = table.names().stream().map(Snapshot::quoted).collect(Collectors.joining(", "));
    String places = String.join(", ", Collections.nCopies(table.names().size(), "?"));
    String insert =
        "INSERT INTO %s (%s) VALUES (%s)".formatted(Snapshot.quoted(table.name()), columns, places);
    PreparedBatch batch = handle.prepareBatch(insert);
    for (@Nullable Object[] row = rows.next(); row != null; row = rows.next()) {
      batch.add(row);
      if (batch.size() == ROWS_AT_A_TIME) {
        batch.execute();
        batch = handle.prepareBatch(insert);
      }
    }
    batch.execute();
  }

  /** What stands there now, before it is kept. */
  public Snapshot filled() {
    return filled;
  }

  /** Keeps everything. */
  public void keep() {
    handle.commit();
  }

  @Override
  public void close() {
    filled.close();
  }
}
