package kerfwright.app.storage.stock;

import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.stocklist.Drafts;
import kerfwright.app.stocklist.ListTable;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.StoredDocument;

/** Lists handed in, in the database. */
public final class StoredDrafts implements Drafts {
  private static final int KEPT = 10;

  private final Database database;
  private final Clock clock;

  public StoredDrafts(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  @Override
  public void keep(UUID id, String name, ListTable table) {
    String list = StoredDocument.LIST.text(table);
    database
        .jdbi()
        .useTransaction(
            handle -> {
              new Row("import_draft")
                  .with("id", id)
                  .with("at_micros", clock.instant())
                  .with("name", name)
                  .with("list", list)
                  .add(handle);
              handle.execute(
                  "DELETE FROM import_draft WHERE id NOT IN"
                      + " (SELECT id FROM import_draft ORDER BY id DESC LIMIT "
                      + KEPT
                      + ")");
            });
  }

  @Override
  public Optional<Draft> find(UUID id) {
    return database
        .jdbi()
        .withHandle(
            handle ->
                handle
                    .createQuery("SELECT name, list, batch FROM import_draft WHERE id = :id")
                    .bind("id", id.toString())
                    .map(
                        (row, context) -> {
                          String batch = row.getString("batch");
                          return new Draft(
                              row.getString("name"),
                              StoredDocument.LIST.read(row.getString("list"), ListTable.class),
                              batch == null ? null : UUID.fromString(batch));
                        })
                    .findOne());
  }

  @Override
  public void takenOver(UUID id, UUID batch) {
    database
        .jdbi()
        .useHandle(
            handle ->
                handle
                    .createUpdate("UPDATE import_draft SET batch = :batch WHERE id = :id")
                    .bind("batch", batch.toString())
                    .bind("id", id.toString())
                    .execute());
  }
}
