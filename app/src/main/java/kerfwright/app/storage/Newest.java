package kerfwright.app.storage;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/** What was written last, by sequence: it tells whether the clock was ahead then. */
public final class Newest {
  private static final List<String> ORDERED =
      List.of("stock_item", "stock_entry", "steriliser_load", "pouch", "import_draft", "cut_run");

  private Newest() {}

  /** The greatest id of every table whose ids are in the order of time. */
  public static List<UUID> ids(Database database) {
    return ORDERED.stream()
        .flatMap(table -> texts(database, "SELECT max(id) FROM " + table))
        .map(UUID::fromString)
        .toList();
  }

  /** The latest time that the last change of drawer, loads and days bears. */
  public static Optional<Instant> time(Database database) {
    return Stream.of(
            "SELECT at_micros FROM stock_entry ORDER BY id DESC LIMIT 1",
            "SELECT started_micros FROM steriliser_load ORDER BY id DESC LIMIT 1",
            "SELECT at_micros FROM day_book ORDER BY sequence DESC LIMIT 1")
        .flatMap(sql -> texts(database, sql))
        .map(micros -> Row.instant(Long.parseLong(micros)))
        .max(Comparator.naturalOrder());
  }

  private static Stream<String> texts(Database database, String sql) {
    return database.sql().one(String.class, sql).stream();
  }
}
