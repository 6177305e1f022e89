package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import kerfwright.app.storage.cases.StoredRecord;
import kerfwright.app.storage.people.StoredSettings;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.drawer.Refusal;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import kerfwright.practice.record.ChainCheck;
import kerfwright.practice.record.Cut;
import kerfwright.practice.record.Logged;
import kerfwright.practice.record.Origins;
import kerfwright.practice.record.PlanStep;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.record.RecordQuery;
import kerfwright.practice.record.RecordService;
import kerfwright.practice.record.Remark;
import kerfwright.practice.record.UseReport;
import kerfwright.practice.restock.PastUse;
import kerfwright.practice.restock.PastUses;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every storage of the cut record keeps to. */
abstract class RecordContractTest {
  private static final DrawerFields DIAMOND =
      new DrawerFields(
          Map.of("iso", "806 314 197 534 014", "head_length_mm", "8", "max_rpm", "300000"));
  private static final Tooth TOOTH = new Tooth(16);
  private static final Cut CUT =
      new Cut(200_000.0, 12.5, 20.0, 1.2, 50.0, Map.of("enamel", 3.25, "dentine", 1.0 / 3));

  private Database database;
  private Database other;
  private DrawerService drawer;
  private RecordService service;
  private StoredRecord record;
  private StoredSettings settings;
  private final HandClock clock = new HandClock();
  private final TimeOrderedIds ids = new TimeOrderedIds(clock, new SplittableRandom(5));

  /** A new, empty database. */
  abstract Database open() throws Exception;

  /** The database opened last, as another process opens it. */
  abstract Database again() throws Exception;

  @BeforeEach
  void start() throws Exception {
    database = open();
    StoredDrawer stored = new StoredDrawer(database);
    drawer = new DrawerService(stored, ids, clock);
    record = new StoredRecord(database);
    settings = new StoredSettings(database);
    service = new RecordService(record, stored, Origins.NONE, settings, ids, clock);
  }

  @AfterEach
  void stop() {
    if (other != null) {
      other.close();
    }
    if (database != null) {
      database.close();
    }
  }

  private StockItem added(String label) {
    StockItem item = StockItem.fresh(drawer.newId(), label, DIAMOND);
    assertTrue(drawer.add(List.of(item), "").done());
    return item;
  }

  private StockItem lot(String label, int pieces, boolean singleUse) {
    StockItem one = StockItem.fresh(drawer.newId(), label, DIAMOND);
    StockItem lot =
        one.next(
                draft -> {
                  draft.pieces = pieces;
                  draft.singleUse = singleUse;
                })
            .asNew();
    assertTrue(drawer.add(List.of(lot), "").done());
    return lot;
  }

  private StockItem now(UUID item) {
    return drawer.drawer().find(item).orElseThrow();
  }

  private void move(StockItem item, InstrumentState to) {
    assertTrue(drawer.move(List.of(new Pick(item.id(), now(item.id()).version())), to, "").done());
  }

  private UseReport report(String caseReference, StockItem item) {
    return report(caseReference, item, null, clock.instant());
  }

  private UseReport report(String caseReference, StockItem item, PlanStep step, Instant at) {
    return new UseReport(
        ids.next(), caseReference, TOOTH, step, item.id(), null, "", "L-22", CUT, "AB", at);
  }

  private StockItem handpiece(String label, int pieces) {
    StockItem one =
        StockItem.fresh(drawer.newId(), label, new DrawerFields(Map.of("kind", "turbine")));
    StockItem item = one.next(draft -> draft.pieces = pieces).asNew();
    assertTrue(drawer.add(List.of(item), "").done());
    return item;
  }

  private UseReport inHandpiece(String caseReference, StockItem item, int step, UUID handpiece) {
    return new UseReport(
        ids.next(),
        caseReference,
        TOOTH,
        new PlanStep("run:" + caseReference, step),
        item.id(),
        handpiece,
        "",
        "",
        CUT,
        "AB",
        clock.instant());
  }

  private List<Long> numbersOf(UUID piece) {
    return numbers(RecordQuery.ofInstrument(piece, 10));
  }

