package kerfwright.validation;

import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.app.storage.cases.StoredRecord;
import kerfwright.app.storage.people.StoredSettings;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import kerfwright.practice.record.ChainCheck;
import kerfwright.practice.record.Cut;
import kerfwright.practice.record.CutUse;
import kerfwright.practice.record.Origin;
import kerfwright.practice.record.Origins;
import kerfwright.practice.record.RecordQuery;
import kerfwright.practice.record.RecordService;
import kerfwright.practice.record.UseReport;
import kerfwright.practice.record.UsedInstrument;

/**
 * Measures tracing in a record of many uses, as JSON. Arguments: number of uses; a folder for the
 * SQLite file, which is deleted at the end, or - for none; then, if wanted, the JDBC URL of an
 * empty PostgreSQL database, which is left filled. While the record is filled the indexes of its
 * table, except the key, are away; they are made again, from the text of the migration, before
 * anything is measured. How far it is goes to the error stream.
 */
public final class RecordBench {
  private static final int INSTRUMENTS = 20_000;
  private static final int PER_CASE = 6;
  private static final int PER_LOAD = 24;
  private static final int BATCH = 10_000;
  private static final int TOLD_EVERY = 500_000;
  private static final int ASKED = 300;
  private static final int WARM_UP = 30;
  private static final int PAGE = 500;
  private static final Instant START = Instant.parse("2010-01-04T07:00:00Z");
  private static final Duration BETWEEN = Duration.ofSeconds(94);
  private static final String MIGRATION = "/kerfwright/app/storage/migration/V20__cut_record.sql";
  private static final Pattern INDEX =
      Pattern.compile("CREATE (?:UNIQUE )?INDEX (\\w+) ON cut_record \\([^)]*\\)");

  private final String url;
  private final Database database;
  private final StoredRecord record;
  private final int uses;
  private final TimeOrderedIds ids = new TimeOrderedIds(Clock.systemUTC(), new SplittableRandom(1));
  private final List<UUID> instruments = new ArrayList<>();

  private RecordBench(String url, Database database, int uses) {
    this.url = url;
    this.database = database;
    this.record = new StoredRecord(database);
    this.uses = uses;
  }

