package kerfwright.app.storage.cases;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.practice.drawer.DrawerConflict;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.record.Chain;
import kerfwright.practice.record.CorrectedMeanwhile;
import kerfwright.practice.record.Correction;
import kerfwright.practice.record.CutRecord;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.record.RecordQuery;
import kerfwright.practice.record.Statement;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.Query;
import org.jspecify.annotations.Nullable;

/** The cut record in a database. */
public final class StoredRecord implements CutRecord {
  private static final String SELECT = "SELECT * FROM cut_record WHERE ";
  private static final int PORTION = 1000;
  private static final Chain NO_END = new Chain(-1, "");

  private final Jdbi jdbi;

  public StoredRecord(Database database) {
    this(database.jdbi());
  }

  public StoredRecord(Jdbi jdbi) {
    this.jdbi = jdbi;
  }

  @Override
  public RecordEntry append(Statement statement, Instant at, List<DrawerEntry> moves)
      throws CorrectedMeanwhile, DrawerConflict {
    // throws of two kinds do not fit one transaction of the library
    Object[] result = new Object[1];
    jdbi.<DrawerConflict>useTransaction(
        handle -> {
          if (!moves.isEmpty()) {
            // in the order everybody takes them, so that no two wait for each other
            StoredDrawer.holdBack(handle);
          }
          Chain end = lockedEnd(handle);
          Optional<RecordEntry> known = find(handle, "id", statement.id());
          Correction correction = statement.correction();
          if (known.isPresent()) {
            result[0] = known.get();
          } else if (correction != null
              && find(handle, "corrects", correction.corrects()).isPresent()) {
            result[0] = new CorrectedMeanwhile();
          } else {
            // first, because an entry may name a piece that comes into the drawer with it
            if (!moves.isEmpty()) {
              StoredDrawer.write(handle, moves);
            }
            result[0] = link(handle, end, List.of(statement), at).get(0);
          }
        });
    if (result[0] instanceof CorrectedMeanwhile meanwhile) {
      throw meanwhile;
    }
    return (RecordEntry) result[0];
  }

  /** Writes many new statements in one go, as a record taken over from elsewhere. */
  public List<RecordEntry> appendAll(List<Statement> statements, Instant at) {
    return jdbi.inTransaction(handle -> link(handle, lockedEnd(handle), statements, at));
  }

  /** Holds the end until the transaction is over: other writers wait here. */
  private static Chain lockedEnd(Handle handle) {
    handle.execute("UPDATE cut_record_end SET number = number");
    Chain end = end(handle);
    if (end.number() < 0) {
      throw new IllegalStateException("The end of the record was changed past the program");
    }
    return end;
  }

  private static List<RecordEntry> link(
      Handle handle, Chain end, List<Statement> statements, Instant at) {
    List<RecordEntry> entries = new ArrayList<>();
    PreparedBatch rows = handle.prepareBatch(RecordRow.INSERT);
    Chain chain = end;
    for (Statement statement : statements) {
      RecordEntry entry = chain.link(statement, at);
      chain = chain.after(entry);
      entries.add(entry);
      RecordRow.bind(rows, entry).add();
    }
    rows.execute();
    handle
        .createUpdate("UPDATE cut_record_end SET number = :number, hash = :hash")
        .bind("number", chain.number())
        .bind("hash", chain.hash())
        .execute();
    return entries;
  }

  @Override
  public Optional<RecordEntry> find(UUID id) {
    return jdbi.withHandle(handle -> find(handle, "id", id));
  }

  private static Optional<RecordEntry> find(Handle handle, String column, UUID id) {
    return handle
        .createQuery(SELECT + column + " = :id")
        .bind("id", id.toString())
        .map((row, context) -> RecordRow.read(row))
        .findOne();
  }