  @Test
  void aHandpieceIsUsedWithTheInstrumentFoundByItAndCountedOnceACase() {
    StockItem turbine = handpiece("T1", 1);
    log("K-0", added("D0"));
    UseReport first = inHandpiece("K-1", added("D1"), 1, turbine.id());
    RecordEntry entry = written(service.log(first));
    written(service.log(inHandpiece("K-1", added("D2"), 2, turbine.id())));
    assertEquals(entry, record.find(first.id()).orElseThrow());
    assertEquals("T1", Objects.requireNonNull(entry.use().handpiece()).used().label());
    assertEquals("turbine", Objects.requireNonNull(entry.use().handpiece()).used().what());
    assertTrue(service.log(first).before());
    assertEquals(InstrumentState.USED, now(turbine.id()).state());
    assertEquals(1, now(turbine.id()).uses());
    assertEquals(Map.of(), now(turbine.id()).cutMm3ByMaterial());
    assertEquals(List.of(3L, 2L), numbersOf(turbine.id()));
    RecordEntry other = written(service.log(inHandpiece("K-2", added("D3"), 1, turbine.id())));
    assertEquals(List.of(Remark.Kind.HANDPIECE), kinds(other));
    assertEquals(Remark.Kind.ANOTHER_CASE, other.remarks().get(0).plain().kind());
    assertTrue(ChainCheck.of(record).holds());
  }

  @Test
  void ofALotOfHandpiecesOneIsGivenOffAndKeptForTheWholeRun() {
    StockItem lot = handpiece("T", 2);
    RecordEntry first = written(service.log(inHandpiece("K-1", added("D1"), 1, lot.id())));
    RecordEntry second = written(service.log(inHandpiece("K-1", added("D2"), 2, lot.id())));
    UUID piece = Objects.requireNonNull(first.use().handpiece()).used().id();
    assertEquals(piece, Objects.requireNonNull(second.use().handpiece()).used().id());
    assertEquals(lot.id(), Objects.requireNonNull(first.use().handpiece()).used().pieceOf());
    assertEquals(1, now(lot.id()).pieces());
    assertEquals(InstrumentState.CLEAN, now(lot.id()).state());
    assertEquals(InstrumentState.USED, now(piece).state());
  }

  @Test
  void aCorrectedHandpieceIsCountedWhereItTurnedAndNotWhereItDidNot() {
    StockItem wrong = handpiece("T1", 1);
    StockItem right = handpiece("T2", 1);
    StockItem item = added("D1");
    RecordEntry entry = written(service.log(inHandpiece("K-1", item, 1, wrong.id())));
    UseReport corrected = inHandpiece("K-1", item, 1, right.id());
    RecordEntry correction =
        written(service.correct(entry.id(), corrected, "AB", "another handpiece"));
    assertEquals("T2", Objects.requireNonNull(correction.use().handpiece()).used().label());
    assertEquals(0, now(wrong.id()).uses());
    assertEquals(InstrumentState.USED, now(wrong.id()).state());
    assertEquals(1, now(right.id()).uses());
    assertEquals(1, now(item.id()).uses());
    written(service.strike(correction.id(), ids.next(), "AB", "did not happen"));
    assertEquals(0, now(right.id()).uses());
    assertTrue(ChainCheck.of(record).holds());
  }

  @Test
  void onlyAHandpieceOfTheDrawerIsOne() {
    StockItem item = added("D1");
    for (UUID none : List.of(ids.next(), added("D2").id())) {
      assertEquals(
          Logged.Refusal.UNKNOWN_INSTRUMENT,
          service.log(inHandpiece("K-1", item, 1, none)).refusal());
    }
    assertEquals(0, now(item.id()).uses());
  }

  private static RecordEntry written(Logged logged) {
    assertNull(logged.refusal());
    return Objects.requireNonNull(logged.entry());
  }

  private RecordEntry log(String caseReference, StockItem item) {
    return written(service.log(report(caseReference, item)));
  }

