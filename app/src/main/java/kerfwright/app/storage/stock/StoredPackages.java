package kerfwright.app.storage.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.practice.label.MakersCode;
import kerfwright.practice.label.PackageMark;
import kerfwright.practice.label.Packages;
import org.jdbi.v3.core.Jdbi;
import org.jspecify.annotations.Nullable;

/** Makers' codes of items, in a database. */
public final class StoredPackages implements Packages {
  private final Jdbi jdbi;

  public StoredPackages(Database database) {
    this.jdbi = database.jdbi();
  }

  @Override
  public Optional<PackageMark> of(UUID item) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT * FROM item_package WHERE item_id = :item")
                .bind("item", item.toString())
                .map((row, context) -> read(row))
                .findOne());
  }

  @Override
  public List<PackageMark> withGtin(String gtin) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(
                    "SELECT p.* FROM item_package p JOIN stock_item s ON s.id = p.item_id"
                        + " WHERE p.gtin = :gtin AND s.removed = 0 ORDER BY p.item_id")
                .bind("gtin", gtin)
                .map((row, context) -> read(row))
                .list());
  }

  @Override
  public Map<UUID, LocalDate> expiries() {
    Map<UUID, LocalDate> days = new HashMap<>();
    jdbi.useHandle(
        handle ->
            handle
                .createQuery("SELECT item_id, expires FROM item_package WHERE expires IS NOT NULL")
                .map(
                    (row, context) ->
                        Map.entry(
                            UUID.fromString(row.getString("item_id")),
                            LocalDate.parse(row.getString("expires"))))
                .forEach(one -> days.put(one.getKey(), one.getValue())));
    return days;
  }

  @Override
  public boolean put(UUID item, int version, MakersCode code) {
    String sql =
        version == 0
            ? "INSERT INTO item_package"
                + " (item_id, version, gtin, lot, serial, produced, expires, additional)"
                + " VALUES (:item, 1, :gtin, :lot, :serial, :produced, :expires, :additional)"
                + " ON CONFLICT (item_id) DO NOTHING"
            : "UPDATE item_package SET version = version + 1, gtin = :gtin, lot = :lot,"
                + " serial = :serial, produced = :produced, expires = :expires,"
                + " additional = :additional WHERE item_id = :item AND version = :version";
    return jdbi.withHandle(
            handle -> {
              var statement =
                  handle
                      .createUpdate(sql)
                      .bind("item", item.toString())
                      .bind("gtin", code.gtin())
                      .bind("lot", code.lot())
                      .bind("serial", code.serial())
                      .bind("produced", text(code.produced()))
                      .bind("expires", text(code.expires()))
                      .bind("additional", code.additional());
              return (version == 0 ? statement : statement.bind("version", version)).execute();
            })
        == 1;
  }

  private static @Nullable String text(@Nullable LocalDate day) {
    return day == null ? null : day.toString();
  }

  private static PackageMark read(ResultSet row) throws SQLException {
    return new PackageMark(
        UUID.fromString(row.getString("item_id")),
        row.getInt("version"),
        new MakersCode(
            row.getString("gtin"),
            row.getString("lot"),
            row.getString("serial"),
            day(row.getString("produced")),
            day(row.getString("expires")),
            row.getString("additional")));
  }

  private static @Nullable LocalDate day(@Nullable String text) {
    return text == null ? null : LocalDate.parse(text);
  }
}
