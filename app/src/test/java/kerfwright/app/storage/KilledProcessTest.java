package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import kerfwright.app.storage.cases.StoredRecord;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.app.storage.stock.StoredLoads;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import kerfwright.practice.record.ChainCheck;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("kill")
class KilledProcessTest {
  private static final Map<String, String> DIAMOND =
      Map.of("iso", "806 314 197 534 014", "head_length_mm", "8");

  @TempDir Path folder;

  private String place(boolean onServer) {
    return onServer
        ? PostgresOfTests.newDatabase()
        : folder.resolve("kerfwright.db").toAbsolutePath().toString();
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aProcessKilledHardLosesNoAcknowledgedChange(boolean onServer) throws Exception {
    String place = place(onServer);
    List<String> acknowledged = acknowledged(KilledWriter.class, place, 150);
    try (Database database = KilledWriter.open(place)) {
      assertEquals(Set.copyOf(acknowledged), new StoredDrawer(database).taken(acknowledged));
      assertSound(database);
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void itLosesNoUseAndNoLoadEitherAndTheChainHolds(boolean onServer) throws Exception {
    String place = place(onServer);
    List<String> acknowledged = acknowledged(KilledRecordWriter.class, place, 60);
    try (Database database = KilledWriter.open(place)) {
      StoredRecord record = new StoredRecord(database);
      StoredLoads loads = new StoredLoads(database);
      StoredDrawer drawer = new StoredDrawer(database);
      for (String one : acknowledged) {
        if (one.startsWith("use ")) {
          UUID instrument =
              record.find(UUID.fromString(one.substring(4))).orElseThrow().use().instrument().id();
          assertEquals(1, drawer.find(instrument).orElseThrow().uses());
        } else {
          UUID item =
              loads
                  .named(one.substring(5))
                  .orElseThrow()
                  .contents()
                  .findFirst()
                  .orElseThrow()
                  .item();
          assertEquals(InstrumentState.IN_LOAD, drawer.find(item).orElseThrow().state());
        }
      }
      assertTrue(ChainCheck.of(record).holds());
      assertSound(database);
    }
  }

  /** Whole, and held up by nothing the killed one left behind. */
  private static void assertSound(Database database) {
    TimeOrderedIds ids = new TimeOrderedIds(Clock.systemUTC(), new SplittableRandom(10));
    DrawerService service = new DrawerService(new StoredDrawer(database), ids, Clock.systemUTC());
    StockItem item = StockItem.fresh(service.newId(), "AFTER", new DrawerFields(DIAMOND));
    assertTrue(service.add(List.of(item), "").done());
    if (database.onServer()) {
      return;
    }
    String sound =
        database
            .jdbi()
            .withHandle(
                handle -> handle.createQuery("PRAGMA integrity_check").mapTo(String.class).one());
    assertEquals("ok", sound);
  }

  /** What a process said it had written when it was killed. */
  private static List<String> acknowledged(Class<?> program, String place, int enough)
      throws Exception {
    Process writer =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                program.getName(),
                place)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    List<String> acknowledged = new ArrayList<>();
    try (BufferedReader said =
        new BufferedReader(
            new InputStreamReader(writer.getInputStream(), StandardCharsets.UTF_8))) {
      for (String line = said.readLine(); line != null; line = said.readLine()) {
        acknowledged.add(line);
        if (acknowledged.size() == enough) {
          // hard: no shutdown hook runs; by its handle, so that what it said can still be read
          writer.toHandle().destroyForcibly();
        }
      }
    } finally {
      writer.destroyForcibly();
    }
    assertTrue(writer.waitFor(2, TimeUnit.MINUTES));
    assertTrue(acknowledged.size() >= enough, "acknowledged " + acknowledged.size());
    return acknowledged;
  }
}