  private static List<Remark.Kind> kinds(RecordEntry entry) {
    return entry.remarks().stream().map(Remark::kind).toList();
  }

  @Test
  void aUseIsReadBackWholeAndMovesItsInstrument() {
    StockItem item = added("D1");
    UseReport report = report("K-0412", item, new PlanStep("K-0412/a", 2), clock.instant());
    RecordEntry entry = written(service.log(report));
    assertEquals(entry, record.find(report.id()).orElseThrow());
    assertEquals(entry, record.at(1).orElseThrow());
    assertEquals(CUT, entry.use().cut());
    assertEquals("806 314 197 534 014", entry.use().instrument().what());
    assertEquals(List.of(), entry.remarks());
    StockItem used = now(item.id());
    assertEquals(InstrumentState.USED, used.state());
    assertEquals(1, used.uses());
    assertEquals(CUT.mm3ByMaterial(), used.cutMm3ByMaterial());
    assertEquals(DrawerEntry.What.RECORDED, drawer.drawer().history(item.id()).get(1).what());
  }

  @Test
  void theSameEntrySentTwiceIsStoredOnceAndAnotherUnderItsIdIsRefused() {
    StockItem item = added("D1");
    UseReport report = report("K-1", item);
    RecordEntry first = written(service.log(report));
    Logged again = service.log(report);
    assertTrue(again.before());
    assertEquals(first, again.entry());
    assertEquals(1, now(item.id()).uses());
    assertEquals(1, record.end().number());
    UseReport other =
        new UseReport(
            report.id(), "K-2", TOOTH, null, item.id(), null, "", "", CUT, "AB", report.at());
    assertEquals(Logged.Refusal.ID_TAKEN, service.log(other).refusal());
  }

  @Test
  void oneSentByManyAtOnceIsStoredOnce() throws Exception {
    StockItem item = added("D1");
    UseReport report = report("K-1", item);
    Set<Long> numbers = new HashSet<>();
    for (Logged one : atOnce(12, i -> service.log(report))) {
      numbers.add(written(one).number());
    }
    assertEquals(Set.of(1L), numbers);
    assertEquals(1, now(item.id()).uses());
  }

  private interface Job {
    Logged run(int i);
  }

  private static List<Logged> atOnce(int times, Job job) throws Exception {
    ExecutorService people = Executors.newFixedThreadPool(4);
    try {
      List<Future<Logged>> all = new ArrayList<>();
      for (int i = 0; i < times; i++) {
        int each = i;
        all.add(people.submit(() -> job.run(each)));
      }
      List<Logged> results = new ArrayList<>();
      for (Future<Logged> one : all) {
        results.add(one.get());
      }
      return results;
    } finally {
      people.shutdown();
    }
  }

  @Test
  void usesWrittenAtOnceAreAllKeptAndTheChainHolds() throws Exception {
    StockItem item = added("D1");
    Instant at = clock.instant();
    List<Logged> all = atOnce(24, i -> service.log(report("K-" + i, item, null, at.plusMillis(i))));
    Set<Long> numbers = new HashSet<>();
    all.forEach(one -> numbers.add(written(one).number()));
    assertEquals(24, numbers.size());
    assertEquals(24, now(item.id()).uses());
    assertEquals(24 * 3.25, now(item.id()).cutMm3ByMaterial().get("enamel"), 1e-9);
    ChainCheck check = ChainCheck.of(record);
    assertTrue(check.holds());
    assertEquals(24, check.sound().number());
  }

  @Test
  void twoProcessesWriteUsesOfOneItemAndEachOneStands() throws Exception {
    StockItem item = added("D1");
    other = again();
    TimeOrderedIds others = new TimeOrderedIds(clock, new SplittableRandom(6));
    RecordService there =
        new RecordService(
            new StoredRecord(other),
            new StoredDrawer(other),
            Origins.NONE,
            new StoredSettings(other),
            others,
            clock);
    Instant at = clock.instant();
    List<Logged> all =
        atOnce(
            40,
            i ->
                (i % 2 == 0 ? service : there).log(report("K-" + i, item, null, at.plusMillis(i))));
    Set<Long> numbers = new HashSet<>();
    all.forEach(one -> numbers.add(written(one).number()));
    assertEquals(40, numbers.size());
    assertEquals(40, now(item.id()).uses());
    assertTrue(ChainCheck.of(record).holds());
  }