  @Override
  public Optional<RecordEntry> at(long number) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(SELECT + "number = :number")
                .bind("number", number)
                .map((row, context) -> RecordRow.read(row))
                .findOne());
  }

  @Override
  public List<RecordEntry> list(RecordQuery query) {
    Map<String, Object> values = new LinkedHashMap<>();
    String where = where(query, values);
    return jdbi.withHandle(
        handle -> {
          Query page = handle.createQuery(SELECT + where + " ORDER BY number DESC LIMIT :size");
          values.forEach(page::bind);
          return page.bind("size", query.size()).map((row, context) -> RecordRow.read(row)).list();
        });
  }

  private static String where(RecordQuery query, Map<String, Object> values) {
    List<String> all = new ArrayList<>();
    equal(
        all,
        values,
        "case_key",
        query.caseReference() == null ? null : RecordRow.caseKey(query.caseReference()));
    either(all, values, "instrument_id", "handpiece_id", query.instrument());
    either(all, values, "load_id", "handpiece_load_id", query.load());
    equal(all, values, "tooth", query.tooth() == null ? null : query.tooth().fdi());
    boolean byIndex = query.until() != null || !all.isEmpty();
    if (query.from() != null) {
      all.add("at_micros >= :from");
      values.put("from", Row.micros(query.from()));
    }
    if (query.until() != null) {
      all.add("at_micros < :until");
      values.put("until", Row.micros(query.until()));
    }
    if (query.older() != null) {
      all.add("number < :older");
      values.put("older", query.older());
    }
    String where = all.isEmpty() ? "number > 0" : String.join(" AND ", all);
    // the index finds them and only their numbers are sorted; without one they come in order
    return byIndex
        ? "number IN (SELECT number FROM cut_record WHERE "
            + where
            + " ORDER BY number + 0 DESC LIMIT :size)"
        : where;
  }

  /** The first column asked for finds the rows by its index; the later ones only sift them. */
  private static void equal(
      List<String> all, Map<String, Object> values, String column, @Nullable Object value) {
    if (value == null) {
      return;
    }
    String sifted = column.equals("tooth") ? column + " + 0" : column + " || ''";
    all.add((all.isEmpty() ? column : sifted) + " = :" + column);
    values.put(column, value);
  }

  /** The same of the instrument's column or the handpiece's, each with an index of its own. */
  private static void either(
      List<String> all,
      Map<String, Object> values,
      String instrument,
      String handpiece,
      @Nullable UUID value) {
    if (value == null) {
      return;
    }
    String sifted = all.isEmpty() ? "" : " || ''";
    all.add(
        "("
            + String.join(" OR ", instrument + sifted + " = :" + instrument, handpiece + sifted)
            + " = :"
            + instrument
            + ")");
    values.put(instrument, value.toString());
  }

  @Override
  public Map<UUID, RecordEntry> correctionsOf(Collection<UUID> entries) {
    Map<UUID, RecordEntry> corrections = new HashMap<>();
    if (entries.isEmpty()) {
      return corrections;
    }
    jdbi.useHandle(
        handle ->
            handle
                .createQuery(SELECT + "corrects IN (<ids>)")
                .bindList("ids", entries.stream().map(UUID::toString).toList())
                .map((row, context) -> RecordRow.read(row))
                .forEach(
                    one -> {
                      Correction correction = one.correction();
                      if (correction != null) {
                        corrections.put(correction.corrects(), one);
                      }
                    }));
    return corrections;
  }

  @Override
  public Chain end() {
    return jdbi.withHandle(StoredRecord::end);
  }

  private static Chain end(Handle handle) {
    List<Chain> ends =
        handle
            .createQuery("SELECT number, hash FROM cut_record_end")
            .map((row, context) -> new Chain(row.getLong("number"), row.getString("hash")))
            .list();
    // more or fewer than one is no end, and fits no chain
    return ends.size() == 1 ? ends.get(0) : NO_END;
  }

  /** In portions, so that nobody who writes has to wait. */
  @Override
  public void walk(Predicate<Stored> each) {
    long last = 0;
    List<Stored> portion = portion(last);
    while (!portion.isEmpty()) {
      for (Stored stored : portion) {
        if (!each.test(stored)) {
          return;
        }
        last = stored.number();
      }
      portion = portion(last);
    }
  }

  private List<Stored> portion(long after) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(SELECT + "number > :after ORDER BY number LIMIT " + PORTION)
                .bind("after", after)
                .map((row, context) -> RecordRow.stored(row))
                .list());
  }
}
