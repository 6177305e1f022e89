package kerfwright.app.storage.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.UUID;
import kerfwright.app.storage.Row;
import kerfwright.practice.drawer.DrawerEntry;
import org.jdbi.v3.core.statement.PreparedBatch;

/** One line of history as a row of its table, both ways. */
final class EntryRow {
  private EntryRow() {}

  static DrawerEntry read(ResultSet row) throws SQLException {
    String before = row.getString("item_before");
    String undoes = row.getString("undoes");
    return new DrawerEntry(
        UUID.fromString(row.getString("id")),
        UUID.fromString(row.getString("batch")),
        Row.instant(row.getLong("at_micros")),
        DrawerEntry.What.valueOf(row.getString("what")),
        row.getString("note"),
        before == null ? null : ItemJson.item(before),
        ItemJson.item(row.getString("item_after")),
        undoes == null ? null : UUID.fromString(undoes));
  }

  static void add(PreparedBatch batch, DrawerEntry entry) {
    batch
        .bind("id", entry.id().toString())
        .bind("batch", entry.batch().toString())
        .bind("item_id", entry.after().id().toString())
        .bind("at_micros", Row.micros(entry.at()))
        .bind("what", entry.what().name())
        .bind("note", entry.note())
        .bind("item_before", entry.before() == null ? null : ItemJson.text(entry.before()))
        .bind("item_after", ItemJson.text(entry.after()))
        .bind("undoes", entry.undoes() == null ? null : entry.undoes().toString())
        .add();
  }
}