  @Test
  void aUseIsWrittenWhileOthersKeepChangingItsInstrument() throws Exception {
    StockItem item = added("D1");
    other = again();
    TimeOrderedIds others = new TimeOrderedIds(clock, new SplittableRandom(6));
    DrawerService there = new DrawerService(new StoredDrawer(other), others, clock);
    List<Logged> uses = new ArrayList<>();
    AtomicInteger changes = new AtomicInteger();
    AtomicBoolean over = new AtomicBoolean();
    ExecutorService people = Executors.newFixedThreadPool(2);
    try {
      List<Future<?>> changing = new ArrayList<>();
      for (int i = 0; i < 2; i++) {
        DrawerService one = i == 0 ? drawer : there;
        changing.add(
            people.submit(
                () -> {
                  while (!over.get()) {
                    Pick pick = new Pick(item.id(), one.drawer().find(item.id()).get().version());
                    String place = "place " + changes.incrementAndGet();
                    one.edit(pick, draft -> draft.place = place, "");
                  }
                }));
      }
      for (int i = 0; i < 20; i++) {
        uses.add(service.log(report("K-" + i, item)));
      }
      over.set(true);
      for (Future<?> one : changing) {
        one.get();
      }
    } finally {
      over.set(true);
      people.shutdown();
    }
    uses.forEach(RecordContractTest::written);
    assertEquals(20, now(item.id()).uses());
    assertTrue(changes.get() > 0);
  }

  @Test
  void stepsOfOneCaseAreOneUseToTheOrderList() {
    StockItem item = added("D1");
    Instant at = Instant.parse("2026-11-02T08:00:00Z");
    service.log(report("K-1", item, new PlanStep("run:a", 1), at));
    service.log(report("k-1", item, new PlanStep("run:a", 2), at.plusSeconds(90)));
    service.log(report("K-1", item, null, at.plusSeconds(86_400)));
    service.log(report("K-2", item, null, at.plusSeconds(180)));
    List<PastUse> uses =
        PastUses.since(
            record, at.minusSeconds(1), ZoneOffset.UTC, step -> Optional.of("access-cavity"));
    assertEquals(3, uses.size());
    List<PastUse> first = uses.stream().filter(use -> !use.procedure().isEmpty()).toList();
    assertEquals(1, first.size(), "both steps");
    assertEquals(2 * 3.25, first.get(0).mm3ByMaterial().get("enamel"), 1e-9);
  }

  @Test
  void theSameUseGoesOnWithinACaseAndIsRemarkedOnAnother() {
    StockItem item = added("D1");
    log("K-1", item);
    assertEquals(List.of(), kinds(log("k-1", item)));
    assertEquals(1, now(item.id()).uses());
    RecordEntry other = log("K-2", item);
    assertEquals(List.of(new Remark(Remark.Kind.ANOTHER_CASE, List.of("k-1"))), other.remarks());
    assertEquals(2, now(item.id()).uses());
  }

  @Test
  void aUseMarkedByHandBeforeIsNotCountedTwice() {
    StockItem item = added("D1");
    Instant during = clock.instant();
    move(item, InstrumentState.USED);
    assertEquals(List.of(), kinds(log("K-1", item)));
    assertEquals(1, now(item.id()).uses());
    // and a report that comes late, when it is being cleaned already
    StockItem late = added("D2");
    Instant cut = clock.instant();
    move(late, InstrumentState.CLEANING);
    RecordEntry entry = written(service.log(report("K-1", late, null, cut)));
    assertEquals(List.of(), kinds(entry));
    assertEquals(InstrumentState.CLEANING, now(late.id()).state());
    assertEquals(1, now(late.id()).uses());
    assertTrue(during.isBefore(cut));
  }

