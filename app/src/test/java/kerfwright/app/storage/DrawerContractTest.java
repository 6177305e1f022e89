package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.DrawerQuery;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Outcome;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.drawer.Refusal;
import kerfwright.practice.drawer.StockForPlanning;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every storage of the drawer keeps to. */
abstract class DrawerContractTest {
  private static final Map<String, String> DIAMOND =
      Map.of("iso", "806 314 197 534 014", "head_length_mm", "8.0", "max_rpm", "450000");
  private static final Map<String, String> CARBIDE =
      Map.of("kind", "carbide", "us", "330", "shank", "FG", "blades", "6", "overall_mm", "19");

  private Database database;
  private DrawerService service;

  /** A new, empty database. */
  abstract Database open() throws Exception;

  @BeforeEach
  void start() throws Exception {
    database = open();
    service =
        new DrawerService(
            new StoredDrawer(database),
            new TimeOrderedIds(Clock.systemUTC(), new SplittableRandom(5)),
            Clock.systemUTC());
  }

  @AfterEach
  void stop() {
    if (database != null) {
      database.close();
    }
  }

  private StockItem item(String label, Map<String, String> fields) {
    return StockItem.fresh(service.newId(), label, new DrawerFields(fields));
  }

  private StockItem added(String label, Map<String, String> fields) {
    StockItem item = item(label, fields);
    assertTrue(service.add(List.of(item), "").done());
    return item;
  }

  private StockItem now(StockItem item) {
    return service.drawer().find(item.id()).orElseThrow();
  }

  private Outcome move(StockItem item, InstrumentState to) {
    return service.move(List.of(new Pick(item.id(), now(item).version())), to, "");
  }

  @Test
  void whatIsWrittenIsReadBackWhole() {
    StockItem plain = item("Ä/1", DIAMOND);
    StockItem full =
        new StockItem(
            service.newId(),
            1,
            "L-7",
            25,
            plain.fields(),
            plain.properties(),
            true,
            "cabinet 2, \"left\" %_!",
            new BigDecimal("3.90"),
            4,
            9,
            Map.of("enamel", 12.25, "dentine", 1.0 / 3),
            InstrumentState.QUARANTINE,
            false);
    assertTrue(service.add(List.of(plain, full), "delivery").done());
    assertEquals(plain, now(plain));
    assertEquals(full, now(full));
    DrawerEntry line = service.drawer().history(full.id()).get(0);
    assertEquals(full, line.after());
    assertEquals("delivery", line.note());
    assertEquals(DrawerEntry.What.ADDED, line.what());
  }

  @Test
  void aHandpieceIsKeptFoundChangedAndMovedLikeAnyPiece() {
    StockItem turbine = added("TU1", Map.of("kind", "turbine"));
    added("D1", DIAMOND);
    assertEquals(turbine, now(turbine));
    assertFalse(turbine.isRotary());
    for (String words : List.of("tu1", "turbine", "turbinenhandst", "handpiece")) {
      assertEquals(1, found(words, null, null, null, null), words);
    }
    assertEquals(
        List.of("TU1"),
        service
            .drawer()
            .list(new DrawerQuery("", "turbine", null, null, null, 0, 9))
            .items()
            .stream()
            .map(StockItem::label)
            .toList());
    Pick seen = new Pick(turbine.id(), 1);
    assertTrue(
        service
            .edit(
                seen,
                draft -> {
                  draft.label = "HS1";
                  draft.fields(new DrawerFields(Map.of("kind", "straight")));
                },
                "")
            .done());
    assertEquals("straight", now(turbine).pieceKind().orElseThrow().id());
    assertEquals(
        List.of("D1"),
        StockForPlanning.of(service.drawer()).instruments().stream()
            .map(kerfwright.planner.casework.DrawerInstrument::id)
            .toList());
    assertTrue(move(turbine, InstrumentState.USED).done());
    assertEquals(1, now(turbine).uses());
    assertFalse(move(turbine, InstrumentState.CLEAN).done());
    assertTrue(move(turbine, InstrumentState.QUARANTINE).done());
    assertTrue(move(turbine, InstrumentState.WITHDRAWN).done());
    assertEquals(5, service.drawer().history(turbine.id()).size());
    assertEquals("turbine", service.drawer().history(turbine.id()).get(0).after().fields().kind());
  }

