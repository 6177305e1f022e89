package kerfwright.app.storage.stock;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;
import kerfwright.app.storage.StoredDocument;
import kerfwright.app.storage.StoredLedger;
import kerfwright.practice.drawer.DrawerConflict;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.LoadConflict;
import kerfwright.practice.reprocessing.LoadEvent;
import kerfwright.practice.reprocessing.Loads;
import kerfwright.practice.reprocessing.Pouch;
import org.jspecify.annotations.Nullable;

/** Steriliser loads in a database. */
public final class StoredLoads implements Loads {
  private final Sql sql;

  public StoredLoads(Database database) {
    this.sql = database.sql();
  }

  private List<Load> some(String where, Object... values) {
    return sql.list(
        row -> StoredDocument.LOAD.read(row.getString("load"), Load.class),
        "SELECT load FROM steriliser_load WHERE " + where,
        values);
  }

  @Override
  public Optional<Load> find(UUID id) {
    return some("id = ?", id).stream().findFirst();
  }

  @Override
  public Optional<Load> named(String name) {
    return some("name = ?", name.strip().toUpperCase(Locale.ROOT)).stream().findFirst();
  }

  @Override
  public Optional<Load> holding(UUID pouch) {
    return some("id IN (SELECT load_id FROM pouch WHERE id = ?)", pouch).stream().findFirst();
  }

  @Override
  public List<Load> running() {
    return some("state = 'RUNNING' ORDER BY id");
  }

  @Override
  public List<Load> newest(int most) {
    return some("started_micros > 0 ORDER BY id DESC LIMIT ?", most);
  }

  @Override
  public List<Load> of(String steriliser, Instant from, Instant before) {
    return some(
        "steriliser = ? AND started_micros >= ? AND started_micros < ? ORDER BY id DESC",
        steriliser,
        from,
        before);
  }

  @Override
  public List<Load> withFailedSpores(String steriliser) {
    return some(
        "steriliser = ? AND load LIKE ? ORDER BY id DESC",
        steriliser,
        "%\"indicator\":\"spores\",\"result\":\"failed\"%");
  }

  @Override
  public Map<UUID, UUID> lastLoads(Collection<UUID> items) {
    Map<UUID, UUID> last = new HashMap<>();
    sql.amongst(
            row -> Map.entry(Row.id(row, "item_id"), Row.id(row, "load_id")),
            "SELECT c.item_id, p.load_id FROM pouch_content c JOIN pouch p ON p.id ="
                + " c.pouch_id WHERE c.item_id IN (<in>) ORDER BY p.id",
            items)
        .forEach(one -> last.put(one.getKey(), one.getValue()));
    return last;
  }

  @Override
  public Map<UUID, Instant> since(InstrumentState state) {
    return sql.map(
        row -> Row.id(row, "item_id"),
        row -> Row.time(row, "at_micros"),
        "SELECT e.item_id, max(e.at_micros) AS at_micros FROM stock_entry e JOIN"
            + " stock_item i ON i.id = e.item_id WHERE i.removed = 0 AND i.state = ?"
            + " AND e.what <> 'EDITED' GROUP BY e.item_id",
        state);
  }

  @Override
  public void write(Load load, List<DrawerEntry> moves) throws LoadConflict, DrawerConflict {
    boolean written =
        sql.inTransaction(
            () -> {
              // holds writers in line, as every change of the drawer does
              sql.change("UPDATE stock_revision SET revision = revision + 1");
              boolean done = load.version() == 1 ? added(load) : sql.next(row(load));
              if (done) {
                new StoredLedger(sql).load(load.id());
                if (!moves.isEmpty()) {
                  StoredDrawer.write(sql, moves);
                }
              }
              return done;
            });
    if (!written) {
      throw new LoadConflict(load.name());
    }
  }

  private boolean added(Load load) {
    if (sql.number("SELECT count(*) FROM steriliser_load WHERE name = ?", load.name()) > 0) {
      return false;
    }
    sql.add(row(load));
    List<Row> pouches = new ArrayList<>();
    List<Row> contents = new ArrayList<>();
    for (Pouch pouch : load.pouches()) {
      pouches.add(
          new Row("pouch")
              .with("id", pouch.id())
              .with("code", pouch.code())
              .with("load_id", load.id())
              .with("last_day", pouch.lastDay()));
      for (Pouch.Content one : pouch.contents()) {
        contents.add(
            new Row("pouch_content")
                .with("item_id", one.item())
                .with("started_micros", load.started())
                .with("pouch_id", pouch.id()));
      }
    }
    sql.addAll(pouches);
    sql.addAll(contents);
    return true;
  }

  private static Row row(Load load) {
    return new Row("steriliser_load")
        .with("id", load.id())
        .with("version", load.version())
        .with("name", load.name())
        .with("steriliser", load.steriliser())
        .with("started_micros", load.started())
        .with("state", load.state().name())
        .with("decided_micros", decided(load))
        .with("load", StoredDocument.LOAD.text(load));
  }

  private static @Nullable Instant decided(Load load) {
    return load.state() == Load.State.RUNNING
        ? null
        : load.events().stream()
            .filter(
                event ->
                    event.what() == LoadEvent.What.RELEASED
                        || event.what() == LoadEvent.What.FAILED)
            .findFirst()
            .map(LoadEvent::at)
            .orElse(null);
  }
}
