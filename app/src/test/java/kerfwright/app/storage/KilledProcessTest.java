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
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KilledProcessTest {
  @Test
  void aProcessKilledHardLosesNoAcknowledgedChange(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("kerfwright.db");
    Process writer =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                KilledWriter.class.getName(),
                file.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    List<String> acknowledged = new ArrayList<>();
    try (BufferedReader said =
        new BufferedReader(
            new InputStreamReader(writer.getInputStream(), StandardCharsets.UTF_8))) {
      for (String line = said.readLine(); line != null; line = said.readLine()) {
        acknowledged.add(line);
        if (acknowledged.size() == 150) {
          // hard: no shutdown hook runs; by its handle, so that what it said can still be read
          writer.toHandle().destroyForcibly();
        }
      }
    } finally {
      writer.destroyForcibly();
    }
    assertTrue(writer.waitFor(20, TimeUnit.SECONDS));
    assertTrue(acknowledged.size() >= 150, "acknowledged " + acknowledged.size());
    try (Database database = Database.file(file)) {
      assertEquals(Set.copyOf(acknowledged), new StoredDrawer(database).taken(acknowledged));
      String sound =
          database
              .jdbi()
              .withHandle(
                  handle -> handle.createQuery("PRAGMA integrity_check").mapTo(String.class).one());
      assertEquals("ok", sound);
    }
  }
}
