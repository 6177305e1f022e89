package kerfwright.app.storage.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.practice.label.OwnCode;
import kerfwright.practice.record.Origins;
import org.jdbi.v3.core.Jdbi;

/** Where instruments came from, by the pouches in a database. */
public final class StoredOrigins implements Origins {
  private static final String SELECT =
      "SELECT p.id, p.code, p.last_day, l.id AS load_id, l.name, l.state, l.decided_micros"
          + " FROM pouch p JOIN steriliser_load l ON l.id = p.load_id";

  private final Jdbi jdbi;
  private final Clock clock;

  public StoredOrigins(Database database, Clock clock) {
    this.jdbi = database.jdbi();
    this.clock = clock;
  }

  @Override
  public Optional<Pouched> lastOf(UUID item, Instant before) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(
                    SELECT
                        + " JOIN pouch_content c ON c.pouch_id = p.id WHERE c.item_id = :item"
                        + " AND (c.started_micros <= :before OR c.started_micros > :now)"
                        + " ORDER BY c.pouch_id DESC LIMIT 1")
                .bind("item", item.toString())
                .bind("before", Row.micros(before))
                // what began later than now began while the clock was ahead
                .bind("now", Row.micros(clock.instant()))
                .map((row, context) -> pouched(row, true))
                .findOne());
  }

  @Override
  public Optional<Pouched> pouch(String code, UUID item) {
    Optional<OwnCode> label = OwnCode.read(code).filter(one -> one.kind() == OwnCode.Kind.POUCH);
    String column = label.isPresent() ? "p.id" : "p.code";
    String value = label.map(one -> one.id().toString()).orElse(code.toUpperCase(Locale.ROOT));
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(
                    SELECT.replace(
                            " FROM",
                            ", (SELECT count(*) FROM pouch_content c WHERE c.pouch_id = p.id AND"
                                + " c.item_id = :item) AS holds FROM")
                        + " WHERE "
                        + column
                        + " = :value")
                .bind("item", item.toString())
                .bind("value", value)
                .map((row, context) -> pouched(row, row.getInt("holds") > 0))
                .findOne());
  }

  private static Pouched pouched(ResultSet row, boolean holds) throws SQLException {
    String last = row.getString("last_day");
    long decided = row.getLong("decided_micros");
    boolean undecided = row.wasNull();
    return new Pouched(
        UUID.fromString(row.getString("load_id")),
        row.getString("name"),
        row.getString("code"),
        Standing.valueOf(row.getString("state")),
        undecided ? null : Row.instant(decided),
        last == null ? null : LocalDate.parse(last),
        holds);
  }
}