  @Test
  void aLateReportTakesAnInstrumentOffTheNextTray() {
    StockItem item = added("D1");
    Instant cut = clock.instant();
    move(item, InstrumentState.ON_TRAY);
    written(service.log(report("K-1", item, null, cut)));
    assertEquals(InstrumentState.USED, now(item.id()).state());
  }

  @Test
  void whatMayNotBeUsedIsRecordedWithARemark() {
    StockItem withdrawn = added("D1");
    move(withdrawn, InstrumentState.WITHDRAWN);
    RecordEntry entry = log("K-1", withdrawn);
    assertEquals(List.of("withdrawn"), entry.remarks().get(0).arguments());
    assertEquals(InstrumentState.WITHDRAWN, now(withdrawn.id()).state());
    assertEquals(1, now(withdrawn.id()).uses());
    StockItem cleaning = added("D2");
    move(cleaning, InstrumentState.CLEANING);
    assertEquals(List.of(Remark.Kind.NOT_READY), kinds(log("K-1", cleaning)));
    assertEquals(InstrumentState.USED, now(cleaning.id()).state());
    Cut fast = new Cut(400_000.0, null, null, null, null, Map.of());
    UseReport tooFast =
        new UseReport(
            ids.next(),
            "K-1",
            TOOTH,
            null,
            added("D3").id(),
            null,
            "",
            "",
            fast,
            "AB",
            clock.instant());
    Remark remark = written(service.log(tooFast)).remarks().get(0);
    assertEquals(List.of("400000", "300000"), remark.arguments());
  }

  @Test
  void aLotGivesOffOnePieceAndAPlanGoesOnWithIt() {
    StockItem lot = lot("L1", 3, true);
    RecordEntry first =
        written(service.log(report("K-1", lot, new PlanStep("p", 1), clock.instant())));
    assertEquals("L1.1", first.use().instrument().label());
    assertEquals(lot.id(), first.use().instrument().pieceOf());
    assertEquals(2, now(lot.id()).pieces());
    assertEquals(InstrumentState.CLEAN, now(lot.id()).state());
    StockItem piece = now(first.use().instrument().id());
    assertEquals(InstrumentState.USED, piece.state());
    assertEquals(1, piece.uses());
    RecordEntry second =
        written(service.log(report("K-1", lot, new PlanStep("p", 2), clock.instant())));
    assertEquals(piece.id(), second.use().instrument().id());
    assertEquals(List.of(), kinds(second));
    assertEquals(2, now(lot.id()).pieces());
    assertEquals("L1.2", log("K-2", lot).use().instrument().label());
    assertEquals("L1", log("K-3", lot).use().instrument().label());
    assertEquals(
        List.of(Remark.Kind.ANOTHER_CASE, Remark.Kind.SINGLE_USE_AGAIN), kinds(log("K-4", lot)));
  }

  @Test
  void aCorrectionIsANewEntryAndCountsFollowIt() {
    StockItem wrong = added("D1");
    StockItem right = added("D2");
    RecordEntry entry = log("K-1", wrong);
    UseReport report = report("K-1", right, null, entry.use().at());
    RecordEntry correction = written(service.correct(entry.id(), report, "CD", "mixed up"));
    assertEquals(2, correction.number());
    assertEquals(entry, record.find(entry.id()).orElseThrow());
    assertEquals(correction, record.correctionsOf(List.of(entry.id())).get(entry.id()));
    assertEquals(0, now(wrong.id()).uses());
    assertEquals(Map.of(), now(wrong.id()).cutMm3ByMaterial());
    assertEquals(InstrumentState.USED, now(wrong.id()).state());
    assertEquals(1, now(right.id()).uses());
    assertEquals(
        Logged.Refusal.CORRECTED_ALREADY,
        service.strike(entry.id(), ids.next(), "CD", "again").refusal());
    UUID id = ids.next();
    RecordEntry struck = written(service.strike(correction.id(), id, "CD", "never took place"));
    assertTrue(service.strike(correction.id(), id, "CD", "never took place").before());
    assertEquals(0, now(right.id()).uses());
    assertEquals(
        Logged.Refusal.STRUCK, service.strike(struck.id(), ids.next(), "CD", "x").refusal());
    assertEquals(
        Logged.Refusal.UNKNOWN_ENTRY, service.strike(ids.next(), ids.next(), "CD", "x").refusal());
    assertTrue(ChainCheck.of(record).holds());
  }

