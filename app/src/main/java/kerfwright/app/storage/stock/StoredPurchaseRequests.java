package kerfwright.app.storage.stock;

import java.time.LocalDate;
import java.util.List;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
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
    Row wish =
        new Row("order_wish")
            .with("type", request.type())
            .with("day", request.day().toString())
            .with("pieces", request.pieces());
    jdbi.useHandle(handle -> wish.addOrSet(handle, "type, day", "pieces"));
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
