package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.record.ChainCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KilledProcessTest {
  @Test
  void aProcessKilledHardLosesNoAcknowledgedChange(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("kerfwright.db");
    List<String> acknowledged = acknowledged(KilledWriter.class, file, 150);
    try (Database database = Database.file(file)) {
      assertEquals(Set.copyOf(acknowledged), new StoredDrawer(database).taken(acknowledged));
      assertSound(database);
    }
  }

  @Test
  void itLosesNoUseAndNoLoadEitherAndTheChainHolds(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("kerfwright.db");
    List<String> acknowledged = acknowledged(KilledRecordWriter.class, file, 60);
    try (Database database = Database.file(file)) {
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

  private static void assertSound(Database database) {
    String sound =
        database
            .jdbi()
            .withHandle(
                handle -> handle.createQuery("PRAGMA integrity_check").mapTo(String.class).one());
    assertEquals("ok", sound);
  }

  /** What a process said it had written when it was killed. */
  private static List<String> acknowledged(Class<?> program, Path file, int enough)
      throws Exception {
    Process writer =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                program.getName(),
                file.toString())
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
    assertTrue(writer.waitFor(20, TimeUnit.SECONDS));
    assertTrue(acknowledged.size() >= enough, "acknowledged " + acknowledged.size());
    return acknowledged;
  }
}