  public static void main(String[] arguments) throws Exception {
    int uses = Integer.parseInt(arguments[0]);
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("bench", "record");
    result.put("uses", uses);
    result.put("instruments", INSTRUMENTS);
    result.put("cases", uses / PER_CASE);
    result.put("loads", uses / PER_LOAD);
    result.put("asked", ASKED);
    result.put("pageSize", PAGE);
    result.put("processors", Runtime.getRuntime().availableProcessors());
    result.put("java", Runtime.version().feature());
    result.put("otherLoad", ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    if (!arguments[1].equals("-")) {
      result.put("SQLite", onFile(Path.of(arguments[1]), uses));
    }
    if (arguments.length > 2) {
      String url = rewriting(arguments[2]);
      try (Database postgres = Database.server(url)) {
        RecordBench bench = new RecordBench(url, postgres, uses);
        Map<String, Object> measured = bench.measure();
        measured.put("diskMB", bench.sizeOnServer() / 1_000_000);
        result.put("PostgreSQL", measured);
      }
    }
    System.out.println(Json.text(result));
  }

  private static Map<String, Object> onFile(Path folder, int uses) throws Exception {
    Path file = Files.createTempDirectory(folder, "record").resolve("bench.db");
    try (Database sqlite = Database.file(file)) {
      Map<String, Object> measured =
          new RecordBench("jdbc:sqlite:" + file + "?busy_timeout=60000", sqlite, uses).measure();
      measured.put("diskMB", Files.size(file) / 1_000_000);
      return measured;
    } finally {
      Files.deleteIfExists(file);
      Files.delete(file.getParent());
    }
  }

  /** Rows of one batch go to the server as one statement. */
  private static String rewriting(String url) {
    return url + (url.contains("?") ? "&" : "?") + "reWriteBatchedInserts=true";
  }

  private long sizeOnServer() throws SQLException {
    try (Connection connection = DriverManager.getConnection(url);
        Statement statement = connection.createStatement();
        ResultSet size = statement.executeQuery("SELECT pg_database_size(current_database())")) {
      size.next();
      return size.getLong(1);
    }
  }

  private Map<String, Object> measure() throws Exception {
    Map<String, Object> result = new LinkedHashMap<>();
    DrawerService drawer = new DrawerService(new StoredDrawer(database), ids, Clock.systemUTC());
    stock(drawer);
    List<String> indexes = indexes();
    for (String index : indexes) {
      Matcher named = INDEX.matcher(index);
      if (named.matches()) {
        run(List.of("DROP INDEX " + named.group(1)));
      }
    }
    long start = System.nanoTime();
    fill();
    result.put("fillS", since(start));
    start = System.nanoTime();
    List<String> make = new ArrayList<>(List.of(roomToSort()));
    make.addAll(indexes);
    make.add("ANALYZE cut_record");
    run(make);
    result.put("indexS", since(start));
    System.err.println(result);
    SplittableRandom chance = new SplittableRandom(3);
    result.put(
        "caseToInstrumentsAndLoadsMs", times(() -> RecordQuery.ofCase(caseOf(any(chance)), PAGE)));
    result.put(
        "instrumentToCasesMs",
        times(() -> RecordQuery.ofInstrument(instruments.get(any(chance) % INSTRUMENTS), PAGE)));
    result.put("loadToCasesMs", times(() -> RecordQuery.ofLoad(loadOf(any(chance)), PAGE)));
    result.put(
        "toothInAMonthMs",
        times(
            () -> {
              Instant from = at(any(chance));
              Instant until = from.plus(Duration.ofDays(30));
              return new RecordQuery(null, tooth(any(chance)), null, null, from, until, null, PAGE);
            }));
    result.put(
        "instrumentAndToothMs",
        times(
            () -> {
              UUID instrument = instruments.get(any(chance) % INSTRUMENTS);
              Tooth tooth = tooth(any(chance));
              return new RecordQuery(null, tooth, instrument, null, null, null, null, PAGE);
            }));
    result.put("newestMs", times(() -> RecordQuery.newest(50)));
    result.put("logOneUseMs", logging(drawer, chance));
    start = System.nanoTime();
    ChainCheck check = ChainCheck.of(record);
    if (!check.holds()) {
      throw new IllegalStateException("The chain breaks: " + check.broken());
    }
    result.put("verifyS", since(start));
    return result;
  }

  private int any(SplittableRandom chance) {
    return chance.nextInt(uses);
  }

  private static double since(long start) {
    return (System.nanoTime() - start) / 1e9;
  }

  private static List<String> indexes() throws IOException {
    try (InputStream in = RecordBench.class.getResourceAsStream(MIGRATION)) {
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

  private void stock(DrawerService drawer) {
    DrawerFields fields =
        DrawerFields.of(
            Map.of("iso", "806 314 197 534 014", "head_length_mm", "8", "max_rpm", "300000"));
    for (int from = 0; from < INSTRUMENTS; from += 2000) {
      List<StockItem> items = new ArrayList<>();
      for (int i = from; i < from + 2000; i++) {
        items.add(StockItem.fresh(ids.next(), "B" + i, fields));
      }
      items.forEach(item -> instruments.add(item.id()));
      if (!drawer.add(items, "bench").done()) {
        throw new IllegalStateException("The drawer of the bench was not empty");
      }
    }
  }

  private void fill() {
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
    int instrument = chance.nextInt(INSTRUMENTS);
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
            new UsedInstrument(
                instruments.get(instrument), "B" + instrument, "806 314 197 534 014", null),
            null,
            new Origin(loadOf(i), load, load + "." + i % PER_LOAD, ""),
            cut,
            "AB",
            at(i));
    return new kerfwright.practice.record.Statement(ids.next(), use, null, List.of());
  }

  private static String caseOf(int i) {
    return "K-" + i / PER_CASE;
  }

  private static UUID loadOf(int i) {
    // spread, so that ids of loads do not stand in the order of time
    return new UUID(new SplittableRandom(i / PER_LOAD).nextLong(), i / PER_LOAD);
  }

  private static Tooth tooth(int i) {
    int which = i / PER_CASE % 32;
    return new Tooth(10 * (which / 8 + 1) + which % 8 + 1);
  }

  private static Instant at(int i) {
    return START.plus(BETWEEN.multipliedBy(i));
  }

  private interface Question {
    RecordQuery next();
  }

  private Map<String, Object> times(Question question) {
    double[] times = new double[ASKED];
    int found = 0;
    for (int i = -WARM_UP; i < ASKED; i++) {
      RecordQuery query = question.next();
      long start = System.nanoTime();
      found = Math.max(found, record.list(query).size());
      if (i >= 0) {
        times[i] = (System.nanoTime() - start) / 1e6;
      }
    }
    Map<String, Object> spread = spread(times);
    spread.put("mostFound", found);
    return spread;
  }

  private Map<String, Object> logging(DrawerService drawer, SplittableRandom chance) {
    RecordService service =
        new RecordService(
            record,
            drawer.drawer(),
            Origins.NONE,
            new StoredSettings(database),
            ids,
            Clock.systemUTC());
    double[] times = new double[ASKED];
    for (int i = -WARM_UP; i < ASKED; i++) {
      UUID instrument = instruments.get(any(chance) % INSTRUMENTS);
      UseReport report =
          new UseReport(
              ids.next(),
              "N-" + i,
              tooth(any(chance)),
              null,
              instrument,
              null,
              "",
              "",
              Cut.UNTOLD,
              "AB",
              Instant.now());
      long start = System.nanoTime();
      if (service.log(report).entry() == null) {
        throw new IllegalStateException("not written");
      }
      if (i >= 0) {
        times[i] = (System.nanoTime() - start) / 1e6;
      }
    }
    return spread(times);
  }

  private static Map<String, Object> spread(double[] times) {
    Arrays.sort(times);
    Map<String, Object> spread = new LinkedHashMap<>();
    spread.put("p50", times[times.length / 2]);
    spread.put("p95", times[(int) Math.ceil(times.length * 0.95) - 1]);
    spread.put("most", times[times.length - 1]);
    return spread;
  }
}
