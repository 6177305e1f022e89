package kerfwright.app.storage.cases;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import kerfwright.app.storage.ChainEnd;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Sql;
import kerfwright.app.storage.Where;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.practice.drawer.DrawerConflict;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.record.Chain;
import kerfwright.practice.record.Correction;
import kerfwright.practice.record.CutRecord;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.record.RecordQuery;
import kerfwright.practice.record.Statement;

/** The cut record in a database. */
public final class StoredRecord implements CutRecord {
  private static final String SELECT = "SELECT * FROM cut_record WHERE ";
  private static final int PORTION = 1000;

  private final Sql sql;
  private final ChainEnd end;

  public StoredRecord(Database database) {
    this(database.sql());
  }

  public StoredRecord(Sql sql) {
    this.sql = sql;
    this.end = new ChainEnd(sql, "cut_record_end");
  }

  @Override
  public RecordEntry append(Statement statement, Instant at, List<DrawerEntry> moves)
      throws CorrectedMeanwhile, DrawerConflict {
    Optional<RecordEntry> written =
        sql.inTransaction(
            () -> {
              if (!moves.isEmpty()) {
                // in the order everybody takes them, so that no two wait for each other
                StoredDrawer.holdBack(sql);
              }
              Chain last = locked();
              Optional<RecordEntry> known = find(statement.id());
              Correction correction = statement.correction();
              if (known.isPresent()
                  || correction != null && one("corrects", correction.corrects()).isPresent()) {
                return known;
              }
              // first, because an entry may name a piece that comes into the drawer with it
              if (!moves.isEmpty()) {
                StoredDrawer.write(sql, moves);
              }
              return Optional.of(link(last, List.of(statement), at).get(0));
            });
    return written.orElseThrow(CorrectedMeanwhile::new);
  }

  /** Writes many new statements in one go, as a record taken over from elsewhere. */
  public List<RecordEntry> appendAll(List<Statement> statements, Instant at) {
    return sql.inTransaction(() -> link(locked(), statements, at));
  }

  private Chain locked() {
    Chain last = end.locked();
    if (last.number() < 0) {
      throw new IllegalStateException("The end of the record was changed past the program");
    }
    return last;
  }

  private List<RecordEntry> link(Chain last, List<Statement> statements, Instant at) {
    List<RecordEntry> entries = new ArrayList<>();
    Chain chain = last;
    for (Statement statement : statements) {
      RecordEntry entry = chain.link(statement, at);
      chain = chain.after(entry);
      entries.add(entry);
    }
    sql.addAll(entries.stream().map(RecordRow::of).toList());
    end.move(chain);
    return entries;
  }

  @Override
  public Optional<RecordEntry> find(UUID id) {
    return one("id", id);
  }

  @Override
  public Optional<RecordEntry> at(long number) {
    return one("number", number);
  }

  private Optional<RecordEntry> one(String column, Object value) {
    return sql.one(RecordRow::read, SELECT + column + " = ?", value);
  }

  @Override
  public List<RecordEntry> list(RecordQuery query) {
    Where where = new Where();
    String reference = query.caseReference();
    where.and("case_key = ?", reference == null ? null : RecordRow.caseKey(reference));
    // the first column asked for finds the rows by its index; the later ones only sift them
    String sifts = where.isEmpty() ? "" : " || ''";
    where.and(either("instrument_id", "handpiece_id", sifts), query.instrument());
    sifts = where.isEmpty() ? "" : " || ''";
    where.and(either("load_id", "handpiece_load_id", sifts), query.load());
    where.and(
        where.isEmpty() ? "tooth = ?" : "tooth + 0 = ?",
        query.tooth() == null ? null : query.tooth().fdi());
    boolean byIndex = query.until() != null || !where.isEmpty();
    where.and("at_micros >= ?", query.from());
    where.and("at_micros < ?", query.until());
    where.and("number < ?", query.older());
    String newest = (where.isEmpty() ? "number > 0" : where.text()) + " ORDER BY number";
    // the index finds them and only their numbers are sorted; without one they come in order
    return byIndex
        ? sql.list(
            RecordRow::read,
            SELECT
                + "number IN (SELECT number FROM cut_record WHERE "
                + newest
                + " + 0 DESC LIMIT ?) ORDER BY number DESC",
            where.values(query.size()))
        : sql.list(RecordRow::read, SELECT + newest + " DESC LIMIT ?", where.values(query.size()));
  }

  /** The instrument's column or the handpiece's, each with an index of its own. */
  private static String either(String instrument, String handpiece, String sifts) {
    return "(" + instrument + sifts + " = ? OR " + handpiece + sifts + " = ?)";
  }

  @Override
  public Map<UUID, RecordEntry> correctionsOf(Collection<UUID> entries) {
    return sql.amongst(RecordRow::read, SELECT + "corrects IN (<in>)", entries).stream()
        .collect(Collectors.toMap(StoredRecord::corrected, Function.identity()));
  }

  private static UUID corrected(RecordEntry entry) {
    return Objects.requireNonNull(entry.correction()).corrects();
  }

  @Override
  public Chain end() {
    return end.read();
  }

  /** In portions, so that nobody who writes has to wait. */
  @Override
  public void walk(Predicate<Stored> each) {
    String next = SELECT + "number > ? ORDER BY number LIMIT ?";
    long last = 0;
    List<Stored> portion = sql.list(RecordRow::stored, next, last, PORTION);
    while (!portion.isEmpty()) {
      for (Stored stored : portion) {
        if (!each.test(stored)) {
          return;
        }
        last = stored.number();
      }
      portion = sql.list(RecordRow::stored, next, last, PORTION);
    }
  }
}
