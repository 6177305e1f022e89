package kerfwright.validation;

import java.lang.management.ManagementFactory;
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
import kerfwright.app.storage.Database;
import kerfwright.app.storage.cases.StoredRecord;
import kerfwright.app.storage.people.StoredSettings;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import kerfwright.practice.record.ChainCheck;
import kerfwright.practice.record.Cut;
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
  private static final String ISO = "806 314 197 534 014";
  private static final int INSTRUMENTS = 20_000;
  private static final int ASKED = 300;
  private static final int WARM_UP = 30;
  private static final int PAGE = 500;

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
    result.put("cases", uses / ManyUses.PER_CASE);
    result.put("loads", uses / ManyUses.PER_LOAD);
    result.put("asked", ASKED);
    result.put("pageSize", PAGE);
    result.put("processors", Runtime.getRuntime().availableProcessors());
    result.put("java", Runtime.version().feature());
    result.put("otherLoad", ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    if (!arguments[1].equals("-")) {
      result.put("SQLite", onFile(Path.of(arguments[1]), uses));
    }
    if (arguments.length > 2) {
      String url = ManyUses.rewriting(arguments[2]);
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
    ManyUses many = new ManyUses(url, database, ids, used());
    many.dropIndexes();
    long start = System.nanoTime();
    many.fill(uses);
    result.put("fillS", since(start));
    start = System.nanoTime();
    many.makeIndexes();
    result.put("indexS", since(start));
    System.err.println(result);
    SplittableRandom chance = new SplittableRandom(3);
    result.put(
        "caseToInstrumentsAndLoadsMs",
        times(() -> RecordQuery.ofCase(ManyUses.caseOf(any(chance)), PAGE)));
    result.put(
        "instrumentToCasesMs",
        times(() -> RecordQuery.ofInstrument(instruments.get(any(chance) % INSTRUMENTS), PAGE)));
    result.put(
        "loadToCasesMs", times(() -> RecordQuery.ofLoad(ManyUses.loadOf(any(chance)), PAGE)));
    result.put(
        "toothInAMonthMs",
        times(
            () -> {
              Instant from = ManyUses.at(any(chance));
              Instant until = from.plus(Duration.ofDays(30));
              return new RecordQuery(
                  null, ManyUses.tooth(any(chance)), null, null, from, until, null, PAGE);
            }));
    result.put(
        "instrumentAndToothMs",
        times(
            () -> {
              UUID instrument = instruments.get(any(chance) % INSTRUMENTS);
              Tooth tooth = ManyUses.tooth(any(chance));
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

  private List<UsedInstrument> used() {
    List<UsedInstrument> used = new ArrayList<>();
    for (UUID id : instruments) {
      used.add(new UsedInstrument(id, "B" + used.size(), ISO, null));
    }
    return used;
  }

  private void stock(DrawerService drawer) {
    DrawerFields fields =
        new DrawerFields(Map.of("iso", ISO, "head_length_mm", "8", "max_rpm", "300000"));
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
              ManyUses.tooth(any(chance)),
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
