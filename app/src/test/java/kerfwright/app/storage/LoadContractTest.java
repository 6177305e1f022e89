package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import kerfwright.app.storage.cases.StoredRecord;
import kerfwright.app.storage.people.StoredSettings;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.app.storage.stock.StoredLoads;
import kerfwright.app.storage.stock.StoredOrigins;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.drawer.Refusal;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import kerfwright.practice.record.Cut;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.record.RecordQuery;
import kerfwright.practice.record.RecordService;
import kerfwright.practice.record.Remark;
import kerfwright.practice.record.UseReport;
import kerfwright.practice.reprocessing.Cycle;
import kerfwright.practice.reprocessing.Indicator;
import kerfwright.practice.reprocessing.Indicator.Result;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.LoadOutcome;
import kerfwright.practice.reprocessing.LoadRefusal;
import kerfwright.practice.reprocessing.LoadService;
import kerfwright.practice.reprocessing.NewLoad;
import kerfwright.practice.reprocessing.Reach;
import kerfwright.practice.reprocessing.Recall;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every storage of steriliser loads keeps to. */
abstract class LoadContractTest {
  private static final DrawerFields DIAMOND =
      new DrawerFields(Map.of("iso", "806 314 197 534 014", "head_length_mm", "8"));

  private final HandClock clock = new HandClock();
  private final TimeOrderedIds ids = new TimeOrderedIds(clock, new SplittableRandom(5));
  private Database database;
  private Database other;
  private DrawerService drawer;
  private LoadService service;
  private RecordService recordService;
  private StoredSettings settings;

  /** A new, empty database. */
  abstract Database open() throws Exception;

  /** The database opened last, as another process opens it. */
  abstract Database again() throws Exception;

  @BeforeEach
  void start() throws Exception {
    database = open();
    StoredDrawer stored = new StoredDrawer(database);
    StoredRecord record = new StoredRecord(database);
    settings = new StoredSettings(database);
    drawer = new DrawerService(stored, ids, clock);
    recordService =
        new RecordService(record, stored, new StoredOrigins(database, clock), settings, ids, clock);
    service = service(database, ids);
    set(Map.of("person.RP", "reprocessing", "person.AS", "assistant"));
  }

