package kerfwright.app.storage.stock;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
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
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.SqlStatement;

/** Steriliser loads in a database. */
public final class StoredLoads implements Loads {
  private static final String SELECT = "SELECT load FROM steriliser_load WHERE ";

  private final Jdbi jdbi;

  public StoredLoads(Database database) {
    this.jdbi = database.jdbi();
  }

  @Override
  public Optional<Load> find(UUID id) {
    return some("id = :id", Map.of("id", id.toString())).stream().findFirst();
  }

  @Override
  public Optional<Load> named(String name) {
    return some("name = :name", Map.of("name", name.strip().toUpperCase(Locale.ROOT))).stream()
        .findFirst();
  }

  @Override
  public Optional<Load> holding(UUID pouch) {
    return some(
            "id IN (SELECT load_id FROM pouch WHERE id = :pouch)",
            Map.of("pouch", pouch.toString()))
        .stream()
        .findFirst();
  }

  @Override
  public List<Load> running() {
    return some("state = 'RUNNING' ORDER BY id", Map.of());
  }

  @Override
  public List<Load> newest(int most) {
    return some("started_micros > 0 ORDER BY id DESC LIMIT :most", Map.of("most", most));
  }

  @Override
  public List<Load> of(String steriliser, Instant from, Instant before) {
    return some(
        "steriliser = :steriliser AND started_micros >= :from AND started_micros < :before"
            + " ORDER BY id DESC",
        Map.of(
            "steriliser", steriliser,
            "from", Row.micros(from),
            "before", Row.micros(before)));
  }

  @Override
  public List<Load> withFailedSpores(String steriliser) {
    return some(
        "steriliser = :steriliser AND load LIKE :failed ORDER BY id DESC",
        Map.of(
            "steriliser",
            steriliser,
            "failed",
            "%\"indicator\":\"spores\",\"result\":\"failed\"%"));
  }

  private List<Load> some(String where, Map<String, Object> values) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(SELECT + where)
                .bindMap(values)
                .map((row, context) -> StoredDocument.LOAD.read(row.getString("load"), Load.class))
                .list());
  }

  @Override
  public Map<UUID, UUID> lastLoads(Collection<UUID> items) {
    Map<UUID, UUID> last = new HashMap<>();
    if (items.isEmpty()) {
      return last;
    }
    jdbi.useHandle(
        handle ->
            handle
                .createQuery(
                    "SELECT c.item_id, p.load_id FROM pouch_content c JOIN pouch p ON p.id ="
                        + " c.pouch_id WHERE c.item_id IN (<items>) ORDER BY p.id")
                .bindList("items", items.stream().map(UUID::toString).toList())
                .map(
                    (row, context) ->
                        Map.entry(
                            UUID.fromString(row.getString("item_id")),
                            UUID.fromString(row.getString("load_id"))))
                .forEach(one -> last.put(one.getKey(), one.getValue())));
    return last;
  }

  @Override
  public Map<UUID, Instant> since(InstrumentState state) {
    Map<UUID, Instant> since = new HashMap<>();
    jdbi.useHandle(
        handle ->
            handle
                .createQuery(
                    "SELECT e.item_id, max(e.at_micros) AS at_micros FROM stock_entry e JOIN"
                        + " stock_item i ON i.id = e.item_id WHERE i.removed = 0 AND i.state ="
                        + " :state AND e.what <> 'EDITED' GROUP BY e.item_id")
                .bind("state", state.id())
                .map(
                    (row, context) ->
                        Map.entry(
                            UUID.fromString(row.getString("item_id")),
                            Row.instant(row.getLong("at_micros"))))
                .forEach(one -> since.put(one.getKey(), one.getValue())));
    return since;
  }

  @Override
  public void write(Load load, List<DrawerEntry> moves) throws LoadConflict, DrawerConflict {
    List<LoadConflict> conflict = new ArrayList<>();
    jdbi.<DrawerConflict>useTransaction(
        handle -> {
          // holds writers in line, as every change of the drawer does
          handle.execute("UPDATE stock_revision SET revision = revision + 1");
          if (load.version() == 1 ? !added(handle, load) : !changed(handle, load)) {
            conflict.add(new LoadConflict(load.name()));
          } else {
            StoredLedger.load(handle, load.id());
            if (!moves.isEmpty()) {
              StoredDrawer.write(handle, moves);
            }
          }
        });
    if (!conflict.isEmpty()) {
      throw conflict.get(0);
    }
  }

  private static boolean changed(Handle handle, Load load) {
    return bound(
                handle.createUpdate(
                    "UPDATE steriliser_load SET version = :version, state = :state,"
                        + " decided_micros = :decided, load = :load"
                        + " WHERE id = :id AND version = :version_before"),
                load)
            .bind("version_before", load.version() - 1)
            .execute()
        == 1;
  }

  private static boolean added(Handle handle, Load load) {
    boolean taken =
        handle
                .createQuery("SELECT count(*) FROM steriliser_load WHERE name = :name")
                .bind("name", load.name())
                .mapTo(Integer.class)
                .one()
            > 0;
    if (taken) {
      return false;
    }
    bound(
            handle.createUpdate(
                "INSERT INTO steriliser_load (id, version, name, steriliser, started_micros, state,"
                    + " decided_micros, load) VALUES (:id, :version, :name, :steriliser, :started,"
                    + " :state, :decided, :load)"),
            load)
        .bind("name", load.name())
        .bind("steriliser", load.steriliser())
        .bind("started", Row.micros(load.started()))
        .execute();
    PreparedBatch pouches =
        handle.prepareBatch(
            "INSERT INTO pouch (id, code, load_id, last_day) VALUES (:id, :code, :load, :last)");
    PreparedBatch contents =
        handle.prepareBatch(
            "INSERT INTO pouch_content (item_id, started_micros, pouch_id)"
                + " VALUES (:item, :started, :pouch)");
    for (Pouch pouch : load.pouches()) {
      LocalDate last = pouch.lastDay();
      pouches
          .bind("id", pouch.id().toString())
          .bind("code", pouch.code())
          .bind("load", load.id().toString())
          .bind("last", Objects.toString(last, null))
          .add();
      for (Pouch.Content one : pouch.contents()) {
        contents
            .bind("item", one.item().toString())
            .bind("started", Row.micros(load.started()))
            .bind("pouch", pouch.id().toString())
            .add();
      }
    }
    pouches.execute();
    contents.execute();
    return true;
  }

  private static <S extends SqlStatement<S>> S bound(S statement, Load load) {
    Long decided =
        load.state() == Load.State.RUNNING
            ? null
            : load.events().stream()
                .filter(
                    event ->
                        event.what() == LoadEvent.What.RELEASED
                            || event.what() == LoadEvent.What.FAILED)
                .map(event -> Row.micros(event.at()))
                .reduce((before, later) -> before)
                .orElse(null);
    return statement
        .bind("id", load.id().toString())
        .bind("version", load.version())
        .bind("state", load.state().name())
        .bind("decided", decided)
        .bind("load", StoredDocument.LOAD.text(load));
  }
}
