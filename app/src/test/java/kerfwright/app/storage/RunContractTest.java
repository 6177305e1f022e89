package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.cases.CutRuns;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.chairside.CutRun;
import kerfwright.practice.chairside.RunEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every storage of runs keeps to. */
abstract class RunContractTest {
  private static final Instant EIGHT = Instant.parse("2026-03-02T08:00:00.123456Z");

  /** Ids grow, as those of the practice do. */
  private long made;

  private Database database;
  private CutRuns runs;

  abstract Database open() throws Exception;

  @BeforeEach
  void openRuns() throws Exception {
    database = open();
    runs = new CutRuns(database);
  }

  @AfterEach
  void close() {
    database.close();
  }

  private CutRun run(Instant begun) {
    return new CutRun(
        new UUID(0x7000, ++made),
        1,
        "K-0412",
        new Tooth(16),
        begun,
        "AB",
        "{\"steps\":[\"\u00b5\"]}");
  }

  @Test
  void whatWasBegunIsFoundAsItWas() {
    CutRun run = run(EIGHT);
    runs.begin(run);
    assertEquals(Optional.of(run), runs.find(run.id()));
    assertEquals(Optional.empty(), runs.find(UUID.randomUUID()));
  }

  @Test
  void aSwapIsKeptOnceAndOnlyFromTheNewestVersion() {
    CutRun run = run(EIGHT);
    runs.begin(run);
    CutRun swapped = run.with("{}");
    assertTrue(runs.change(swapped));
    assertFalse(runs.change(run.with("{\"other\":1}")), "somebody else was quicker");
    assertEquals(Optional.of(swapped), runs.find(run.id()));
  }

  @Test
  void theNewestComeFirstAlsoWhereAClockWasAhead() {
    CutRun early = run(EIGHT.plusSeconds(60));
    CutRun late = run(EIGHT);
    runs.begin(early);
    runs.begin(late);
    assertEquals(List.of(late, early), runs.newest(5));
    assertEquals(List.of(late), runs.newest(1));
  }

  /** The second was told after the first, by a clock that had been set back meanwhile. */
  @Test
  void whatHappenedIsKeptOnceAndInTheOrderItWasTold() {
    CutRun run = run(EIGHT);
    runs.begin(run);
    RunEvent seen =
        new RunEvent(
            new UUID(1, 1), run.id(), 2, RunEvent.What.SEEN, "", 1.35, "ÖZ", EIGHT.plusSeconds(9));
    RunEvent broken =
        new RunEvent(
            new UUID(1, 2),
            run.id(),
            1,
            RunEvent.What.BROKEN,
            "B04",
            null,
            "AB",
            EIGHT.plusSeconds(5));
    assertTrue(runs.add(seen));
    assertTrue(runs.add(broken));
    assertFalse(runs.add(seen), "sent twice");
    assertEquals(List.of(seen, broken), runs.events(run.id()));
    assertEquals(List.of(), runs.events(new UUID(9, 9)));
  }
}
