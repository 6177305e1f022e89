package kerfwright.app.storage.stock;

import java.time.LocalDate;
import java.util.List;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;
import kerfwright.practice.restock.PurchaseRequest;

/** Where the wishes of planned days are kept. */
public final class PurchaseRequests {
  private final Sql sql;

  public PurchaseRequests(Database database) {
    this.sql = database.sql();
  }

  /** Every wish, by type and day. */
  public List<PurchaseRequest> all() {
    return sql.list(PurchaseRequest.class, "SELECT * FROM order_wish ORDER BY type, day");
  }

  /** Keeps a wish in place of that of the same type and day. */
  public void keep(PurchaseRequest request) {
    Row wish =
        new Row("order_wish")
            .with("type", request.type())
            .with("day", request.day())
            .with("pieces", request.pieces());
    sql.addOrSet(wish, "type, day", "pieces");
  }

  /** Takes a wish off the list. */
  public void drop(String type, LocalDate day) {
    sql.change("DELETE FROM order_wish WHERE type = ? AND day = ?", type, day);
  }
}