  @Test
  void aRoundByHandCountsOneUseAndEndsBeforeTheLoad() {
    StockItem item = added("D1", DIAMOND);
    for (InstrumentState to :
        List.of(InstrumentState.ON_TRAY, InstrumentState.USED, InstrumentState.CLEANING)) {
      assertTrue(move(item, to).done(), to.id());
    }
    Outcome outcome = move(item, InstrumentState.IN_LOAD);
    assertEquals(Refusal.Plain.LOAD_TAKES, outcome.obstacles().get(0).why());
    assertEquals(1, now(item).uses());
    assertEquals(4, service.drawer().history(item.id()).size());
    assertEquals(4, now(item).version());
  }

  @Test
  void aMoveNoRuleAllowsStopsTheWholeChange() {
    StockItem used = added("D1", DIAMOND);
    StockItem clean = added("D2", DIAMOND);
    assertTrue(move(used, InstrumentState.USED).done());
    long revision = service.drawer().revision();
    Outcome outcome =
        service.move(
            List.of(new Pick(clean.id(), 1), new Pick(used.id(), 2)), InstrumentState.ON_TRAY, "");
    assertFalse(outcome.done());
    assertEquals("D1", outcome.obstacles().get(0).label());
    assertEquals(InstrumentState.CLEAN, now(clean).state());
    assertEquals(revision, service.drawer().revision());
    assertEquals(1, service.drawer().history(clean.id()).size());
  }

  @Test
  void aBulkChangeIsTakenBackByNewLines() {
    StockItem a = added("D1", DIAMOND);
    StockItem b = added("D2", CARBIDE);
    Outcome moved =
        service.move(
            List.of(new Pick(a.id(), 1), new Pick(b.id(), 1)), InstrumentState.ON_TRAY, "");
    Outcome undone = service.undo(Objects.requireNonNull(moved.batch()), "slip");
    assertTrue(undone.done());
    assertTrue(now(a).sameBut(a) && now(b).sameBut(b));
    assertEquals(3, service.drawer().history(a.id()).size());
    assertTrue(service.drawer().undone(moved.batch()));
    assertFalse(service.drawer().undone(Objects.requireNonNull(undone.batch())));
    assertFalse(service.undo(moved.batch(), "again").done());
  }

  @Test
  void aChangeIsNotTakenBackOverALaterOne() {
    StockItem a = added("D1", DIAMOND);
    Outcome used = move(a, InstrumentState.USED);
    assertTrue(move(a, InstrumentState.CLEANING).done());
    Outcome undo = service.undo(Objects.requireNonNull(used.batch()), "");
    assertFalse(undo.done());
    assertEquals(InstrumentState.CLEANING, now(a).state());
  }

  @Test
  void aNewItemTakenBackLeavesItsLabelFree() {
    StockItem first = item("D1", DIAMOND);
    Outcome added = service.add(List.of(first), "");
    assertFalse(service.add(List.of(item("D1", CARBIDE)), "").done());
    assertTrue(service.undo(Objects.requireNonNull(added.batch()), "").done());
    assertEquals(0, service.drawer().list(DrawerQuery.all(10)).found());
    assertTrue(service.add(List.of(item("D1", CARBIDE)), "").done());
    assertEquals(Set.of("D1"), service.drawer().taken(List.of("D1", "D2")));
    assertFalse(service.drawer().labelled("D1").orElseThrow().id().equals(first.id()));
    assertTrue(service.drawer().labelled("D2").isEmpty());
    assertEquals(2, service.drawer().history(first.id()).size());
  }

  @Test
  void ofTwoWhoSawTheSameOnlyOneWrites() throws Exception {
    StockItem item = added("D1", DIAMOND);
    ExecutorService people = Executors.newFixedThreadPool(8);
    try {
      List<Future<Outcome>> tries = new ArrayList<>();
      for (int i = 0; i < 16; i++) {
        String place = "place " + i;
        tries.add(
            people.submit(
                () -> service.edit(new Pick(item.id(), 1), draft -> draft.place = place, "")));
      }
      int done = 0;
      for (Future<Outcome> one : tries) {
        Outcome outcome = one.get();
        done += outcome.done() ? 1 : 0;
        assertTrue(
            outcome.done() || outcome.obstacles().get(0).why() == Refusal.Plain.CHANGED_MEANWHILE);
      }
      assertEquals(1, done);
    } finally {
      people.shutdown();
    }
    assertEquals(2, now(item).version());
    assertEquals(2, service.drawer().history(item.id()).size());
  }

