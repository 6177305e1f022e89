package kerfwright.app.storage.stock;

import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.locks.Lock;
import java.util.function.Supplier;
import kerfwright.app.storage.Database;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.DrawerConflict;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.DrawerPage;
import kerfwright.practice.drawer.DrawerQuery;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.Query;

/** The drawer in a database. */
public final class StoredDrawer implements Drawer {
  private final Jdbi jdbi;
  private final Lock turn;

  public StoredDrawer(Database database) {
    this.jdbi = database.jdbi();
    this.turn = database.turn();
  }

  @Override
  public <T> T inTurn(Supplier<T> all) {
    turn.lock();
    try {
      // what is read and written within, by whichever storage of this database, joins in
      return jdbi.inTransaction(
          handle -> {
            holdBack(handle);
            return all.get();
          });
    } finally {
      turn.unlock();
    }
  }

  /** Until the transaction is over, others who write wait here. */
  public static void holdBack(Handle handle) {
    handle.execute("UPDATE stock_revision SET revision = revision");
  }

  @Override
  public DrawerPage list(DrawerQuery query) {
    Map<String, String> values = new LinkedHashMap<>();
    String where = where(query, values);
    return jdbi.withHandle(
        handle -> {
          Query count = handle.createQuery("SELECT count(*) FROM stock_item WHERE " + where);
          values.forEach(count::bind);
          int found = count.mapTo(Integer.class).one();
          Query page =
              handle.createQuery(
                  "SELECT * FROM stock_item WHERE id IN (SELECT id FROM stock_item WHERE "
                      + where
                      + " ORDER BY sort_key, id LIMIT :most OFFSET :skip)"
                      + " ORDER BY sort_key, id");
          values.forEach(page::bind);
          page.bind("most", query.pageSize()).bind("skip", (long) query.page() * query.pageSize());
          return new DrawerPage(page.map((row, context) -> ItemRow.read(row)).list(), found);
        });
  }

  private static String where(DrawerQuery query, Map<String, String> values) {
    StringBuilder where = new StringBuilder("removed = 0");
    if (query.kind() != null) {
      where.append(" AND kind = :kind");
      values.put("kind", query.kind());
    }
    if (query.shape() != null) {
      where.append(" AND shape = :shape");
      values.put("shape", query.shape().id());
    }
    if (query.shank() != null) {
      where.append(" AND shank = :shank");
      values.put("shank", query.shank().name());
    }
    if (query.state() != null) {
      where.append(" AND state = :state");
      values.put("state", query.state().id());
    }
    int word = 0;
    for (String one : query.words().toLowerCase(Locale.ROOT).split("\\s+", 10)) {
      if (!one.isEmpty()) {
        String name = "word" + word++;
        where.append(" AND words LIKE :").append(name).append(" ESCAPE '!'");
        String plain = one.replace("!", "!!").replace("%", "!%").replace("_", "!_");
        values.put(name, "%" + plain + "%");
      }
    }
    return where.toString();
  }

  @Override
  public Optional<StockItem> find(UUID id) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT * FROM stock_item WHERE id = :id")
                .bind("id", id.toString())
                .map((row, context) -> ItemRow.read(row))
                .findOne());
  }

  @Override
  public Optional<StockItem> labelled(String label) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT * FROM stock_item WHERE removed = 0 AND label = :label")
                .bind("label", label)
                .map((row, context) -> ItemRow.read(row))
                .findOne());
  }

  @Override
  public Set<String> taken(Collection<String> labels) {
    return jdbi.withHandle(handle -> taken(handle, labels));
  }

  private static Set<String> taken(Handle handle, Collection<String> labels) {
    List<String> wanted = List.copyOf(labels);
    Set<String> taken = new HashSet<>();
    int step = 500;
    for (int from = 0; from < wanted.size(); from += step) {
      List<String> some = wanted.subList(from, Math.min(wanted.size(), from + step));
      taken.addAll(
          handle
              .createQuery("SELECT label FROM stock_item WHERE removed = 0 AND label IN (<labels>)")
              .bindList("labels", some)
              .mapTo(String.class)
              .list());
    }
    return taken;
  }

  @Override
  public List<StockItem> in(InstrumentState state) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(
                    "SELECT * FROM stock_item WHERE removed = 0 AND state = :state"
                        + " ORDER BY sort_key, id")
                .bind("state", state.id())
                .map((row, context) -> ItemRow.read(row))
                .list());
  }

  @Override
  public Map<InstrumentState, Integer> pieces() {
    Map<InstrumentState, Integer> pieces = new EnumMap<>(InstrumentState.class);
    jdbi.useHandle(
        handle ->
            handle
                .createQuery(
                    "SELECT state, sum(pieces) AS pieces FROM stock_item WHERE removed = 0"
                        + " GROUP BY state")
                .map(
                    (row, context) ->
                        Map.entry(ItemJson.state(row.getString("state")), row.getInt("pieces")))
                .forEach(one -> pieces.put(one.getKey(), one.getValue())));
    return pieces;
  }

  @Override
  public List<DrawerEntry> history(UUID item) {
    return entries("item_id", item);
  }

  @Override
  public List<DrawerEntry> batch(UUID batch) {
    return entries("batch", batch);
  }

  private List<DrawerEntry> entries(String column, UUID id) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT * FROM stock_entry WHERE " + column + " = :id ORDER BY id")
                .bind("id", id.toString())
                .map((row, context) -> EntryRow.read(row))
                .list());
  }

  @Override
  public boolean undone(UUID batch) {
    return jdbi.withHandle(
        handle ->
            handle
                    .createQuery("SELECT count(*) FROM stock_entry WHERE undoes = :batch")
                    .bind("batch", batch.toString())
                    .mapTo(Integer.class)
                    .one()
                > 0);
  }

  @Override
  public long revision() {
    return jdbi.withHandle(
        handle ->
            handle.createQuery("SELECT revision FROM stock_revision").mapTo(Long.class).one());
  }

  @Override
  public void write(List<DrawerEntry> entries) throws DrawerConflict {
    turn.lock();
    try {
      jdbi.useTransaction(handle -> write(handle, entries));
    } finally {
      turn.unlock();
    }
  }

  /** As part of a larger change. */
  public static void write(Handle handle, List<DrawerEntry> entries) throws DrawerConflict {
    new DrawerWrite(handle, entries).run(StoredDrawer::taken);
  }
}
