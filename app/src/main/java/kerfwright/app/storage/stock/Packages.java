package kerfwright.app.storage.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;
import kerfwright.practice.label.MakersCode;
import kerfwright.practice.label.PackageMark;

/** Where makers' codes of items are kept. */
public final class Packages {
  private final Sql sql;

  public Packages(Database database) {
    this.sql = database.sql();
  }

  public Optional<PackageMark> of(UUID item) {
    return sql.one(Packages::read, "SELECT * FROM item_package WHERE item_id = ?", item);
  }

  /** Those of all items in the drawer with this trade item number, oldest first. */
  public List<PackageMark> withGtin(String gtin) {
    return sql.list(
        Packages::read,
        "SELECT p.* FROM item_package p JOIN stock_item s ON s.id = p.item_id"
            + " WHERE p.gtin = ? AND s.removed = 0 ORDER BY p.item_id",
        gtin);
  }

  /** The last day of use of every item that has one. */
  public Map<UUID, LocalDate> expiries() {
    return sql.map(
        row -> Row.id(row, "item_id"),
        row -> LocalDate.parse(row.getString("expires")),
        "SELECT item_id, expires FROM item_package WHERE expires IS NOT NULL");
  }

  /**
   * Keeps a code for an item.
   *
   * @param version the version it is changed from, 0 where there was none
   * @return false when somebody else was quicker, and nothing is written
   */
  public boolean put(UUID item, int version, MakersCode code) {
    Row row =
        new Row("item_package")
            .with("item_id", item)
            .with("version", version + 1)
            .with("gtin", code.gtin())
            .with("lot", code.lot())
            .with("serial", code.serial())
            .with("produced", code.produced())
            .with("expires", code.expires())
            .with("additional", code.additional());
    return version == 0 ? sql.addOnce(row) : sql.next(row);
  }

  private static PackageMark read(ResultSet row) throws SQLException {
    return new PackageMark(
        Row.id(row, "item_id"),
        row.getInt("version"),
        new MakersCode(
            row.getString("gtin"),
            row.getString("lot"),
            row.getString("serial"),
            Row.perhaps(row.getString("produced"), LocalDate::parse),
            Row.perhaps(row.getString("expires"), LocalDate::parse),
            row.getString("additional")));
  }
}
