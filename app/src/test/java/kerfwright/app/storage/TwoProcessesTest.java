package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicBoolean;
import kerfwright.app.storage.cases.StoredRecord;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.app.web.Program;
import kerfwright.practice.record.ChainCheck;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two processes serve one practice on a PostgreSQL; either is killed while both take uses. What was
 * acknowledged stands, and the other goes on.
 */
@Tag("kill")
class TwoProcessesTest {
  private static final int BEFORE = 12;
  private static final int AFTER = 12;

  private final HttpClient client = HttpClient.newHttpClient();

  @TempDir private Path folder;

  /** Logs one use after the other at a process, and keeps what that acknowledged. */
  private final class Chair {
    final List<UUID> acknowledged = Collections.synchronizedList(new ArrayList<>());
    private final AtomicBoolean over = new AtomicBoolean();
    private final Thread thread;

    Chair(Program at, List<UUID> items) {
      thread =
          new Thread(
              () -> {
                for (int i = 0; !over.get(); i++) {
                  UUID id = UUID.randomUUID();
                  try {
                    if (logged(at, id, items.get(i % items.size()))) {
                      acknowledged.add(id);
                    }
                  } catch (IOException killed) {
                    return;
                  } catch (InterruptedException stopped) {
                    return;
                  }
                }
              });
      thread.start();
    }

    void until(int more) throws InterruptedException {
      int wanted = acknowledged.size() + more;
      while (acknowledged.size() < wanted) {
        assertTrue(thread.isAlive(), "it stopped taking uses");
        Thread.sleep(20);
      }
    }

    /** Ends it; gives what was acknowledged. */
    List<UUID> end() throws InterruptedException {
      over.set(true);
      thread.join();
      return acknowledged;
    }
  }

  private boolean logged(Program at, UUID id, UUID item) throws IOException, InterruptedException {
    String entry =
        """
        [{"id": "%s", "case": "K-1", "tooth": 16, "run": "%s", "step": 1, "item": "%s", "by": "AB",
          "setRpm": 40000, "totalSeconds": 5, "mm3": {"enamel": 1}, "at": "2026-01-05T09:30:00Z"}]
        """
            .formatted(id, UUID.randomUUID(), item);
    String own = "http://localhost:" + at.port();
    HttpResponse<String> answer =
        client.send(
            HttpRequest.newBuilder(URI.create(own + "/chairside/log"))
                .header("Origin", own)
                .header("Content-Type", "application/json")
                .timeout(Duration.ofMinutes(2))
                .POST(HttpRequest.BodyPublishers.ofString(entry))
                .build(),
            HttpResponse.BodyHandlers.ofString());
    return answer.statusCode() == 200
        && new ObjectMapper().readTree(answer.body()).get(0).path("stands").asBoolean();
  }

  @Test
  void eitherMayDieAndNothingAcknowledgedIsLost() throws Exception {
    String url = PostgresOfTests.newDatabase();
    Map<String, String> shared = Map.of("KERFWRIGHT_DATABASE", url);
    List<UUID> acknowledged = new ArrayList<>();
    Program one = Program.serve(folder, shared, "--demo");
    Program other = Program.serve(folder, shared, "--demo");
    try (Database database = Database.server(url)) {
      List<UUID> items =
          new StoredDrawer(database)
              .list(kerfwright.practice.drawer.DrawerQuery.all(40)).items().stream()
                  .map(item -> item.id())
                  .toList();
      for (boolean first : new boolean[] {true, false}) {
        Chair here = new Chair(one, items);
        Chair there = new Chair(other, items);
        try {
          here.until(BEFORE);
          there.until(BEFORE);
          (first ? one : other).kill();
          (first ? there : here).until(AFTER);
        } finally {
          acknowledged.addAll(here.end());
          acknowledged.addAll(there.end());
        }
        if (first) {
          one = Program.serve(folder, shared, "--demo");
        }
      }
      StoredRecord record = new StoredRecord(database);
      List<UUID> lost = acknowledged.stream().filter(id -> record.find(id).isEmpty()).toList();
      assertEquals(List.of(), lost);
      assertEquals(acknowledged.size(), new HashSet<>(acknowledged).size());
      assertTrue(acknowledged.size() >= 2 * (2 * BEFORE + AFTER));
      assertTrue(ChainCheck.of(record).holds());
      assertTrue(Chains.of(database).hold());
    } finally {
      one.close();
      other.close();
    }
  }
}
