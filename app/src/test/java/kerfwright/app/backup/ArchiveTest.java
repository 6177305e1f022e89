package kerfwright.app.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import kerfwright.app.input.BadInput;
import kerfwright.app.security.OneTimeCodes;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.PostgresOfTests;
import kerfwright.app.storage.Snapshot;
import kerfwright.app.storage.people.Authenticators;
import kerfwright.app.storage.people.StoredSettings;
import kerfwright.app.storage.stock.Packages;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.practice.drawer.DrawerQuery;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import kerfwright.practice.label.MakersCode;
import net.lingala.zip4j.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written into an archive comes back equal, whatever database it came from or goes to. */
class ArchiveTest {
  private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");

  @TempDir private Path folder;
  private int made;

  private Path file() {
    return folder.resolve("a" + made++ + ".zip");
  }

  private Database sqlite() throws BadInput {
    return Database.file(folder.resolve("d" + made++ + ".db"));
  }

  private static DrawerService service(Database database) {
    return new DrawerService(
        new StoredDrawer(database),
        new TimeOrderedIds(Clock.systemUTC(), new SplittableRandom(5)),
        Clock.systemUTC());
  }

  private static StockItem item(DrawerService service, String label) {
    return StockItem.fresh(
        service.newId(),
        label,
        new DrawerFields(Map.of("iso", "806 314 197 534 014", "head_length_mm", "8.0")));
  }

