package kerfwright.app.storage.stock;

import java.time.LocalDate;
import java.util.List;
import kerfwright.app.storage.Database;
import kerfwright.practice.restock.PurchaseRequest;
import kerfwright.practice.restock.PurchaseRequests;
import org.jdbi.v3.core.Jdbi;

/** The wishes of planned days in a database. */
public final class StoredPurchaseRequests implements PurchaseRequests {
  private final Jdbi jdbi;

  public StoredPurchaseRequests(Database database) {
    this.jdbi = database.jdbi();
  }

  @Override
  public List<PurchaseRequest> all() {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT type, day, pieces FROM order_wish ORDER BY type, day")
                .map(
                    (row, context) ->
                        new PurchaseRequest(
                            row.getString("type"),
                            LocalDate.parse(row.getString("day")),
                            row.getInt("pieces")))
                .list());
  }

  @Override
  public void keep(PurchaseRequest request) {
    jdbi.useHandle(
        handle ->
            handle
                .createUpdate(
                    "INSERT INTO order_wish (type, day, pieces) VALUES (:type, :day, :pieces)"
                        + " ON CONFLICT (type, day) DO UPDATE SET pieces = excluded.pieces")
                .bind("type", request.type())
                .bind("day", request.day().toString())
                .bind("pieces", request.pieces())
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