  private LoadService service(Database in, TimeOrderedIds named) {
    StoredDrawer stored = new StoredDrawer(in);
    StoredLoads loads = new StoredLoads(in);
    Reach reach = new Reach(loads, stored, new StoredRecord(in));
    return new LoadService(loads, stored, new StoredSettings(in), reach, named, clock);
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

  private void set(Map<String, String> values) {
    assertTrue(settings.write(settings.read().version(), values));
  }

  /** Instruments that were cleaned. */
  private List<StockItem> cleaned(String... labels) {
    List<StockItem> items =
        Stream.of(labels).map(label -> StockItem.fresh(drawer.newId(), label, DIAMOND)).toList();
    assertTrue(drawer.add(items, "").done());
    toCleaning(items);
    return items.stream().map(this::now).toList();
  }

  private void toCleaning(List<StockItem> items) {
    assertTrue(drawer.move(picks(items), InstrumentState.CLEANING, "").done());
  }

  private List<Pick> picks(List<StockItem> items) {
    return items.stream().map(one -> new Pick(one.id(), now(one).version())).toList();
  }

  private StockItem now(StockItem item) {
    return drawer.drawer().find(item.id()).orElseThrow();
  }

  private List<InstrumentState> states(List<StockItem> items) {
    return items.stream().map(one -> now(one).state()).toList();
  }

  private LoadOutcome start(List<StockItem> items) {
    List<NewLoad.Packed> pouches =
        picks(items).stream().map(one -> new NewLoad.Packed("", List.of(one))).toList();
    return service.start(new NewLoad("S1", Cycle.B134, "AS", pouches));
  }

  private static Load done(LoadOutcome outcome) {
    assertEquals(List.of(), outcome.refusals());
    return Objects.requireNonNull(outcome.load());
  }

  private static List<LoadRefusal.Kind> kinds(LoadOutcome outcome) {
    return outcome.refusals().stream().map(LoadRefusal::kind).toList();
  }

  private Load passed(Load load) {
    clock.pass(Duration.ofMinutes(load.minutes()));
    Map<Indicator, Result> results = new EnumMap<>(Indicator.class);
    for (Indicator one : Indicator.values()) {
      if (one.everyLoad()) {
        results.put(one, Result.PASSED);
      }
    }
    return done(service.read(load.id(), load.version(), results, "AS"));
  }

  private Load released(List<StockItem> items) {
    Load load = passed(done(start(items)));
    return done(service.release(load.id(), load.version(), "RP"));
  }

  private RecordEntry use(StockItem item, String caseReference, String pouch) {
    return use(item, null, caseReference, pouch);
  }

  private RecordEntry use(
      StockItem item, @Nullable UUID handpiece, String caseReference, String pouch) {
    clock.pass(Duration.ofMinutes(1));
    UseReport report =
        new UseReport(
            ids.next(),
            caseReference,
            new Tooth(26),
            null,
            item.id(),
            handpiece,
            pouch,
            "",
            Cut.UNTOLD,
            "AS",
            clock.instant());
    return recordService.log(report).written().orElseThrow();
  }

  private static List<Remark.Kind> remarks(RecordEntry entry) {
    return entry.remarks().stream().map(Remark::kind).toList();
  }

  @Test
  void aLoadIsReadBackWholeAndItsContentsBecomeCleanByItsReleaseAlone() {
    List<StockItem> items = cleaned("D1", "D2");
    Load load = done(start(items));
    assertEquals("S1-20260302-1", load.name());
    assertEquals(60, load.minutes());
    assertEquals("S1-20260302-1.2", load.pouches().get(1).code());
    assertEquals(LocalDate.parse("2027-03-02"), load.pouches().get(0).lastDay());
    assertEquals(load, service.loads().find(load.id()).orElseThrow());
    assertEquals(load, service.loads().named("s1-20260302-1").orElseThrow());
    assertEquals(List.of(load), service.loads().running());
    assertEquals(List.of(InstrumentState.IN_LOAD, InstrumentState.IN_LOAD), states(items));
    Load read = passed(load);
    assertEquals(List.of(InstrumentState.IN_LOAD, InstrumentState.IN_LOAD), states(items));
    Load released = done(service.release(load.id(), read.version(), "RP"));
    assertEquals(released, service.loads().find(load.id()).orElseThrow());
    assertEquals(List.of(InstrumentState.CLEAN, InstrumentState.CLEAN), states(items));
    assertEquals(1, now(items.get(0)).sterilisations());
    assertEquals(List.of(), service.loads().running());
  }

  @Test
  void noLoadIsReleasedByTheWrongPersonTooEarlyOrUnread() {
    Load load = done(start(cleaned("D1")));
    assertEquals(
        List.of(
            LoadRefusal.Kind.MAY_NOT_RELEASE,
            LoadRefusal.Kind.STILL_RUNS,
            LoadRefusal.Kind.NOT_READ,
            LoadRefusal.Kind.NOT_READ,
            LoadRefusal.Kind.NOT_READ),
        kinds(service.release(load.id(), 1, "AS")));
    assertEquals(
        List.of(LoadRefusal.Kind.STILL_RUNS),
        kinds(service.read(load.id(), 1, Map.of(Indicator.CHEMICAL, Result.PASSED), "AS")));
    Load read = passed(load);
    assertEquals(
        List.of(LoadRefusal.Kind.UNKNOWN_PERSON),
        kinds(service.release(load.id(), read.version(), "ZZ")));
    assertEquals(List.of(LoadRefusal.Kind.MEANWHILE), kinds(service.release(load.id(), 1, "RP")));
    Load failed =
        done(service.read(load.id(), read.version(), Map.of(Indicator.PACKS, Result.FAILED), "AS"));
    assertEquals(
        List.of(LoadRefusal.Kind.INDICATOR_FAILED),
        kinds(service.release(load.id(), failed.version(), "RP")));
    set(Map.of("reprocessing.may-release", "assistant"));
    assertEquals(
        LoadRefusal.Kind.MAY_NOT_RELEASE,
        kinds(service.release(load.id(), failed.version(), "RP")).get(0));
  }

  @Test
  void aHandpieceGoesThroughBCyclesAloneAndIsRecalled() {
    StockItem turbine =
        StockItem.fresh(drawer.newId(), "TU1", new DrawerFields(Map.of("kind", "turbine")));
    StockItem spoon =
        StockItem.fresh(drawer.newId(), "SP1", new DrawerFields(Map.of("kind", "spoon")));
    List<StockItem> both = List.of(turbine, spoon);
    assertTrue(drawer.add(both, "").done());
    toCleaning(both);
    set(Map.of(kerfwright.practice.reprocessing.ReprocessingSetting.WRAPPED_IN_S, "yes"));
    List<NewLoad.Packed> pouch = List.of(new NewLoad.Packed("", picks(both)));
    LoadOutcome refused = service.start(new NewLoad("S1", Cycle.S134, "AS", pouch));
    assertEquals(
        List.of(new LoadRefusal(LoadRefusal.Kind.HOLLOW_NEEDS_B, List.of("TU1"))),
        refused.refusals());
    Load load = released(both);
    assertEquals(List.of(InstrumentState.CLEAN, InstrumentState.CLEAN), states(both));
    assertEquals(1, now(turbine).sterilisations());
    RecordEntry used = use(turbine, "K-0412", "");
    assertEquals("turbine", used.use().instrument().what());
    assertEquals(load.id(), used.use().origin().load());
    Load failed = done(service.fail(load.id(), "AS", "spore test grew"));
    assertEquals(List.of(InstrumentState.USED, InstrumentState.QUARANTINE), states(both));
    assertEquals(List.of("K-0412"), service.recall(failed).cases());
  }

  @Test
  void whatDoesNotBelongIsNotLoaded() {
    StockItem cleaning = cleaned("D1").get(0);
    StockItem fresh = StockItem.fresh(drawer.newId(), "D2", DIAMOND);
    assertTrue(drawer.add(List.of(fresh), "").done());
    assertEquals(List.of(LoadRefusal.Kind.NOT_CLEANED), kinds(start(List.of(fresh))));
    assertEquals(List.of(LoadRefusal.Kind.TWICE), kinds(start(List.of(cleaning, cleaning))));
    assertEquals(List.of(LoadRefusal.Kind.EMPTY), kinds(start(List.of())));
    List<NewLoad.Packed> one = List.of(new NewLoad.Packed("", picks(List.of(cleaning))));
    assertEquals(
        List.of(
            LoadRefusal.Kind.UNKNOWN_PERSON,
            LoadRefusal.Kind.CYCLE_UNWRAPPED_ONLY,
            LoadRefusal.Kind.UNKNOWN_STERILISER),
        kinds(service.start(new NewLoad("S9", Cycle.N134, "ZZ", one))));
    assertEquals(
        List.of(LoadRefusal.Kind.CYCLE_S_NOT_STATED),
        kinds(service.start(new NewLoad("S1", Cycle.S134, "AS", one))));
    assertEquals(
        List.of(LoadRefusal.Kind.MEANWHILE),
        kinds(
            service.start(
                new NewLoad(
                    "S1",
                    Cycle.B134,
                    "AS",
                    List.of(new NewLoad.Packed("", List.of(new Pick(cleaning.id(), 1))))))));
    assertEquals(InstrumentState.CLEANING, now(cleaning).state());
    done(start(List.of(cleaning)));
    assertEquals(List.of(LoadRefusal.Kind.STERILISER_BUSY), kinds(start(cleaned("D3"))));
  }

  @Test
  void aFailedLoadSendsWhatWasNotUsedToQuarantineAndNamesTheCases() {
    List<StockItem> items = cleaned("D1", "D2", "D3", "D4");
    Load load = released(items);
    assertTrue(drawer.move(picks(items.subList(1, 2)), InstrumentState.ON_TRAY, "").done());
    RecordEntry first = use(items.get(2), "K-0412", "");
    assertEquals(load.id(), first.use().origin().load());
    assertEquals("S1-20260302-1.3", first.use().origin().pouch());
    assertEquals(List.of(), remarks(first));
    // used, and sterilised again in a later load: no longer this one's
    use(items.get(3), "K-0413", "s1-20260302-1.4");
    toCleaning(items.subList(3, 4));
    released(items.subList(3, 4));
    assertEquals(2, service.recall(load).held().size());
    Load failed = done(service.fail(load.id(), "AS", "spore test grew"));
    Recall recall = service.recall(failed);
    assertEquals(
        List.of(
            InstrumentState.QUARANTINE,
            InstrumentState.QUARANTINE,
            InstrumentState.USED,
            InstrumentState.CLEAN),
        states(items));
    assertEquals(List.of("K-0412", "K-0413"), recall.cases());
    assertEquals(List.of("D1", "D2"), recall.held().stream().map(StockItem::label).toList());
    assertEquals(List.of("D3", "D4"), recall.elsewhere().stream().map(StockItem::label).toList());
    assertEquals(List.of(LoadRefusal.Kind.DECIDED), kinds(service.fail(load.id(), "AS", "again")));
    // a report that comes late names the failed load
    assertEquals(
        List.of(Remark.Kind.NOT_READY, Remark.Kind.LOAD_FAILED),
        remarks(use(items.get(0), "K-0414", "")));
    assertEquals(List.of("K-0412", "K-0413", "K-0414"), service.recall(failed).cases());
  }

  @Test
  void aRecallReachesTheCasesAHandpieceOutOfTheLoadWasUsedOn() {
    StockItem turbine =
        StockItem.fresh(drawer.newId(), "T1", new DrawerFields(Map.of("kind", "turbine")));
    assertTrue(drawer.add(List.of(turbine), "").done());
    toCleaning(List.of(turbine));
    Load load =
        passed(
            done(
                service.start(
                    new NewLoad(
                        "S1",
                        Cycle.B134,
                        "AS",
                        List.of(new NewLoad.Packed("", picks(List.of(turbine))))))));
    done(service.release(load.id(), load.version(), "RP"));
    StockItem item = StockItem.fresh(drawer.newId(), "D1", DIAMOND);
    assertTrue(drawer.add(List.of(item), "").done());
    RecordEntry entry = use(item, turbine.id(), "K-0412", "");
    assertEquals(List.of(), entry.remarks());
    Recall recall = service.recall(load);
    assertEquals(List.of("K-0412"), recall.cases());
    assertEquals(
        List.of("T1"), recall.pieces(entry).stream().map(one -> one.used().label()).toList());
    assertEquals(List.of("T1"), recall.elsewhere().stream().map(StockItem::label).toList());
  }

  @Test
  void aRecallReachesPiecesTakenOutOfALotAndNoUndoBringsThemBack() {
    StockItem single = StockItem.fresh(drawer.newId(), "L1", DIAMOND);
    StockItem lot = single.next(draft -> draft.pieces = 5).asNew();
    assertTrue(drawer.add(List.of(lot), "").done());
    toCleaning(List.of(lot));
    Load load = released(List.of(lot));
    assertTrue(drawer.split(new Pick(lot.id(), now(lot).version()), 2, "L1-a").done());
    StockItem part = drawer.drawer().labelled("L1-a").orElseThrow();
    RecordEntry used = use(lot, "K-1", "");
    assertEquals(load.id(), used.use().origin().load());
    done(service.fail(load.id(), "RP", "packs wet"));
    assertEquals(
        List.of(InstrumentState.QUARANTINE, InstrumentState.QUARANTINE),
        states(List.of(lot, part)));
    var lines = drawer.drawer().history(part.id());
    assertEquals(
        Refusal.Plain.BY_LOAD,
        drawer.undo(lines.get(lines.size() - 1).batch(), "").obstacles().get(0).why());
  }

  @Test
  void aFailedSporeTestPutsEveryLoadSinceTheLastPassedOneInDoubt() {
    List<Load> loads = new ArrayList<>();
    for (String label : List.of("D1", "D2", "D3", "D4")) {
      loads.add(released(cleaned(label)));
    }
    Map<Indicator, Result> grew = Map.of(Indicator.SPORES, Result.FAILED);
    Map<Indicator, Result> none = Map.of(Indicator.SPORES, Result.PASSED);
    done(service.read(loads.get(0).id(), loads.get(0).version(), none, "AS"));
    Load read = done(service.read(loads.get(2).id(), loads.get(2).version(), grew, "AS"));
    Load failed = done(service.fail(read.id(), "RP", "spores grew"));
    assertEquals(
        List.of(loads.get(3).name(), loads.get(1).name()),
        service.recall(failed).suspect().stream().map(Load::name).toList());
    assertEquals(
        List.of(LoadRefusal.Kind.DECIDED),
        kinds(service.read(failed.id(), failed.version(), grew, "AS")));
  }

  /** A run of the empty chamber with every indicator read. */
  private Load tested(Result spores) {
    Load run = passed(done(service.start(new NewLoad("S1", Cycle.B134, "AS", List.of()))));
    return done(service.read(run.id(), run.version(), Map.of(Indicator.SPORES, spores), "AS"));
  }

  @Test
  void aFailedSporeTestLocksTheSteriliserUntilRepeatTestsPassed() {
    Load first = released(cleaned("D1"));
    List<StockItem> running = cleaned("D2");
    Load second = passed(done(start(running)));
    Map<Indicator, Result> grew = Map.of(Indicator.SPORES, Result.FAILED);
    Load failed = done(service.read(first.id(), first.version(), grew, "AS"));
    assertEquals(
        List.of(LoadRefusal.Kind.STERILISER_LOCKED), kinds(start(cleaned("D3"))), "locked");
    assertEquals(
        List.of(LoadRefusal.Kind.IN_QUESTION),
        kinds(service.release(second.id(), second.version(), "RP")),
        "what ran since is not released");
    // reading it again does not undo it
    Map<Indicator, Result> again = Map.of(Indicator.SPORES, Result.PASSED);
    failed = done(service.read(failed.id(), failed.version(), again, "AS"));
    assertEquals(List.of(LoadRefusal.Kind.STERILISER_LOCKED), kinds(start(cleaned("D4"))));
    assertEquals(
        List.of(LoadRefusal.Kind.TESTS_MISSING),
        kinds(service.returnToService(failed.id(), "RP", "door seal")));
    tested(Result.PASSED);
    assertEquals(
        List.of(LoadRefusal.Kind.MAY_NOT_RELEASE),
        kinds(service.returnToService(failed.id(), "AS", "door seal")),
        "by a named role alone");
    done(service.returnToService(failed.id(), "RP", "door seal"));
    assertEquals(java.util.Optional.empty(), service.lock("S1"));
    released(cleaned("D5"));
    assertEquals(
        List.of(LoadRefusal.Kind.EMPTY),
        kinds(service.start(new NewLoad("S1", Cycle.B134, "AS", List.of()))),
        "no empty run without need");
  }

  @Test
  void aSecondFailureAsksForThreeTestsInARow() {
    Load load = released(cleaned("D1"));
    done(service.read(load.id(), load.version(), Map.of(Indicator.SPORES, Result.FAILED), "AS"));
    tested(Result.PASSED);
    Load other = tested(Result.FAILED);
    tested(Result.PASSED);
    tested(Result.PASSED);
    assertEquals(2, service.lock("S1").orElseThrow().passed(), "those before it do not count");
    assertEquals(
        List.of(LoadRefusal.Kind.TESTS_MISSING),
        kinds(service.returnToService(other.id(), "RP", "")));
    tested(Result.PASSED);
    done(service.returnToService(other.id(), "RP", "valve replaced"));
    assertEquals(java.util.Optional.empty(), service.lock("S1"));
  }

  @Test
  void whatIsUsedBeforeItsReleaseOrPastItsDayIsRemarked() {
    set(Map.of("reprocessing.shelf-days", "30"));
    StockItem early = cleaned("D1").get(0);
    Load load = done(start(List.of(early)));
    RecordEntry entry = use(early, "K-1", load.pouches().get(0).code());
    assertEquals(List.of(Remark.Kind.NOT_READY, Remark.Kind.LOAD_NOT_RELEASED), remarks(entry));
    assertEquals(InstrumentState.QUARANTINE, now(early).state());
    Load read = passed(load);
    // it is no longer in the load, so that the release leaves it where it is
    done(service.release(load.id(), read.version(), "RP"));
    assertEquals(InstrumentState.QUARANTINE, now(early).state());
    StockItem late = cleaned("D2").get(0);
    StockItem other = cleaned("D3").get(0);
    Load second = released(List.of(late));
    clock.pass(Duration.ofDays(31));
    String code = second.pouches().get(0).code();
    assertEquals(List.of(Remark.Kind.POUCH_EXPIRED), remarks(use(late, "K-2", code)));
    assertTrue(remarks(use(other, "K-2", code)).contains(Remark.Kind.NOT_IN_POUCH));
    assertEquals(List.of(Remark.Kind.POUCH_UNKNOWN), remarks(use(late, "K-2", "NONE-1")));
    set(Map.of("reprocessing.shelf-days", "event"));
    assertNull(released(cleaned("D4")).pouches().get(0).lastDay());
  }

  @Test
  void afterAReleaseANewRoundBegins() {
    StockItem item = cleaned("D1").get(0);
    released(List.of(item));
    use(item, "K-1", "");
    toCleaning(List.of(item));
    released(List.of(item));
    RecordEntry second = use(item, "K-2", "");
    assertEquals(List.of(), remarks(second));
    assertEquals(2, now(item).uses());
    assertEquals(2, now(item).sterilisations());
    assertEquals("S1-20260302-2", second.use().origin().loadName());
  }

  @Test
  void aUseCameOutOfTheLoadBegunLastAlsoWhereAClockWasAhead() {
    StockItem item = cleaned("D1").get(0);
    clock.pass(Duration.ofDays(400));
    Load ahead = released(List.of(item));
    clock.pass(Duration.ofDays(-400));
    assertEquals(ahead.id(), use(item, "K-1", "").use().origin().load());
    toCleaning(List.of(item));
    Load after = released(List.of(item));
    assertEquals(after.id(), use(item, "K-2", "").use().origin().load());
  }

  @Test
  void ofReleaseAndFailureAtOnceInTwoProcessesNothingIsLeftClean() throws Exception {
    other = again();
    LoadService there = service(other, new TimeOrderedIds(clock, new SplittableRandom(6)));
    for (int round = 0; round < 6; round++) {
      List<StockItem> items = cleaned("R" + round, "Q" + round);
      Load load = passed(done(start(items)));
      ExecutorService people = Executors.newFixedThreadPool(2);
      try {
        Future<LoadOutcome> release =
            people.submit(() -> service.release(load.id(), load.version(), "RP"));
        Future<LoadOutcome> fail =
            people.submit(() -> there.fail(load.id(), "AS", "indicator misread"));
        release.get();
        done(fail.get());
      } finally {
        people.shutdown();
      }
      assertEquals(Load.State.FAILED, service.loads().find(load.id()).orElseThrow().state());
      assertEquals(List.of(InstrumentState.QUARANTINE, InstrumentState.QUARANTINE), states(items));
    }
  }

  @Test
  void ofTwoWhoReadOneLoadOnlyOneWritesAndOfTwoLoadsWithOneInstrumentOnlyOneStarts()
      throws Exception {
    set(Map.of("reprocessing.sterilisers", "S1 S2 S3 S4"));
    StockItem item = cleaned("D1").get(0);
    List<NewLoad.Packed> one = List.of(new NewLoad.Packed("", picks(List.of(item))));
    List<LoadOutcome> starts =
        atOnce(4, i -> service.start(new NewLoad("S" + (i + 1), Cycle.B134, "AS", one)));
    assertEquals(1, starts.stream().filter(o -> o.load() != null).count());
    Load load = service.loads().running().get(0);
    clock.pass(Duration.ofMinutes(61));
    List<LoadOutcome> reads =
        atOnce(
            4,
            i ->
                service.read(
                    load.id(),
                    1,
                    Map.of(Indicator.CHEMICAL, i % 2 == 0 ? Result.PASSED : Result.FAILED),
                    "AS"));
    assertEquals(1, reads.stream().filter(o -> o.load() != null).count());
    assertEquals(2, service.loads().find(load.id()).orElseThrow().events().size());
  }

  private interface Job {
    LoadOutcome run(int i);
  }

  private static List<LoadOutcome> atOnce(int times, Job job) throws Exception {
    ExecutorService people = Executors.newFixedThreadPool(times);
    try {
      List<Future<LoadOutcome>> all = new ArrayList<>();
      for (int i = 0; i < times; i++) {
        int each = i;
        all.add(people.submit(() -> job.run(each)));
      }
      List<LoadOutcome> outcomes = new ArrayList<>();
      for (Future<LoadOutcome> one : all) {
        outcomes.add(one.get());
      }
      return outcomes;
    } finally {
      people.shutdown();
    }
  }

  @Test
  void entriesAreListedByLoadAndTheTimeInAStateIsKnown() {
    List<StockItem> items = cleaned("D1", "D2");
    Instant cleanedAt = clock.instant();
    Load load = released(items.subList(0, 1));
    use(items.get(0), "K-1", "");
    assertEquals(1, recordService.record().list(RecordQuery.ofLoad(load.id(), 5)).size());
    Map<?, Instant> since = service.loads().since(InstrumentState.CLEANING);
    assertEquals(1, since.size());
    assertTrue(Duration.between(since.values().iterator().next(), cleanedAt).abs().toSeconds() < 2);
    assertEquals(List.of(load.name()), service.loads().newest(9).stream().map(Load::name).toList());
  }
}
