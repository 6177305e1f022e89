package kerfwright.app.storage.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Stream;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.practice.people.Trail;
import kerfwright.practice.record.Chain;
import kerfwright.practice.record.ChainCheck;
import kerfwright.quantity.Identified;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jspecify.annotations.Nullable;

/** The trail in a database. */
public final class StoredTrail implements Trail {
  private static final int ROWS_AT_A_TIME = 1000;

  private final Jdbi jdbi;

  public StoredTrail(Database database) {
    this.jdbi = database.jdbi();
  }

  @Override
  public void add(Entry entry) {
    jdbi.useTransaction(
        handle -> {
          handle.execute("UPDATE trail_end SET number = number");
          Chain next =
              handle
                  .createQuery("SELECT number, hash FROM trail_end")
                  .map((row, context) -> new Chain(row.getLong("number"), row.getString("hash")))
                  .one()
                  .after(entry.line());
          new Row("trail")
              .with("number", next.number())
              .with("at_micros", entry.at())
              .with("who", entry.who())
              .with("act", entry.act().id())
              .with("what", entry.what())
              .with("line", entry.line())
              .with("hash", next.hash())
              .add(handle);
          handle
              .createUpdate("UPDATE trail_end SET number = :number, hash = :hash")
              .bind("number", next.number())
              .bind("hash", next.hash())
              .execute();
        });
  }

  @Override
  public List<Line> find(Query query, int most) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(
                    "SELECT * FROM trail WHERE (:who = '' OR who = :who) AND (:what = '' OR"
                        + " LOWER(what) LIKE :part ESCAPE '!') AND at_micros >= :from AND at_micros"
                        + " < :until ORDER BY number DESC LIMIT :most")
                .bind("who", query.who())
                .bind("what", query.what())
                .bind("part", "%" + escaped(query.what().toLowerCase(Locale.ROOT)) + "%")
                .bind("from", StoredAccounts.micros(query.from()))
                .bind("until", StoredAccounts.micros(query.until()))
                .bind("most", most)
                .map((row, context) -> line(row))
                .list());
  }

  private static String escaped(String part) {
    return part.replace("!", "!!").replace("%", "!%").replace("_", "!_");
  }

  @Override
  public void walk(Consumer<Line> each) {
    jdbi.useTransaction(
        handle -> {
          try (Stream<Line> all =
              handle
                  .createQuery("SELECT * FROM trail ORDER BY number")
                  .map((row, context) -> line(row))
                  .stream()) {
            all.forEach(each);
          }
        });
  }

  @Override
  public ChainCheck check() {
    return jdbi.inTransaction(StoredTrail::check);
  }

  /** Within a transaction that stays open. */
  public static ChainCheck check(Handle handle) {
    List<Chain> ends =
        handle
            .createQuery("SELECT number, hash FROM trail_end")
            .map((row, context) -> new Chain(row.getLong("number"), row.getString("hash")))
            .list();
    Look look = new Look();
    try (Stream<Stored> all =
        handle
            .createQuery("SELECT * FROM trail ORDER BY number")
            .setFetchSize(ROWS_AT_A_TIME)
            .map((row, context) -> new Stored(line(row), row.getString("line")))
            .stream()) {
      all.forEach(look::at);
    }
    return look.upTo(ends);
  }

  private record Stored(Line line, String text) {}

  /** Goes along the chain, to the first line that is not as it was written. */
  private static final class Look {
    private Chain sound = Chain.EMPTY;
    private ChainCheck.@Nullable Break broken;

    void at(Stored one) {
      if (broken != null) {
        return;
      }
      Chain after = sound.after(one.text());
      long number = one.line().number();
      if (number != after.number()) {
        broken = new ChainCheck.Break(after.number(), ChainCheck.Kind.MISSING);
      } else if (!after.hash().equals(one.line().hash())) {
        broken = new ChainCheck.Break(number, ChainCheck.Kind.CHANGED);
      } else if (!one.line().entry().line().equals(one.text())) {
        broken = new ChainCheck.Break(number, ChainCheck.Kind.FOUND_WRONGLY);
      } else {
        sound = after;
      }
    }

    ChainCheck upTo(List<Chain> ends) {
      if (broken == null && !ends.equals(List.of(sound))) {
        broken = new ChainCheck.Break(sound.number() + 1, ChainCheck.Kind.END);
      }
      return new ChainCheck(sound, broken);
    }
  }

  private static Line line(ResultSet row) throws SQLException {
    Entry entry =
        new Entry(
            Row.instant(row.getLong("at_micros")),
            row.getString("who"),
            Identified.of(Act.class, row.getString("act")).orElse(Act.REFUSED),
            row.getString("what"));
    return new Line(row.getLong("number"), entry, row.getString("hash"));
  }
}
