package kerfwright.app.storage.stock;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import kerfwright.app.storage.Sql;
import kerfwright.app.storage.StoredLedger;
import kerfwright.practice.drawer.DrawerConflict;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.StockItem;

/** One change within its transaction. */
final class DrawerWrite {
  private final Sql sql;
  private final List<DrawerEntry> entries;

  DrawerWrite(Sql sql, List<DrawerEntry> entries) {
    this.sql = sql;
    this.entries = entries;
  }

  void run(Function<Collection<String>, Set<String>> taken) throws DrawerConflict {
    // holds this row until the end: other writers wait here, so nothing checked below can change
    sql.change("UPDATE stock_revision SET revision = revision + 1");
    refuseTakenLabels(taken);
    change();
    sql.addAll(
        entries.stream()
            .filter(one -> one.before() == null)
            .map(one -> ItemRow.of(one.after()))
            .toList());
    sql.addAll(entries.stream().map(EntryRow::of).toList());
    new StoredLedger(sql).entries(entries.stream().map(DrawerEntry::id).toList());
  }

  private void refuseTakenLabels(Function<Collection<String>, Set<String>> taken)
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
    Set<String> known = taken.apply(newlyNamed.stream().map(StockItem::label).toList());
    for (StockItem item : newlyNamed) {
      if (!known.add(item.label())) {
        throw new DrawerConflict(item.id(), item.label(), DrawerConflict.Kind.LABEL_TAKEN);
      }
    }
  }

  private void change() throws DrawerConflict {
    List<StockItem> changed =
        entries.stream().filter(one -> one.before() != null).map(DrawerEntry::after).toList();
    int at = sql.nextAll(changed.stream().map(ItemRow::of).toList()).indexOf(0);
    if (at >= 0) {
      StockItem item = changed.get(at);
      throw new DrawerConflict(item.id(), item.label(), DrawerConflict.Kind.CHANGED_MEANWHILE);
    }
  }
}
