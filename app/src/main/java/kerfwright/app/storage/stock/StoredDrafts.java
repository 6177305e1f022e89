package kerfwright.app.storage.stock;

import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.stocklist.Drafts;
import kerfwright.app.stocklist.ListTable;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;
import kerfwright.app.storage.StoredDocument;

/** Lists handed in, in the database. */
public final class StoredDrafts implements Drafts {
  private static final int KEPT = 10;

  private final Sql sql;
  private final Clock clock;

  public StoredDrafts(Database database, Clock clock) {
    this.sql = database.sql();
    this.clock = clock;
  }

  @Override
  public void keep(UUID id, String name, ListTable table) {
    String list = StoredDocument.LIST.text(table);
    sql.useTransaction(
        () -> {
          sql.add(
              new Row("import_draft")
                  .with("id", id)
                  .with("at_micros", clock.instant())
                  .with("name", name)
                  .with("list", list));
          sql.change(
              "DELETE FROM import_draft WHERE id NOT IN"
                  + " (SELECT id FROM import_draft ORDER BY id DESC LIMIT ?)",
              KEPT);
        });
  }

  @Override
  public Optional<Draft> find(UUID id) {
    return sql.one(
        row ->
            new Draft(
                row.getString("name"),
                StoredDocument.LIST.read(row.getString("list"), ListTable.class),
                Row.perhaps(row.getString("batch"), UUID::fromString)),
        "SELECT name, list, batch FROM import_draft WHERE id = ?",
        id);
  }

  @Override
  public void takenOver(UUID id, UUID batch) {
    sql.change("UPDATE import_draft SET batch = ? WHERE id = ?", batch, id);
  }
}