  /** A drawer with history, awkward texts, nulls and settings. */
  private static void fill(Database database) {
    DrawerService service = service(database);
    List<StockItem> items = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      items.add(item(service, "Ä" + i));
    }
    assertTrue(
        service
            .add(items, "a \"quoted\", note;\r\nwith lines\t\\ and ' \u0001 \ud83e\uddb7")
            .done());
    Pick pick = new Pick(items.get(3).id(), 1);
    assertTrue(
        service.edit(pick, draft -> draft.cutMm3ByMaterial.put("enamel", 1.0 / 3), "").done());
    var moved = service.move(List.of(new Pick(items.get(4).id(), 1)), InstrumentState.CLEANING, "");
    assertTrue(service.undo(moved.batch(), "").done());
    new Packages(database)
        .put(
            items.get(1).id(),
            0,
            new MakersCode(null, "", "a'b", null, LocalDate.of(2030, 2, 28), null));
    assertTrue(
        new StoredSettings(database)
            .write(0, Map.of("zz", "first", "Zz", "second", "ä", "third", "a", "")));
  }

  private static List<String> sums(Database database) throws IOException {
    try (Snapshot snapshot = Snapshot.of(database)) {
      return Archive.sums(snapshot).stream().sorted().toList();
    }
  }

  private void roundTrip(Database from, Restoration.Opener opener, Database reopened)
      throws Exception {
    fill(from);
    Path archive = file();
    Archive.write(from, archive, NOON);
    Restoration.of(archive, null, opener);
    assertEquals(sums(from), sums(reopened));
    assertEquals(
        new StoredDrawer(from).list(DrawerQuery.all(1000)),
        new StoredDrawer(reopened).list(DrawerQuery.all(1000)));
    assertEquals(new StoredSettings(from).read(), new StoredSettings(reopened).read());
    // and it is used on as if nothing had happened
    DrawerService service = service(reopened);
    assertTrue(service.add(List.of(item(service, "new")), "").done());
    Path again = file();
    Archive.write(from, again, NOON);
    assertEquals(-1, Files.mismatch(content(archive), content(again)), "same data, same archive");
  }

  /** The manifest holds the sums of everything else. */
  private Path content(Path archive) throws IOException {
    Path out = folder.resolve("m" + made++);
    try (ZipFile zip = new ZipFile(archive.toFile());
        InputStream in = Archive.open(zip, Manifest.FILE)) {
      Files.copy(in, out);
    }
    return out;
  }

  @Test
  void fromSqliteIntoSqlite() throws Exception {
    Path file = folder.resolve("into.db");
    try (Database from = sqlite();
        Database to = Database.file(file)) {
      roundTrip(from, schema -> Database.file(file, schema), to);
    }
  }

  @Test
  void fromSqliteIntoPostgres() throws Exception {
    String url = PostgresOfTests.newDatabase();
    try (Database from = sqlite();
        Database to = Database.server(url)) {
      roundTrip(from, schema -> Database.server(url, schema), to);
    }
  }

  @Test
  void fromPostgresIntoSqlite() throws Exception {
    Path file = folder.resolve("into.db");
    try (Database from = Database.server(PostgresOfTests.newDatabase());
        Database to = Database.file(file)) {
      roundTrip(from, schema -> Database.file(file, schema), to);
    }
  }

  @Test
  void nothingThatIsThereIsOverwritten() throws Exception {
    Path file = folder.resolve("full.db");
    try (Database from = sqlite();
        Database full = Database.file(file)) {
      fill(from);
      DrawerService service = service(full);
      assertTrue(service.add(List.of(item(service, "mine")), "").done());
      List<String> before = sums(full);
      Path archive = file();
      Archive.write(from, archive, NOON);
      BadInput refused =
          assertThrows(
              BadInput.class,
              () -> Restoration.of(archive, null, schema -> Database.file(file, schema)));
      assertTrue(refused.getMessage().contains("not empty"), refused.getMessage());
      assertEquals(before, sums(full));
    }
  }

  @Test
  void settingsAloneMakeAPracticeThatIsNotEmpty() throws Exception {
    Path file = folder.resolve("set.db");
    try (Database from = sqlite();
        Database set = Database.file(file)) {
      assertTrue(new StoredSettings(set).write(0, Map.of("language", "de")));
      Path archive = file();
      Archive.write(from, archive, NOON);
      assertThrows(
          BadInput.class,
          () -> Restoration.of(archive, null, schema -> Database.file(file, schema)));
    }
  }

  @Test
  void anArchiveOfAnOlderSchemaIsBroughtToTheNewOne() throws Exception {
    Path old = folder.resolve("old.db");
    Path into = folder.resolve("new.db");
    Path archive = file();
    Path newest = folder.resolve("newest.db");
    try (Database now = Database.file(newest)) {
      DrawerService service = service(now);
      assertTrue(service.add(List.of(item(service, "D1")), "").done());
    }
    Database.file(old, "2").close();
    try (var connection = java.sql.DriverManager.getConnection("jdbc:sqlite:" + old);
        var statement = connection.createStatement()) {
      statement.execute("ATTACH '" + newest + "' AS newest");
      statement.execute("INSERT INTO stock_item SELECT * FROM newest.stock_item");
      statement.execute("INSERT INTO stock_entry SELECT * FROM newest.stock_entry");
      statement.execute("UPDATE stock_revision SET revision = 1");
    }
    try (Database before = Database.file(old, "2")) {
      Archive.write(before, archive, NOON);
    }
    Manifest manifest = Restoration.of(archive, null, schema -> Database.file(into, schema));
    assertEquals("2", manifest.schema());
    try (Database now = Database.file(into)) {
      assertTrue(new StoredDrawer(now).labelled("D1").isPresent());
      assertEquals(0, new StoredSettings(now).read().version());
      assertEquals(1, kerfwright.app.storage.Seal.of(now).ledger().number());
    }
  }

  @Test
  void aDamagedArchiveIsRefusedBeforeAnythingIsWritten() throws Exception {
    Path archive = file();
    try (Database from = sqlite()) {
      fill(from);
      Archive.write(from, archive, NOON);
    }
    try (FileSystem zip = FileSystems.newFileSystem(archive)) {
      Path table = zip.getPath("tables/stock_item.csv");
      Files.writeString(table, Files.readString(table).replace("quarantine", "clean") + " ");
    }
    Path into = folder.resolve("untouched.db");
    BadInput refused =
        assertThrows(
            BadInput.class,
            () -> Restoration.of(archive, null, schema -> Database.file(into, schema)));
    assertTrue(refused.getMessage().contains("stock_item.csv"), refused.getMessage());
    assertFalse(Files.exists(into));
    Files.write(archive, "not a zip".getBytes(StandardCharsets.UTF_8));
    assertThrows(
        BadInput.class, () -> Restoration.of(archive, null, schema -> Database.file(into, schema)));
  }

  @Test
  void whatIsWrittenMeanwhileIsInTheArchiveWholeOrNotAtAll() throws Exception {
    for (Database database : List.of(sqlite(), Database.server(PostgresOfTests.newDatabase()))) {
      try (database) {
        DrawerService service = service(database);
        AtomicBoolean stop = new AtomicBoolean();
        AtomicInteger written = new AtomicInteger();
        Thread writer =
            new Thread(
                () -> {
                  while (!stop.get()) {
                    // two items a change: half a change would leave an odd number
                    String name = "W" + written.getAndIncrement();
                    service.add(List.of(item(service, name + "a"), item(service, name + "b")), "");
                  }
                });
        writer.setDaemon(true);
        writer.start();
        while (written.get() < 5 && writer.isAlive()) {
          Thread.sleep(5);
        }
        for (int i = 0; i < 5; i++) {
          Manifest manifest = Archive.write(database, file(), NOON);
          long items = rows(manifest, "stock_item");
          assertEquals(0, items % 2);
          assertEquals(items, rows(manifest, "stock_entry"));
          assertTrue(items > 0);
        }
        assertTrue(writer.isAlive(), "it wrote on while the archive was made");
        stop.set(true);
        writer.join();
      }
    }
  }

  private static long rows(Manifest manifest, String table) {
    return manifest.tables().stream()
        .filter(one -> one.name().equals(table))
        .mapToLong(Manifest.Entry::rows)
        .sum();
  }

  @Test
  void everyTableOfTheSchemaIsInTheArchive() throws Exception {
    try (Database sqlite = sqlite();
        Database postgres = Database.server(PostgresOfTests.newDatabase());
        Snapshot one = Snapshot.of(sqlite);
        Snapshot other = Snapshot.of(postgres)) {
      List<String> names = one.tables().stream().map(table -> table.name()).sorted().toList();
      assertTrue(
          names.containsAll(List.of("stock_item", "practice_setting", "item_package")),
          names.toString());
      assertEquals(names, other.tables().stream().map(table -> table.name()).sorted().toList());
      // columns have the same kinds, so that either takes what the other gives
      assertEquals(
          one.tables().stream().map(table -> table.toString()).sorted().toList(),
          other.tables().stream().map(table -> table.toString()).sorted().toList());
      assertEquals(
          Archive.sums(one).stream().sorted().toList(),
          Archive.sums(other).stream().sorted().toList());
    }
  }

  @Test
  void backupsAreMadeByTheClockKeptInNumberAndWarnedOfWhenOld() throws Exception {
    Path place = folder.resolve("backups");
    Clock now = Clock.fixed(NOON, ZoneOffset.UTC);
    Clock later = Clock.fixed(NOON.plusSeconds(3 * 86_400), ZoneOffset.UTC);
    try (Database database = sqlite()) {
      StoredSettings settings = new StoredSettings(database);
      try (Backups first = new Backups(database, settings, place, null, now)) {
        assertEquals(-1L, first.daysTooOld().orElseThrow());
        first.tick();
        first.tick();
        assertEquals(1, first.files().size());
        assertTrue(first.daysTooOld().isEmpty());
        assertNull(first.fault());
        Archive.check(first.files().get(0).file(), null);
      }
      assertTrue(settings.write(0, Map.of("backup.daily", "1", "backup.weekly", "0")));
      try (Backups second = new Backups(database, settings, place, null, later)) {
        second.start();
        assertEquals(3L, second.daysTooOld().orElseThrow());
        second.tick();
        assertTrue(second.daysTooOld().isEmpty());
        assertEquals(1, second.files().size(), "the older one is let go");
      }
      // a folder that cannot be: said, and what is there stays
      Path taken = Files.createFile(folder.resolve("taken"));
      try (Backups third = new Backups(database, settings, taken, null, later)) {
        third.tick();
        assertNotNull(third.fault());
        assertEquals(-1L, third.daysTooOld().orElseThrow());
      }
    }
    try (Stream<Path> left = Files.list(place)) {
      assertTrue(left.noneMatch(one -> one.toString().endsWith(".part")));
    }
  }

  @Test
  void whoIsAskedForACodeIsAskedForItAfterARestoreToo() throws Exception {
    Path archive = file();
    UUID person = UUID.randomUUID();
    Clock later = Clock.fixed(NOON.plusSeconds(60), ZoneOffset.UTC);
    String secret;
    List<String> standIns;
    try (Database from = sqlite()) {
      OneTimeCodes codes =
          new OneTimeCodes(new Authenticators(from), Clock.fixed(NOON, ZoneOffset.UTC));
      codes.begin(person);
      secret = codes.begun(person).orElseThrow();
      standIns = codes.switchOn(person, OneTimeCodes.at(secret, NOON));
      Archive.write(from, archive, NOON);
    }
    String url = PostgresOfTests.newDatabase();
    Restoration.of(archive, null, schema -> Database.server(url, schema));
    try (Database into = Database.server(url)) {
      OneTimeCodes codes = new OneTimeCodes(new Authenticators(into), later);
      assertTrue(codes.on(person));
      assertFalse(codes.take(person, OneTimeCodes.at(secret, NOON)), "used before the backup");
      assertTrue(codes.take(person, OneTimeCodes.at(secret, later.instant())));
      assertTrue(codes.take(person, standIns.get(0)));
    }
  }
}
