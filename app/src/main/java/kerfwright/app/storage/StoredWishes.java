package kerfwright.app.storage;

import java.time.LocalDate;
import java.util.List;
import kerfwright.practice.restock.Wish;
import kerfwright.practice.restock.Wishes;
import org.jdbi.v3.core.Jdbi;

/** The wishes of planned days in a database. */
public final class StoredWishes implements Wishes {
  private final Jdbi jdbi;

  public StoredWishes(Database database) {
    this.jdbi = database.jdbi();
  }

  @Override
  public List<Wish> all() {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT type, day, pieces FROM order_wish ORDER BY type, day")
                .map(
                    (row, context) ->
                        new Wish(
                            row.getString("type"),
                            LocalDate.parse(row.getString("day")),
                            row.getInt("pieces")))
                .list());
  }

  @Override
  public void keep(Wish wish) {
    jdbi.useHandle(
        handle ->
            handle
                .createUpdate(
                    "INSERT INTO order_wish (type, day, pieces) VALUES (:type, :day, :pieces)"
                        + " ON CONFLICT (type, day) DO UPDATE SET pieces = excluded.pieces")
                .bind("type", wish.type())
                .bind("day", wish.day().toString())
                .bind("pieces", wish.pieces())
                .execute());
  }

  @Override
  public void drop(String type, LocalDate day) {
    jdbi.useHandle(
        handle ->
            handle
                .createUpdate("DELETE FROM order_wish WHERE type = :type AND day = :day")
                .bind("type", type)
                .bind("day", day.toString())
                .execute());
  }
}