  @Test
  void aCorrectedToothOfASingleUseInstrumentIsNoSecondUse() {
    StockItem lot = lot("L1", 2, true);
    RecordEntry entry = log("K-1", lot);
    StockItem piece = now(entry.use().instrument().id());
    UseReport right =
        new UseReport(
            ids.next(),
            "K-1",
            new Tooth(17),
            null,
            piece.id(),
            null,
            "",
            "",
            CUT,
            "AB",
            entry.use().at());
    assertEquals(List.of(), kinds(written(service.correct(entry.id(), right, "CD", "tooth"))));
    assertEquals(1, now(piece.id()).uses());
    assertEquals(CUT.mm3ByMaterial(), now(piece.id()).cutMm3ByMaterial());
    written(service.strike(right.id(), ids.next(), "CD", "not at all"));
    StockItem opened = now(piece.id());
    assertEquals(InstrumentState.USED, opened.state());
    assertFalse(
        drawer
            .edit(new Pick(opened.id(), opened.version()), draft -> draft.singleUse = false, "")
            .done());
  }

  @Test
  void byWhomIsCheckedWhereThePracticeHasNamedItsPeople() {
    assertTrue(settings.write(settings.read().version(), Map.of("person.CD", "clinician")));
    StockItem item = added("D1");
    RecordEntry entry = log("K-1", item);
    assertEquals(List.of(new Remark(Remark.Kind.UNKNOWN_PERSON, List.of("AB"))), entry.remarks());
    assertEquals(
        Logged.Refusal.UNKNOWN_PERSON,
        service.strike(entry.id(), ids.next(), "AB", "slip").refusal());
    UseReport right = report("K-1", item);
    assertEquals(List.of(), kinds(written(service.correct(entry.id(), right, "CD", "tooth"))));
    assertTrue(settings.write(settings.read().version(), Map.of("person.AB", "clinician")));
    assertEquals(List.of(), kinds(log("K-1", item)));
  }

  @Test
  void ofManyWhoCorrectTheSameOnlyOneDoes() throws Exception {
    StockItem item = added("D1");
    RecordEntry entry = log("K-1", item);
    int done = 0;
    for (Logged one : atOnce(8, i -> service.strike(entry.id(), ids.next(), "CD", "slip " + i))) {
      done += one.entry() != null ? 1 : 0;
      assertTrue(one.entry() != null || one.refusal() == Logged.Refusal.CORRECTED_ALREADY);
    }
    assertEquals(1, done);
    assertEquals(0, now(item.id()).uses());
  }

  @Test
  void itIsTracedBothWaysInPages() {
    StockItem a = added("D1");
    StockItem b = added("D2");
    Instant at = Instant.parse("2026-03-02T10:00:00Z");
    for (int i = 0; i < 5; i++) {
      written(service.log(report("K-" + i % 2, i == 4 ? b : a, null, at.plusSeconds(i))));
    }
    assertEquals(List.of(5L, 3L, 1L), numbers(RecordQuery.ofCase("k-0", 10)));
    assertEquals(List.of(4L, 3L, 2L, 1L), numbers(RecordQuery.ofInstrument(a.id(), 10)));
    List<RecordEntry> page = record.list(RecordQuery.newest(2));
    RecordQuery next =
        new RecordQuery(null, TOOTH, null, null, null, null, page.get(1).number(), 2);
    assertEquals(List.of(3L, 2L), numbers(next));
    assertEquals(
        List.of(3L),
        numbers(
            new RecordQuery(
                "K-0", TOOTH, a.id(), null, at.plusSeconds(1), at.plusSeconds(3), null, 9)));
    assertEquals(List.of(), numbers(RecordQuery.ofLoad(a.id(), 10)));
  }