  @Test
  void ofTwoWhoChooseTheSameLabelOnlyOneWrites() throws Exception {
    ExecutorService people = Executors.newFixedThreadPool(8);
    try {
      List<Future<Outcome>> tries = new ArrayList<>();
      for (int i = 0; i < 16; i++) {
        StockItem item = item("D1", DIAMOND);
        tries.add(people.submit(() -> service.add(List.of(item), "")));
      }
      int done = 0;
      for (Future<Outcome> one : tries) {
        done += one.get().done() ? 1 : 0;
      }
      assertEquals(1, done);
    } finally {
      people.shutdown();
    }
    assertEquals(1, service.drawer().list(DrawerQuery.all(10)).found());
  }

  @Test
  void searchAndFiltersMeetTheSameItems() {
    added("D10", DIAMOND);
    added("D2", DIAMOND);
    StockItem bur = added("B1", CARBIDE);
    assertEquals(
        List.of("B1", "D2", "D10"),
        service.drawer().list(DrawerQuery.all(10)).items().stream().map(StockItem::label).toList());
    assertEquals(2, found("197 green", null, null, null, null));
    assertEquals(2, found("806314197534014", null, null, null, null));
    assertEquals(1, found("us 330", null, null, null, null));
    assertEquals(0, found("%", null, null, null, null));
    assertEquals(0, found("d_0", null, null, null, null));
    assertEquals(1, found("", InstrumentKind.CARBIDE, null, null, null));
    assertEquals(1, found("", null, bur.properties().shape(), null, null));
    assertEquals(3, found("", null, null, ShankType.FG, null));
    assertEquals(0, found("", null, null, null, InstrumentState.USED));
    assertTrue(move(bur, InstrumentState.USED).done());
    assertEquals(1, found("", null, null, null, InstrumentState.USED));
    assertEquals(
        Map.of(InstrumentState.CLEAN, 2, InstrumentState.USED, 1), service.drawer().pieces());
    assertEquals(
        List.of("D10"),
        service
            .drawer()
            .list(new DrawerQuery("d", "diamond", null, null, null, 1, 1))
            .items()
            .stream()
            .map(StockItem::label)
            .toList());
  }

  private int found(
      String words,
      InstrumentKind kind,
      ShapeFamily shape,
      ShankType shank,
      InstrumentState state) {
    return service
        .drawer()
        .list(new DrawerQuery(words, kind == null ? null : kind.id(), shape, shank, state, 0, 10))
        .found();
  }

  @Test
  void onlyCleanOnesArePlannedWithAndOfAlikeOnesTheFirst() {
    added("D2", DIAMOND);
    added("D1", DIAMOND);
    StockItem used = added("B1", CARBIDE);
    move(used, InstrumentState.USED);
    assertEquals(
        List.of("D1"),
        StockForPlanning.of(service.drawer()).instruments().stream().map(one -> one.id()).toList());
  }

  @Test
  void piecesOfALotBecomeAnItemOfTheirOwn() {
    StockItem single = item("L1", DIAMOND);
    StockItem lot =
        new StockItem(
            single.id(),
            1,
            "L1",
            10,
            single.fields(),
            single.properties(),
            true,
            "",
            null,
            0,
            0,
            Map.of(),
            InstrumentState.CLEAN,
            false);
    assertTrue(service.add(List.of(lot), "").done());
    assertFalse(service.split(new Pick(lot.id(), 1), 10, "L1-a").done());
    Outcome split = service.split(new Pick(lot.id(), 1), 3, "L1-a");
    assertTrue(split.done());
    assertEquals(7, now(lot).pieces());
    assertEquals(10, service.drawer().pieces().get(InstrumentState.CLEAN));
    assertTrue(service.undo(Objects.requireNonNull(split.batch()), "").done());
    assertEquals(10, service.drawer().pieces().get(InstrumentState.CLEAN));
    assertTrue(service.drawer().find(UUID.randomUUID()).isEmpty());
  }

  @Test
  void tenThousandItemsAreWrittenInOneChange() {
    List<StockItem> many = new ArrayList<>();
    for (int i = 0; i < 10_000; i++) {
      many.add(item("N" + i, i % 2 == 0 ? DIAMOND : CARBIDE));
    }
    Outcome outcome = service.add(many, "list");
    assertTrue(outcome.done());
    assertEquals(10_000, service.drawer().list(DrawerQuery.all(50)).found());
    assertTrue(service.undo(Objects.requireNonNull(outcome.batch()), "").done());
    assertEquals(0, service.drawer().list(DrawerQuery.all(50)).found());
  }
}
