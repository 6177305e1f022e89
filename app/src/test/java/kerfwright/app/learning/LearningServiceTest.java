package kerfwright.app.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.cases.CutRuns;
import kerfwright.app.storage.cases.StoredRecord;
import kerfwright.app.storage.people.StoredSettings;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.planner.casework.OwnPace;
import kerfwright.practice.chairside.CutRun;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import kerfwright.practice.record.Cut;
import kerfwright.practice.record.Origins;
import kerfwright.practice.record.PlanStep;
import kerfwright.practice.record.RecordService;
import kerfwright.practice.record.UseReport;
import kerfwright.practice.restock.PastUses;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From runs at the chair to what plans are made with. */
class LearningServiceTest {
  private static final OwnPace.Where ENAMEL = new OwnPace.Where("enamel", InstrumentKind.DIAMOND);
  private static final Instant FIRST = Instant.parse("2026-11-02T08:00:00Z");

  @TempDir private Path folder;
  private Database database;
  private CutRuns runs;
  private StoredSettings settings;
  private RecordService record;
  private LearningService service;
  private StockItem item;
  private int logged;

  @BeforeEach
  void start() throws Exception {
    database = Database.file(folder.resolve("a.db"));
    runs = new CutRuns(database);
    settings = new StoredSettings(database);
    StoredDrawer drawer = new StoredDrawer(database);
    StoredRecord kept = new StoredRecord(database);
    TimeOrderedIds ids = new TimeOrderedIds(Clock.systemUTC(), new SplittableRandom(5));
    record =
        new RecordService(
            kept, drawer, Origins.NONE, new StoredSettings(database), ids, Clock.systemUTC());
    service = new LearningService(kept, runs, drawer, settings);
    DrawerService stock = new DrawerService(drawer, ids, Clock.systemUTC());
    item =
        StockItem.fresh(
            stock.newId(),
            "D1",
            new DrawerFields(Map.of("iso", "806 314 197 534 014", "head_length_mm", "8.0")));
    assertTrue(stock.add(List.of(item), "").done());
  }

  @AfterEach
  void stop() {
    database.close();
  }

  private CutRun run(double literatureS) {
    String sheet =
        "{\"procedureId\":\"access-cavity\",\"steps\":[{\"order\":1,\"literatureS\":"
            + literatureS
            + ",\"mm3\":{\"enamel\":4.5}}]}";
    CutRun run = new CutRun(record.newId(), 1, "K-" + logged, new Tooth(16), FIRST, "AB", sheet);
    runs.begin(run);
    return run;
  }

  private UUID log(CutRun run, int step, double seconds) {
    UUID id = record.newId();
    Cut cut = new Cut(null, null, seconds, null, null, Map.of("enamel", 4.5));
    UseReport report =
        new UseReport(
            id,
            run.caseReference(),
            run.tooth(),
            new PlanStep(run.planName(), step),
            item.id(),
            null,
            "",
            "",
            cut,
            "AB",
            FIRST.plusSeconds(60L * logged++));
    assertNotNull(record.log(report).entry());
    return id;
  }

  @Test
  void loggedStepsTeachUntilTheyAreResetAndAgainWhenThatIsTakenBack() {
    assertSame(OwnPace.NONE, service.get());
    Random chance = new Random(2);
    for (int i = 0; i < 40; i++) {
      log(run(50), 1, 40 * Math.exp(0.1 * chance.nextGaussian()));
    }
    OwnPace.Factor factor = service.get().time("enamel", InstrumentKind.DIAMOND);
    assertTrue(factor.low() < 0.8 && 0.8 < factor.high(), factor.toString());
    assertEquals(Map.of(ENAMEL, 40), service.known().counts());
    assertSame(service.known(), service.known(), "worked out once");

    assertTrue(settings.write(0, Map.of(LearningService.SINCE, "2026-12-01T00:00:00Z")));
    assertSame(OwnPace.NONE, service.get());
    assertTrue(settings.write(1, Map.of(LearningService.SINCE, "")));
    assertEquals(factor, service.get().time("enamel", InstrumentKind.DIAMOND));

    assertTrue(settings.write(2, Map.of(LearningService.USE, "no")));
    assertSame(OwnPace.NONE, service.get());
    assertEquals(40, service.known().pace().logged());
  }

  @Test
  void whatWasStruckOrHasNoPlanOrRanOnTeachesNothing() {
    CutRun run = run(50);
    UUID wrong = log(run, 1, 30);
    assertEquals(1, service.known().pace().logged());
    assertNotNull(record.strike(wrong, record.newId(), "AB", "not done").entry());
    assertEquals(0, service.known().pace().logged());
    log(run, 7, 30);
    log(run, 1, 3000);
    assertEquals(0, service.known().pace().logged());
    assertEquals(1, service.known().setAside());
  }

  /** One who learned all along knows what one who reads the whole log knows. */
  @Test
  void whatIsLearnedEntryByEntryIsWhatIsLearnedAtOnce() {
    Random chance = new Random(3);
    UUID any = log(run(50), 1, 40);
    for (int i = 0; i < 12; i++) {
      service.known();
      log(run(50), 1, 40 * Math.exp(0.3 * chance.nextGaussian()));
      if (i == 6) {
        assertNotNull(record.strike(any, record.newId(), "AB", "not done").entry());
      }
      StoredRecord kept = new StoredRecord(database);
      LearningService fresh = new LearningService(kept, runs, new StoredDrawer(database), settings);
      assertEquals(fresh.known(), service.known());
      assertEquals(i < 6 ? i + 2 : i + 1, service.known().counts().get(ENAMEL));
      long end = kept.end().number();
      assertEquals(
          1,
          PastUses.entriesAfter(kept, Instant.EPOCH, end - 1)
              .map(List::size)
              .orElse(i == 6 ? 1 : 0));
    }
  }

  @Test
  void theProcedureOfAStepIsTheOneOfItsRun() {
    PlannedSteps planned = new PlannedSteps(runs);
    CutRun run = run(50);
    assertEquals("access-cavity", planned.procedure(new PlanStep(run.planName(), 1)).orElse(""));
    assertTrue(planned.find(new PlanStep("run:" + UUID.randomUUID(), 1)).isEmpty());
    assertTrue(planned.find(new PlanStep("other", 1)).isEmpty());
  }
}
