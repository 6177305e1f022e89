package kerfwright.app.storage.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.UUID;
import kerfwright.app.storage.Row;
import kerfwright.practice.drawer.DrawerEntry;

/** One line of history as a row of its table, both ways. */
final class EntryRow {
  private EntryRow() {}

  static DrawerEntry read(ResultSet row) throws SQLException {
    String before = row.getString("item_before");
    String undoes = row.getString("undoes");
    return new DrawerEntry(
        Row.id(row, "id"),
        Row.id(row, "batch"),
        Row.time(row, "at_micros"),
        DrawerEntry.What.valueOf(row.getString("what")),
        row.getString("note"),
        before == null ? null : ItemJson.item(before),
        ItemJson.item(row.getString("item_after")),
        undoes == null ? null : UUID.fromString(undoes));
  }

  static Row of(DrawerEntry entry) {
    return new Row("stock_entry")
        .with("id", entry.id())
        .with("batch", entry.batch())
        .with("item_id", entry.after().id())
        .with("at_micros", entry.at())
        .with("what", entry.what().name())
        .with("note", entry.note())
        .with("item_before", entry.before() == null ? null : ItemJson.text(entry.before()))
        .with("item_after", ItemJson.text(entry.after()))
        .with("undoes", entry.undoes());
  }
}
