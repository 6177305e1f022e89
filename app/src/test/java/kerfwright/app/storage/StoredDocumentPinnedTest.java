package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import kerfwright.app.chairside.SheetText;
import kerfwright.app.stocklist.ListTable;
import kerfwright.app.storage.cases.KeptCases;
import kerfwright.app.storage.stock.ItemJson;
import kerfwright.app.storage.teaching.Lessons;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.chairside.CutRun;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.KeptRemedy;
import kerfwright.practice.daylist.PieceNeed;
import kerfwright.practice.daylist.TrayTemplate;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.kept.KeptCase;
import kerfwright.practice.learning.OwnCut;
import kerfwright.practice.reprocessing.Cycle;
import kerfwright.practice.reprocessing.Indicator;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.LoadEvent;
import kerfwright.practice.reprocessing.Pouch;
import kerfwright.practice.teaching.Level;
import kerfwright.practice.teaching.OwnQuestion;
import kerfwright.practice.teaching.Topic;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.Goal;
import kerfwright.schedule.GoalResult;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.Need;
import kerfwright.schedule.Shortage;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.Stock;
import kerfwright.schedule.Substitute;
import kerfwright.schedule.TrayPlace;
import kerfwright.schedule.remedy.Remedy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Documents as each layout wrote them, under document/, open with all they say. */
class StoredDocumentPinnedTest {
  private static final UUID ID = UUID.fromString("018f0000-0000-7000-8000-000000000001");
  private static final String CARBIDE = "carbide-6-blade-cylinder-round-end-012-long";
  private static final String SHORTER = "carbide-6-blade-cylinder-round-end-014";
  private static final String TAPER = "diamond-coarse-taper-round-end-018";

