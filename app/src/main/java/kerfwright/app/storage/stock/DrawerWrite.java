package kerfwright.app.storage.stock;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import kerfwright.app.storage.StoredLedger;
import kerfwright.practice.drawer.DrawerConflict;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.StockItem;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** One change within its transaction. */
final class DrawerWrite {
  private static final List<String> COLUMNS =
      List.of(
          "version",
          "label",
          "sort_key",
          "pieces",
          "fields",
          "kind",
          "shape",
          "shank",
          "words",
          "single_use",
          "place",
          "price",
          "uses",
          "sterilisations",
          "cut_mm3",
          "state",
          "removed");
  private static final String INSERT =
      "INSERT INTO stock_item (id, "
          + String.join(", ", COLUMNS)
          + ") VALUES (:id, "
          + String.join(", ", COLUMNS.stream().map(name -> ":" + name).toList())
          + ")";
  private static final String UPDATE =
      "UPDATE stock_item SET "
          + String.join(", ", COLUMNS.stream().map(name -> name + " = :" + name).toList())
          + " WHERE id = :id AND version = :version_before";
  private static final String LINE =
      "INSERT INTO stock_entry (id, batch, item_id, at_micros, what, note, item_before, item_after,"
          + " undoes) VALUES (:id, :batch, :item_id, :at_micros, :what, :note, :item_before,"
          + " :item_after, :undoes)";

  private final Handle handle;
  private final List<DrawerEntry> entries;

  DrawerWrite(Handle handle, List<DrawerEntry> entries) {
    this.handle = handle;
    this.entries = entries;
  }

  void run(BiFunction<Handle, Collection<String>, Set<String>> taken) throws DrawerConflict {
    // holds this row until the end: other writers wait here, so nothing checked below can change
    handle.execute("UPDATE stock_revision SET revision = revision + 1");
    refuseTakenLabels(taken);
    change();
    add();
    PreparedBatch lines = handle.prepareBatch(LINE);
    entries.forEach(entry -> EntryRow.add(lines, entry));
    lines.execute();
    StoredLedger.entries(handle, entries.stream().map(DrawerEntry::id).toList());
  }

  private void refuseTakenLabels(BiFunction<Handle, Collection<String>, Set<String>> taken)
      throws DrawerConflict {
    List<StockItem> newlyNamed = new ArrayList<>();
    for (DrawerEntry entry : entries) {
      StockItem before = entry.before();
      StockItem after = entry.after();
      boolean named = before != null && !before.removed() && before.label().equals(after.label());
      if (!after.removed() && !named) {
        newlyNamed.add(after);
      }
    }
    Set<String> known = taken.apply(handle, newlyNamed.stream().map(StockItem::label).toList());
    for (StockItem item : newlyNamed) {
      if (!known.add(item.label())) {
        throw new DrawerConflict(item.id(), item.label(), DrawerConflict.Kind.LABEL_TAKEN);
      }
    }
  }

  private void change() throws DrawerConflict {
    List<DrawerEntry> changed = entries.stream().filter(one -> one.before() != null).toList();
    if (changed.isEmpty()) {
      return;
    }
    PreparedBatch updates = handle.prepareBatch(UPDATE);
    for (DrawerEntry entry : changed) {
      ItemRow.bind(updates, entry.after());
      updates.bind("version_before", entry.after().version() - 1).add();
    }
    int[] counts = updates.execute();
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] != 1) {
        StockItem item = changed.get(i).after();
        throw new DrawerConflict(item.id(), item.label(), DrawerConflict.Kind.CHANGED_MEANWHILE);
      }
    }
  }

  private void add() {
    List<DrawerEntry> added = entries.stream().filter(one -> one.before() == null).toList();
    if (added.isEmpty()) {
      return;
    }
    PreparedBatch inserts = handle.prepareBatch(INSERT);
    for (DrawerEntry entry : added) {
      ItemRow.bind(inserts, entry.after());
      inserts.add();
    }
    inserts.execute();
  }
}
