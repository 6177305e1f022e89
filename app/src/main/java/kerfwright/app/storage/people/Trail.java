package kerfwright.app.storage.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;
import kerfwright.app.storage.ChainEnd;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;
import kerfwright.app.storage.Where;
import kerfwright.practice.record.Chain;
import kerfwright.practice.record.ChainCheck;
import kerfwright.practice.record.CutRecord;
import kerfwright.quantity.Identified;

/** Who saw, exported and changed what: one chain, only ever added to. */
public final class Trail {
  private final Sql sql;
  private final ChainEnd end;

  public Trail(Database database) {
    this(database.sql());
  }

  public Trail(Sql sql) {
    this.sql = sql;
    this.end = new ChainEnd(sql, "trail_end");
  }

  /** What somebody did. */
  public enum Act implements Identified {
    SIGNED_IN,
    SWITCHED,
    SIGN_IN_REFUSED,
    SAW,
    EXPORTED,
    CHANGED,
    REFUSED;
  }

  /**
   * One thing done.
   *
   * @param at when
   * @param who initials, or the name of a token
   * @param act what kind of thing
   * @param what where, and of which case or id; no values
   */
  public record Entry(Instant at, String who, Act act, String what) {
    /** As it stands in the chain. */
    public String line() {
      return at + "\t" + who + "\t" + act.id() + "\t" + what;
    }
  }

  /** An entry at its place. */
  public record Line(long number, Entry entry, String hash) {}

  /**
   * What to look for.
   *
   * @param who initials, empty for anybody
   * @param what part of the place, case or id, empty for any
   * @param from at or after
   * @param until before
   */
  public record Query(String who, String what, Instant from, Instant until) {}

  /** Writes at the end of the chain; returns when it is safe from the end of the process. */
  public void add(Entry entry) {
    sql.useTransaction(
        () -> {
          Chain next = end.locked().after(entry.line());
          sql.add(
              new Row("trail")
                  .with("number", next.number())
                  .with("at_micros", entry.at())
                  .with("who", entry.who())
                  .with("act", entry.act())
                  .with("what", entry.what())
                  .with("line", entry.line())
                  .with("hash", next.hash()));
          end.move(next);
        });
  }

  /** Newest first, up to a number; empty texts ask for any. */
  public List<Line> find(Query query, int most) {
    Where where =
        new Where()
            .and("at_micros >= ?", query.from())
            .and("at_micros < ?", query.until())
            .and("who = ?", query.who().isEmpty() ? null : query.who())
            .has("LOWER(what)", query.what().isEmpty() ? null : query.what());
    return sql.list(
        Trail::line,
        "SELECT * FROM trail WHERE " + where.text() + " ORDER BY number DESC LIMIT ?",
        where.values(most));
  }

  /** All, oldest first. */
  public void walk(Consumer<Line> each) {
    sql.useTransaction(() -> sql.each(Trail::line, each, "SELECT * FROM trail ORDER BY number"));
  }

  /** Whether every line is as it was written. */
  public ChainCheck check() {
    return sql.inTransaction(
        () -> {
          Chain last = end.read();
          ChainCheck.Walk walk = new ChainCheck.Walk();
          sql.each(Trail::stored, walk::at, "SELECT * FROM trail ORDER BY number");
          return walk.upTo(last);
        });
  }

  private static CutRecord.Stored stored(ResultSet row) throws SQLException {
    Line line = line(row);
    String text = row.getString("line");
    return new CutRecord.Stored(line.number(), text, line.hash(), line.entry().line().equals(text));
  }

  private static Line line(ResultSet row) throws SQLException {
    Entry entry =
        new Entry(
            Row.time(row, "at_micros"),
            row.getString("who"),
            Identified.of(Act.class, row.getString("act")).orElse(Act.REFUSED),
            row.getString("what"));
    return new Line(row.getLong("number"), entry, row.getString("hash"));
  }
}