  private static String pinned(StoredDocument kind, int layout) {
    String name = kind.name().toLowerCase(Locale.ROOT).replace('_', '-') + "-" + layout;
    String file = "document/" + name + ".json";
    try (InputStream in = StoredDocumentPinnedTest.class.getResourceAsStream(file)) {
      assertTrue(in != null, "There is no " + file);
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException failed) {
      throw new AssertionError(file, failed);
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyLayoutOfEveryKindOpensAndANewerOneIsToldAsThat(StoredDocument kind) throws IOException {
    for (int layout = 1; layout <= kind.newest; layout++) {
      ObjectNode fields = kind.tree(pinned(kind, layout));
      String now = kind.text(fields);
      assertTrue(now.startsWith("{\"layout\":" + kind.newest + ","), now);
      assertEquals(fields, kind.tree(now));
    }
    ObjectNode newer = kind.tree(pinned(kind, kind.newest)).put("layout", kind.newest + 1);
    RuntimeException refused =
        assertThrows(IllegalStateException.class, () -> kind.tree(newer.toString()));
    assertEquals(Optional.of(StorageFault.NEWER), StorageFault.of(refused));
    for (String broken : List.of("{\"layout\":1,", "[]", "")) {
      refused = assertThrows(IllegalStateException.class, () -> kind.tree(broken));
      assertEquals(Optional.empty(), StorageFault.of(refused));
    }
  }

  /** Opens the first layout; what it holds, written anew, says the same under the same names. */
  private static <T> T opened(StoredDocument kind, Class<T> type) throws IOException {
    String old = pinned(kind, 1);
    T value = kind.read(old, type);
    String now = kind.text(value);
    assertEquals(withoutNulls(kind.tree(old)), withoutNulls(kind.tree(now)));
    assertEquals(value, kind.read(now, type));
    return value;
  }

  private static JsonNode withoutNulls(JsonNode node) {
    if (node instanceof ObjectNode fields) {
      fields.removeIf(JsonNode::isNull);
    }
    node.forEach(StoredDocumentPinnedTest::withoutNulls);
    return node;
  }

  @Test
  void aDay() throws IOException {
    DayBook book = opened(StoredDocument.DAY, DayBook.class);
    assertEquals(LocalDate.of(2026, 12, 1), book.date());
    assertEquals(3, book.version());
    Need long12 = new Need(CARBIDE, 0.2, List.of(new Substitute(SHORTER, 1.25)));
    Need round = new Need("diamond-coarse-round-018", 0.1, List.of());
    assertEquals(
        new Booking(
            "A1",
            "1",
            LocalTime.of(8, 0),
            LocalTime.of(8, 30),
            "K-0501",
            "46",
            "deep cavity",
            "case: K-0501\n",
            List.of(long12, round),
            List.of(new PieceNeed(List.of("spoon", "excavator"), true))),
        book.bookings().get(0));
    Day day = book.planned().problem();
    assertEquals(LocalTime.of(8, 0), day.start());
    assertEquals(
        List.of(540, 20, 45, 15, 2, 12),
        List.of(
            day.lengthMin(),
            day.cleaningMin(),
            day.loadMin(),
            day.loadGridMin(),
            day.sterilisers(),
            day.loadCapacity()));
    assertTrue(day.stock().contains(new Stock(TAPER, 5, List.of(0, 1, 2, 2, 0), Set.of(4))));
    assertEquals(
        new Appointment("A1", 0, 30, List.of(CARBIDE, round.type()), "1", List.of(long12, round)),
        day.appointments().get(0));
    TrayPlace first = new TrayPlace("A1", new InstrumentRef(CARBIDE, 0));
    assertEquals(30, day.facts().nowMin());
    assertEquals(
        List.of(new SteriliserLoad(15, List.of(new InstrumentRef(TAPER, 4)))), day.facts().loads());
    assertEquals(List.of(first), day.facts().trays());
    assertEquals(List.of(465), day.extraStartsMin());
    assertEquals(List.of("L01", "L02", "L03"), book.planned().pieces().get(CARBIDE));
    DayPlan plan = book.planned().plan();
    assertEquals(first, plan.trays().get(0));
    assertEquals(105, plan.loads().get(0).startMin());
    assertEquals(List.of(new Shortage("A5", CARBIDE)), plan.shortages());
    assertEquals(new GoalResult(Goal.LOADS, 2, 2, true, 0.082938231), plan.goals().get(1));
    assertEquals(
        List.of(
            new KeptRemedy(new Remedy.UseSubstitute("A5", CARBIDE, SHORTER, 1.25), 10, 0, 3, true),
            new KeptRemedy(new Remedy.SwapAppointments("A4", "A5"), 11, 0, 3, true),
            new KeptRemedy(new Remedy.LoadBetween(75), 12, 0, 3, true),
            new KeptRemedy(
                new Remedy.LoadBeforeOpening(List.of(new InstrumentRef(CARBIDE, 2))),
                13,
                0,
                3,
                true),
            new KeptRemedy(new Remedy.LoadBeside(), 14, 0, 3, true),
            new KeptRemedy(new Remedy.BuyMore(CARBIDE, 2), 15, 0, 3, true)),
        book.planned().remedies());
  }

  @Test
  void anAppointmentOfBeforeThereWerePieces() {
    ObjectNode day = StoredDocument.DAY.tree(pinned(StoredDocument.DAY, 1));
    ((ObjectNode) day.at("/bookings/0")).remove("pieces");
    DayBook book = StoredDocument.DAY.read(day.toString(), DayBook.class);
    assertEquals(List.of(), book.bookings().get(0).pieces());
  }

  @Test
  void aTray() throws IOException {
    assertEquals(
        new TrayTemplate(
            "crown off",
            45,
            List.of(
                new Need(CARBIDE, 0.2, List.of(new Substitute(SHORTER, 1.25))),
                new Need(TAPER, 0.3, List.of()))),
        opened(StoredDocument.TRAY, TrayTemplate.class));
  }

  @Test
  void anItem() {
    String old = pinned(StoredDocument.ITEM, 1);
    StockItem item = ItemJson.item(old);
    assertEquals(ID, item.id());
    assertEquals("D1", item.label());
    assertEquals("806 314 197 534 014", item.fields().at("iso"));
    assertEquals(1.4, item.properties().headDiameter().millimetres(), 1e-9);
    assertEquals("3.90", item.price().toPlainString());
    assertEquals(
        List.of(3, 1, 2, 4),
        List.of(item.version(), item.pieces(), item.uses(), item.sterilisations()));
    assertEquals(Map.of("enamel", 1.5), item.cutMm3ByMaterial());
    assertEquals(InstrumentState.CLEAN, item.state());
    assertEquals("{\"layout\":1," + old.substring(1), ItemJson.text(item));
  }

  @Test
  void aLoad() throws IOException {
    Load load = opened(StoredDocument.LOAD, Load.class);
    assertEquals(5, load.version());
    assertEquals("S3-20261129-1", load.name());
    assertEquals("S3", load.steriliser());
    assertEquals(Cycle.B134, load.cycle());
    assertEquals(Instant.parse("2026-11-29T15:12:04.967171Z"), load.started());
    assertEquals(30, load.minutes());
    assertEquals(Load.State.FAILED, load.state());
    Pouch pouch = load.pouches().get(2);
    assertEquals(UUID.fromString("01a227dd-0167-7005-bcf7-c70139486934"), pouch.id());
    assertEquals("S3-20261129-1.3", pouch.code());
    assertEquals("", pouch.set());
    assertEquals(LocalDate.of(2027, 11, 29), pouch.lastDay());
    assertEquals("R08", pouch.contents().get(0).label());
    assertEquals(
        new LoadEvent(
            Instant.parse("2026-11-30T12:42:04.967171Z"),
            "EF",
            LoadEvent.What.READ,
            Indicator.SPORES,
            Indicator.Result.FAILED,
            ""),
        load.events().get(5));
    assertNull(load.events().get(6).indicator());
    assertEquals("spore test grew", load.events().get(6).note());
    assertEquals("EF", load.events().get(6).by());
  }

  @Test
  void aList() throws IOException {
    assertEquals(
        new ListTable(
            List.of("id", "iso"),
            List.of(List.of("D1", "806 314 197 534 014"), List.of("D2", "")),
            List.of(2, 5)),
        opened(StoredDocument.LIST, ListTable.class));
  }

  @Test
  void aSheet() {
    String old = pinned(StoredDocument.SHEET, 1);
    CutRun run = new CutRun(ID, 1, "K-0412", new Tooth(16), Instant.EPOCH, "AB", old);
    SheetText sheet = SheetText.of(run);
    assertEquals("K-0412", sheet.caseReference());
    assertEquals("16", sheet.toothName());
    assertEquals("access cavity", sheet.procedure());
    assertEquals("case=K-0412", sheet.query());
    assertEquals(List.of("Water on."), sheet.cautions());
    // for the script, which knows no layouts
    assertEquals(old, sheet.json());
  }

  @Test
  void aCase() throws IOException {
    assertEquals(
        new KeptCases.Document(
            "case=K-0412",
            List.of(new KeptCase.Step("access-natural.outline", "D04", 200_000, 0.9, 41.5))),
        opened(StoredDocument.CASE, KeptCases.Document.class));
  }

  @Test
  void aQuestionAndASet() throws IOException {
    OwnQuestion question = opened(StoredDocument.QUESTION, OwnQuestion.class);
    assertEquals(
        new OwnQuestion(
            UUID.fromString("0191d2a0-0000-7000-8000-000000000001"),
            2,
            "What?",
            List.of("a", "b", "c", "d"),
            "So.",
            "a book"),
        question);
    assertEquals(
        new Lessons.SetDocument(
            42, Level.HARD, List.of(Topic.HEAT, Topic.OWN), 12, List.of(question)),
        opened(StoredDocument.SET, Lessons.SetDocument.class));
  }

  @Test
  void anOwnCut() throws IOException {
    assertEquals(
        new OwnCut(ID, 2, 3, "turbine", "enamel", 0.9, 50, 4, 30, List.of(1.1, 1.2), null),
        opened(StoredDocument.OWN_CUT, OwnCut.class));
  }

  /** Constants are told in their order in the program: none may change places unnoticed. */
  @Test
  void everyConstantKeepsItsWord() {
    assertWords(
        Goal.class, Map.of(Goal.SHORTAGES, "SHORTAGES", Goal.LOADS, "LOADS", Goal.WEAR, "WEAR"));
    assertWords(
        Cycle.class,
        Map.of(Cycle.B134, "b-134", Cycle.B121, "b-121", Cycle.S134, "s-134", Cycle.N134, "n-134"));
    assertWords(
        Load.State.class,
        Map.of(
            Load.State.RUNNING, "RUNNING",
            Load.State.RELEASED, "RELEASED",
            Load.State.FAILED, "FAILED"));
    assertWords(
        LoadEvent.What.class,
        Map.of(
            LoadEvent.What.STARTED, "STARTED",
            LoadEvent.What.READ, "READ",
            LoadEvent.What.RELEASED, "RELEASED",
            LoadEvent.What.FAILED, "FAILED",
            LoadEvent.What.RETURNED, "RETURNED"));
    assertWords(
        Indicator.class,
        Map.of(
            Indicator.PARAMETERS, "parameters",
            Indicator.CHEMICAL, "chemical",
            Indicator.PACKS, "packs",
            Indicator.SPORES, "spores"));
    assertWords(
        Indicator.Result.class,
        Map.of(
            Indicator.Result.NOT_READ, "not-read",
            Indicator.Result.PASSED, "passed",
            Indicator.Result.FAILED, "failed"));
    assertWords(
        Level.class, Map.of(Level.EASY, "easy", Level.MEDIUM, "medium", Level.HARD, "hard"));
    assertWords(
        Topic.class,
        Map.of(
            Topic.INSTRUMENTS, "INSTRUMENTS",
            Topic.NUMBERS, "NUMBERS",
            Topic.LAYERS, "LAYERS",
            Topic.CHOICE, "CHOICE",
            Topic.HANDLING, "HANDLING",
            Topic.HEAT, "HEAT",
            Topic.REPROCESSING, "REPROCESSING",
            Topic.OWN, "OWN"));
  }

  private static <E extends Enum<E>> void assertWords(Class<E> all, Map<E, String> words) {
    Map<E, String> stored = new EnumMap<>(all);
    ObjectMapper mapper = StoredNames.mapper();
    Arrays.stream(all.getEnumConstants())
        .forEach(one -> stored.put(one, mapper.valueToTree(one).asText()));
    assertEquals(words, stored);
  }
}
