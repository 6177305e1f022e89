package kerfwright.app.storage.stock;

import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.locks.Lock;
import java.util.function.Supplier;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Sql;
import kerfwright.app.storage.Where;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.DrawerConflict;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.DrawerPage;
import kerfwright.practice.drawer.DrawerQuery;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;

/** The drawer in a database. */
public final class StoredDrawer implements Drawer {
  private static final String SELECT = "SELECT * FROM stock_item WHERE ";
  private static final String SORTED = " ORDER BY sort_key, id";

  private final Sql sql;
  private final Lock turn;

  public StoredDrawer(Database database) {
    this.sql = database.sql();
    this.turn = database.turn();
  }

  @Override
  public <T> T inTurn(Supplier<T> all) {
    turn.lock();
    try {
      return sql.inTransaction(
          () -> {
            holdBack(sql);
            return all.get();
          });
    } finally {
      turn.unlock();
    }
  }

  /** Until the transaction is over, others who write wait here. */
  public static void holdBack(Sql sql) {
    sql.change("UPDATE stock_revision SET revision = revision");
  }

  @Override
  public DrawerPage list(DrawerQuery query) {
    Where where =
        new Where()
            .and("removed = ?", 0)
            .and("kind = ?", query.kind())
            .and("shape = ?", query.shape())
            .and("shank = ?", query.shank() == null ? null : query.shank().name())
            .and("state = ?", query.state());
    for (String word : query.words().split("\\s+", 10)) {
      where.has("words", word.isEmpty() ? null : word);
    }
    String ids = "SELECT id FROM stock_item WHERE " + where.text() + SORTED + " LIMIT ? OFFSET ?";
    long found =
        sql.number("SELECT count(*) FROM stock_item WHERE " + where.text(), where.values());
    return new DrawerPage(
        sql.list(
            ItemRow::read,
            SELECT + "id IN (" + ids + ")" + SORTED,
            where.values(query.pageSize(), (long) query.page() * query.pageSize())),
        (int) found);
  }

  @Override
  public Optional<StockItem> find(UUID id) {
    return sql.one(ItemRow::read, SELECT + "id = ?", id);
  }

  @Override
  public Optional<StockItem> labelled(String label) {
    return sql.one(ItemRow::read, SELECT + "removed = 0 AND label = ?", label);
  }

  @Override
  public Set<String> taken(Collection<String> labels) {
    return taken(sql, labels);
  }

  private static Set<String> taken(Sql sql, Collection<String> labels) {
    return new HashSet<>(
        sql.amongst(
            row -> row.getString("label"),
            "SELECT label FROM stock_item WHERE removed = 0 AND label IN (<in>)",
            labels));
  }

  @Override
  public List<StockItem> in(InstrumentState state) {
    return sql.list(ItemRow::read, SELECT + "removed = 0 AND state = ?" + SORTED, state);
  }

  @Override
  public Map<InstrumentState, Integer> pieces() {
    Map<InstrumentState, Integer> pieces = new EnumMap<>(InstrumentState.class);
    pieces.putAll(
        sql.map(
            row -> ItemJson.state(row.getString("state")),
            row -> row.getInt("pieces"),
            "SELECT state, sum(pieces) AS pieces FROM stock_item WHERE removed = 0"
                + " GROUP BY state"));
    return pieces;
  }

  @Override
  public List<DrawerEntry> history(UUID item) {
    return sql.list(
        EntryRow::read, "SELECT * FROM stock_entry WHERE item_id = ? ORDER BY id", item);
  }

  @Override
  public List<DrawerEntry> batch(UUID batch) {
    return sql.list(EntryRow::read, "SELECT * FROM stock_entry WHERE batch = ? ORDER BY id", batch);
  }

  @Override
  public boolean undone(UUID batch) {
    return sql.number("SELECT count(*) FROM stock_entry WHERE undoes = ?", batch) > 0;
  }

  @Override
  public long revision() {
    return sql.number("SELECT revision FROM stock_revision");
  }

  @Override
  public void write(List<DrawerEntry> entries) throws DrawerConflict {
    turn.lock();
    try {
      sql.useTransaction(() -> write(sql, entries));
    } finally {
      turn.unlock();
    }
  }

  /** As part of a larger change. */
  public static void write(Sql sql, List<DrawerEntry> entries) throws DrawerConflict {
    new DrawerWrite(sql, entries).run(labels -> taken(sql, labels));
  }
}
