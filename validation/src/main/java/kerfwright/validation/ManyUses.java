package kerfwright.validation;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.cases.StoredRecord;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import kerfwright.practice.record.Cut;
import kerfwright.practice.record.CutUse;
import kerfwright.practice.record.Origin;
import kerfwright.practice.record.UsedInstrument;

/**
 * Fills a record with many uses, the indexes of its table away meanwhile, except the key; they are
 * made again from the text of the migration. As a program it fills a practice that is there with
 * uses of pieces withdrawn since, 200 of each. Arguments: number of uses; the practice's folder or
 * its JDBC URL. How far it is goes to the error stream.
 */
public final class ManyUses {
  static final int PER_CASE = 6;
  static final int PER_LOAD = 24;
  private static final int PER_PIECE = 200;
  private static final int BATCH = 10_000;
  private static final int TOLD_EVERY = 500_000;
  private static final Instant START = Instant.parse("2010-01-04T07:00:00Z");
  private static final Duration BETWEEN = Duration.ofSeconds(94);
  private static final String MIGRATION = "/kerfwright/app/storage/migration/V20__cut_record.sql";
  private static final Pattern INDEX =
      Pattern.compile("CREATE (?:UNIQUE )?INDEX (\\w+) ON cut_record \\([^)]*\\)");

  private final String url;
  private final Database database;
  private final StoredRecord record;
  private final TimeOrderedIds ids;
  private final List<UsedInstrument> instruments;

  ManyUses(String url, Database database, TimeOrderedIds ids, List<UsedInstrument> instruments) {
    this.url = url;
    this.database = database;
    this.record = new StoredRecord(database);
    this.ids = ids;
    this.instruments = instruments;
  }

  public static void main(String[] arguments) throws Exception {
    int uses = Integer.parseInt(arguments[0]);
    boolean server = arguments[1].startsWith("jdbc:");
    String url = server ? rewriting(arguments[1]) : file(Path.of(arguments[1]));
    try (Database database =
        server
            ? Database.server(url)
            : Database.file(Path.of(arguments[1]).resolve(Database.FILE))) {
      TimeOrderedIds ids = new TimeOrderedIds(Clock.systemUTC(), new SplittableRandom(1));
      List<UsedInstrument> instruments = former(database, ids, Math.max(1, uses / PER_PIECE));
      ManyUses many = new ManyUses(url, database, ids, instruments);
      many.dropIndexes();
      many.fill(uses);
      many.makeIndexes();
    }
  }

  /** Pieces that were used up and withdrawn: no piece of a practice is used for ever. */
  private static List<UsedInstrument> former(Database database, TimeOrderedIds ids, int pieces) {
    DrawerFields fields =
        new DrawerFields(Map.of("iso", "806 314 197 534 014", "head_length_mm", "8.0"));
    List<StockItem> items = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      StockItem fresh = StockItem.fresh(ids.next(), "FORMER" + i, fields);
      items.add(fresh.next(one -> one.state = InstrumentState.WITHDRAWN).asNew());
    }
    DrawerService drawer = new DrawerService(new StoredDrawer(database), ids, Clock.systemUTC());
    if (!drawer.add(items, "former pieces").done()) {
      throw new IllegalStateException("labels FORMER0 to FORMER" + pieces + " are taken");
    }
    return items.stream()
        .map(item -> new UsedInstrument(item.id(), item.label(), item.fields().at("iso"), null))
        .toList();
  }

  /** Rows of one batch go to the server as one statement. */
  static String rewriting(String url) {
    return url + (url.contains("?") ? "&" : "?") + "reWriteBatchedInserts=true";
  }

  private static String file(Path folder) {
    return "jdbc:sqlite:" + folder.resolve(Database.FILE) + "?busy_timeout=60000";
  }

  void dropIndexes() throws Exception {
    for (String index : indexes()) {
      Matcher named = INDEX.matcher(index);
      if (named.matches()) {
        run(List.of("DROP INDEX " + named.group(1)));
      }
    }
  }

  void makeIndexes() throws Exception {
    List<String> make = new ArrayList<>(List.of(roomToSort()));
    make.addAll(indexes());
    make.add("ANALYZE cut_record");
    run(make);
  }

  private static List<String> indexes() throws IOException {
    try (InputStream in = ManyUses.class.getResourceAsStream(MIGRATION)) {
      if (in == null) {
        throw new IllegalStateException(MIGRATION);
      }
      List<String> found = new ArrayList<>();
      Matcher each = INDEX.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      while (each.find()) {
        found.add(each.group());
      }
      return found;
    }
  }

  private String roomToSort() {
    return database.onServer()
        ? "SET maintenance_work_mem = '256MB'"
        : "PRAGMA cache_size = -256000";
  }

  /** All of them over one connection. */
  private void run(List<String> statements) throws SQLException {
    try (Connection connection = DriverManager.getConnection(url);
        Statement statement = connection.createStatement()) {
      for (String sql : statements) {
        statement.execute(sql);
      }
    }
  }

  void fill(int uses) {
    SplittableRandom chance = new SplittableRandom(2);
    for (int from = 0; from < uses; from += BATCH) {
      List<kerfwright.practice.record.Statement> some = new ArrayList<>();
      for (int i = from; i < Math.min(uses, from + BATCH); i++) {
        some.add(statement(i, chance));
      }
      record.appendAll(some, at(from));
      if ((from + BATCH) % TOLD_EVERY == 0) {
        System.err.println((from + BATCH) + " of " + uses + " uses");
      }
    }
  }

  private kerfwright.practice.record.Statement statement(int i, SplittableRandom chance) {
    UsedInstrument instrument = instruments.get(chance.nextInt(instruments.size()));
    Cut cut =
        new Cut(
            1000.0 * chance.nextInt(20, 300),
            (double) chance.nextInt(5, 60),
            (double) chance.nextInt(60, 90),
            null,
            50.0,
            Map.of("dentine", chance.nextInt(100) / 10.0));
    String load = "S1-" + i / PER_LOAD;
    CutUse use =
        new CutUse(
            caseOf(i),
            tooth(i),
            null,
            instrument,
            null,
            new Origin(loadOf(i), load, load + "." + i % PER_LOAD, ""),
            cut,
            "AB",
            at(i));
    return new kerfwright.practice.record.Statement(ids.next(), use, null, List.of());
  }

  static String caseOf(int i) {
    return "K-" + i / PER_CASE;
  }

  static UUID loadOf(int i) {
    // spread, so that ids of loads do not stand in the order of time
    return new UUID(new SplittableRandom(i / PER_LOAD).nextLong(), i / PER_LOAD);
  }

  static Tooth tooth(int i) {
    int which = i / PER_CASE % 32;
    return new Tooth(10 * (which / 8 + 1) + which % 8 + 1);
  }

  static Instant at(int i) {
    return START.plus(BETWEEN.multipliedBy(i));
  }
}