  @Test
  void whatAClockThatWasAheadWroteStandsWhereItWasWritten() {
    StockItem item = added("D1");
    Instant now = Instant.parse("2026-03-02T10:00:00Z");
    for (Instant at : List.of(now, now.plusSeconds(400L * 86_400), now.plusSeconds(60))) {
      written(service.log(report("K-1", item, null, at)));
    }
    assertEquals(List.of(3L, 2L, 1L), numbers(RecordQuery.newest(10)));
    assertEquals(List.of(3L, 2L, 1L), numbers(RecordQuery.ofCase("K-1", 10)));
    assertEquals(List.of(3L, 2L, 1L), numbers(RecordQuery.ofInstrument(item.id(), 10)));
    List<RecordEntry> first = record.list(RecordQuery.ofCase("K-1", 1));
    assertEquals(List.of(2L), numbers(RecordQuery.ofCase("K-1", 1).after(first.get(0))));
    // a period asks for when it was cut
    assertEquals(
        List.of(3L, 1L),
        numbers(new RecordQuery(null, null, null, null, now, now.plusSeconds(120), null, 10)));
  }

  private List<Long> numbers(RecordQuery query) {
    return record.list(query).stream().map(RecordEntry::number).toList();
  }

  @Test
  void anUndoInTheDrawerBringsNothingUsedBack() {
    StockItem item = added("D1");
    UUID byHand =
        Objects.requireNonNull(
            drawer.move(List.of(new Pick(item.id(), 1)), InstrumentState.USED, "").batch());
    assertEquals(
        Refusal.Plain.NEEDS_REPROCESSING, drawer.undo(byHand, "").obstacles().get(0).why());
    StockItem other = added("D2");
    log("K-1", other);
    UUID recorded = drawer.drawer().history(other.id()).get(1).batch();
    assertEquals(Refusal.Plain.BY_RECORD, drawer.undo(recorded, "").obstacles().get(0).why());
    assertEquals(InstrumentState.USED, now(item.id()).state());
    assertEquals(InstrumentState.USED, now(other.id()).state());
  }

  @Test
  void everyWayToTamperIsFound() {
    StockItem item = added("D1");
    for (int i = 0; i < 6; i++) {
      log("K-" + i, item);
    }
    assertBreaks(
        "UPDATE cut_record SET entry = replace(entry, 'K-2', 'K-9') WHERE number = 3",
        3,
        ChainCheck.Kind.CHANGED);
    assertBreaks(
        "UPDATE cut_record SET case_key = 'K-9' WHERE number = 3",
        3,
        ChainCheck.Kind.FOUND_WRONGLY);
    assertBreaks("UPDATE cut_record SET hash = 'x' WHERE number = 4", 4, ChainCheck.Kind.CHANGED);
    assertBreaks("DELETE FROM cut_record WHERE number = 2", 2, ChainCheck.Kind.MISSING);
    assertBreaks("DELETE FROM cut_record WHERE number = 6", 6, ChainCheck.Kind.END);
    assertBreaks("UPDATE cut_record_end SET number = 5", 6, ChainCheck.Kind.END);
    assertTrue(ChainCheck.of(record).holds());
  }

  /** Changes the tables past the program, looks, and puts them back. */
  private void assertBreaks(String sql, long number, ChainCheck.Kind kind) {
    ChainCheck check =
        database
            .jdbi()
            .withHandle(
                handle -> {
                  for (String table : List.of("cut_record", "cut_record_end")) {
                    handle.execute("CREATE TABLE kept_" + table + " AS SELECT * FROM " + table);
                  }
                  assertEquals(1, handle.execute(sql));
                  ChainCheck found = ChainCheck.of(record);
                  for (String table : List.of("cut_record", "cut_record_end")) {
                    handle.execute("DELETE FROM " + table);
                    handle.execute("INSERT INTO " + table + " SELECT * FROM kept_" + table);
                    handle.execute("DROP TABLE kept_" + table);
                  }
                  return found;
                });
    assertFalse(check.holds());
    assertEquals(new ChainCheck.Break(number, kind), check.broken());
  }
}
