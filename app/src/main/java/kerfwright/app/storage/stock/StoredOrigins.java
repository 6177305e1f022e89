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
import kerfwright.app.storage.Sql;
import kerfwright.practice.label.OwnCode;
import kerfwright.practice.record.Origins;

/** Where instruments came from, by the pouches in a database. */
public final class StoredOrigins implements Origins {
  private static final String SELECT =
      "SELECT p.id, p.code, p.last_day, l.id AS load_id, l.name, l.state, l.decided_micros"
          + " FROM pouch p JOIN steriliser_load l ON l.id = p.load_id";

  private final Sql sql;
  private final Clock clock;

  public StoredOrigins(Database database, Clock clock) {
    this.sql = database.sql();
    this.clock = clock;
  }

  @Override
  public Optional<Pouched> lastOf(UUID item, Instant before) {
    return sql.one(
        row -> pouched(row, true),
        SELECT
            + " JOIN pouch_content c ON c.pouch_id = p.id WHERE c.item_id = ?"
            + " AND (c.started_micros <= ? OR c.started_micros > ?)"
            + " ORDER BY c.pouch_id DESC LIMIT 1",
        item,
        before,
        // what began later than now began while the clock was ahead
        clock.instant());
  }

  @Override
  public Optional<Pouched> pouch(String code, UUID item) {
    Optional<OwnCode> label = OwnCode.read(code).filter(one -> one.kind() == OwnCode.Kind.POUCH);
    String column = label.isPresent() ? "p.id" : "p.code";
    String value = label.map(one -> one.id().toString()).orElse(code.toUpperCase(Locale.ROOT));
    return sql.one(
        row -> pouched(row, row.getInt("holds") > 0),
        SELECT.replace(
                " FROM",
                ", (SELECT count(*) FROM pouch_content c WHERE c.pouch_id = p.id AND"
                    + " c.item_id = ?) AS holds FROM")
            + " WHERE "
            + column
            + " = ?",
        item,
        value);
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
