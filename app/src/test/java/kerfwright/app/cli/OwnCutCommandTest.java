package kerfwright.app.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import kerfwright.app.Run;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnCutCommandTest {
  @TempDir private Path folder;

  @BeforeEach
  void aDrawerWithOneDiamond() throws Exception {
    try (Database database = Database.file(folder.resolve("kerfwright.db"))) {
      DrawerService stock =
          new DrawerService(
              new StoredDrawer(database),
              new TimeOrderedIds(Clock.systemUTC(), new SplittableRandom(5)),
              Clock.systemUTC());
      StockItem item =
          StockItem.fresh(
              stock.newId(),
              "D1",
              new DrawerFields(Map.of("iso", "806 314 197 534 014", "head_length_mm", "8.0")));
      assertTrue(stock.add(List.of(item), "").done());
    }
  }

  private Run run(String depths) {
    return Run.of(
        "own-cut",
        "--data",
        folder.toString(),
        "--instrument",
        "D1",
        "--load-g",
        "100",
        "--water-ml",
        "50",
        "--engaged-mm",
        "4",
        "--depths-mm",
        depths);
  }

  @Test
  void slotsAreKeptAndTellWhatTheyNarrow() {
    Run run = run("1.1 0.9 1.2 1.0 1.1");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("before: "), run.out());
    assertTrue(run.out().contains("Burs in everything else"), run.out());
    assertTrue(run.out().contains("no cut of yours"), run.out());
  }

  @Test
  void badInputNamesTheField() {
    Run run = run("deep");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("--depths-mm"), run.err());
    assertEquals(
        2,
        Run.of(
                "own-cut",
                "--data",
                "nowhere",
                "--instrument",
                "D1",
                "--load-g",
                "1",
                "--water-ml",
                "1",
                "--engaged-mm",
                "1",
                "--depths-mm",
                "1")
            .code());
  }
}
