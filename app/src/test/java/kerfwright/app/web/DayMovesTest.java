package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.PieceNeed;
import kerfwright.practice.daylist.PlannedDay;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.drawer.StockItem;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.Need;
import kerfwright.schedule.remedy.Remedy;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Day, drawer and reprocessing move each other. */
class DayMovesTest {
  private static final LocalDate TODAY = LocalDate.now();
  private static final String DAY = "/day/" + TODAY;
  private static final String TYPE = "diamond-coarse-round-018";

  private Served app;

  @BeforeEach
  void aDayThatIsOpenWheneverThisRuns() throws Exception {
    Assumptions.assumeTrue(
        LocalTime.now().isBefore(LocalTime.of(23, 0)), "the day is too short for its last trays");
    app = new Served();
    Map<String, String> open =
        Map.of("day.opens", "00:00", "day.length-min", "1440", "steriliser.count", "2");
    app.practice().settings().write(app.practice().settings().read().version(), open);
    aDayOf(2, List.of());
  }

  private void aDayOf(int appointments, List<PieceNeed> pieces) throws Exception {
    List<Booking> late = new ArrayList<>();
    for (int n = 0; n < appointments; n++) {
      late.add(
          new Booking(
              "A" + (n + 1),
              "1",
              LocalTime.of(23, 10 + 20 * n),
              LocalTime.of(23, 25 + 20 * n),
              "K-9",
              "",
              "cavity",
              null,
              List.of(new Need(TYPE, 0.1, List.of())),
              pieces));
    }
    DayBook book = app.practice().days().read(TODAY);
    assertTrue(app.practice().days().write(book.with(late, null), "test"));
    assertEquals(303, app.post(DAY + "/plan").statusCode());
    for (int tries = 0; (planned() == null || searching()) && tries < 600; tries++) {
      Thread.sleep(50);
    }
  }

  private boolean searching() throws Exception {
    return app.get(DAY + "/board").body().contains("hx-trigger=\"every");
  }

  private static PieceNeed need(boolean ifNeeded, String... kinds) {
    return new PieceNeed(List.of(kinds), ifNeeded);
  }

  private List<String> onTray() {
    return app.practice().service().drawer().in(InstrumentState.ON_TRAY).stream()
        .filter(item -> !item.isRotary())
        .map(item -> item.fields().kind())
        .sorted()
        .toList();
  }

  @Test
  void theOtherPiecesAreLaidWithTheirTrayAndUndoneWithIt() throws Exception {
    aDayOf(
        2,
        List.of(
            need(false, "turbine"),
            need(false, "excavator", "spoon"),
            need(true, "ultrasonic-tip"),
            need(true, "vibrator-tip")));
    assertEquals(303, app.post(DAY + "/laid", "booking", "A1").statusCode());
    List<String> laid = onTray();
    assertTrue(laid.contains("turbine") && laid.contains("ultrasonic-tip"), laid.toString());
    assertEquals(3, laid.size(), laid.toString());
    assertTrue(laid.contains("spoon"), "the excavator is being cleaned");
    assertEquals(303, app.post(DAY + "/laid", "booking", "A1").statusCode());
    assertEquals(laid, onTray(), "twice is once");
    assertEquals(303, app.post(DAY + "/undo").statusCode());
    assertEquals(List.of(), onTray());
    assertEquals(303, app.post(DAY + "/undo").statusCode());
    assertEquals(laid, onTray());
    String tray = app.get(DAY + "/tray?id=A1").body();
    assertTrue(tray.contains("TU0"), tray);
  }

  @Test
  void aHandpieceThatIsShortIsToldCountedTodayAndHasARemedy() throws Exception {
    List<StockItem> turbines = new ArrayList<>();
    for (InstrumentState state : InstrumentState.values()) {
      app.practice().service().drawer().in(state).stream()
          .filter(item -> item.is("turbine"))
          .forEach(turbines::add);
    }
    assertTrue(
        app.practice()
            .service()
            .move(
                turbines.stream().map(one -> new Pick(one.id(), one.version())).toList(),
                InstrumentState.WITHDRAWN,
                "")
            .done());
    aDayOf(1, List.of(need(false, "turbine")));
    for (int tries = 0; planned().remedies().isEmpty() && tries < 600; tries++) {
      Thread.sleep(50);
    }
    String day = app.get(DAY).body();
    assertTrue(day.contains("One instrument is missing"), day);
    assertTrue(day.contains("air turbine handpiece"), day);
    assertTrue(planned().remedies().get(0).remedy() instanceof Remedy.BuyMore, day);
    assertTrue(app.get("/").body().contains("1 missing"), "counted on the first page");
    assertEquals(303, app.post(DAY + "/buy", "remedy", "0").statusCode());
    assertTrue(app.get("/restock").body().contains("air turbine handpiece"));
  }

  @Test
  void aHandpieceStillToBeReprocessedIsPutIntoALoadForItsTray() throws Exception {
    List<Pick> clean =
        app.practice().service().drawer().in(InstrumentState.CLEAN).stream()
            .filter(item -> item.is("turbine"))
            .map(one -> new Pick(one.id(), one.version()))
            .toList();
    assertTrue(app.practice().service().move(clean, InstrumentState.WITHDRAWN, "").done());
    aDayOf(1, List.of(need(false, "turbine")));
    assertEquals(List.of(), planned().plan().shortages());
    assertTrue(
        planned().plan().loads().stream()
            .flatMap(load -> load.instruments().stream())
            .anyMatch(ref -> planned().label(ref).equals("TU03")));
  }

  @AfterEach
  void stop() {
    if (app != null) {
      app.close();
    }
  }

  private PlannedDay planned() {
    return app.practice().days().read(TODAY).planned();
  }

  private StockItem laidFor(String appointment) {
    DayPlan plan = planned().plan();
    String label =
        plan.trays().stream()
            .filter(t -> t.appointment().equals(appointment))
            .map(t -> planned().label(t.instrument()))
            .findFirst()
            .orElseThrow();
    return app.practice().service().drawer().labelled(PlannedDay.itemLabel(label)).orElseThrow();
  }

  @Test
  void aTrayLaidOnTheDayIsOnATrayInTheDrawerAndUndoneWithIt() throws Exception {
    StockItem before = laidFor("A1");
    assertEquals(InstrumentState.CLEAN, before.state());
    assertEquals(303, app.post(DAY + "/laid", "booking", "A1").statusCode());
    StockItem laid = laidFor("A1");
    assertEquals(InstrumentState.ON_TRAY, laid.state());
    List<DrawerEntry> history = app.practice().service().drawer().history(laid.id());
    assertEquals(TODAY + " A1", history.get(history.size() - 1).note(), "says for whom");
    assertEquals(303, app.post(DAY + "/undo").statusCode());
    assertEquals(InstrumentState.CLEAN, laidFor("A1").state());
    // and once more: undoing the undo lays it again
    assertEquals(303, app.post(DAY + "/undo").statusCode());
    assertEquals(InstrumentState.ON_TRAY, laidFor("A1").state());
    assertEquals(1, planned().problem().facts().trays().size());
  }

  @Test
  void whatStandsAgainstATrayIsToldAndNothingIsLaid() throws Exception {
    StockItem item = laidFor("A1");
    Pick pick = new Pick(item.id(), item.version());
    app.practice().service().move(List.of(pick), InstrumentState.QUARANTINE, "");
    HttpResponse<String> refused = app.post(DAY + "/laid", "booking", "A1");
    assertEquals(409, refused.statusCode());
    assertTrue(refused.body().contains("was not laid"), refused.body());
    assertTrue(refused.body().contains(item.label()));
    assertTrue(planned().problem().facts().trays().isEmpty());
  }

  @Test
  void aTrayWhoseInstrumentWasUsedSinceIsNotTakenBack() throws Exception {
    assertEquals(303, app.post(DAY + "/laid", "booking", "A1").statusCode());
    StockItem laid = laidFor("A1");
    Pick pick = new Pick(laid.id(), laid.version());
    assertTrue(app.practice().service().move(List.of(pick), InstrumentState.USED, "").done());
    assertEquals(409, app.post(DAY + "/undo").statusCode());
    assertEquals(1, planned().problem().facts().trays().size(), "the day stays as it is");
    assertEquals(InstrumentState.USED, laidFor("A1").state());
  }

  @Test
  void aLoadStartedInReprocessingIsAFactOfTheDay() throws Exception {
    StockItem item = laidFor("A1");
    for (InstrumentState to : List.of(InstrumentState.USED, InstrumentState.CLEANING)) {
      StockItem now = app.practice().service().drawer().find(item.id()).orElseThrow();
      app.practice().service().move(List.of(new Pick(now.id(), now.version())), to, "");
    }
    String form = app.get("/reprocessing/load/new?pieces=" + item.label() + ",D02").body();
    int version = app.practice().service().drawer().find(item.id()).orElseThrow().version();
    String pick = item.id() + ":" + version;
    assertTrue(form.contains("value=\"" + pick + "\" checked"), "filled with what is planned");
    assertTrue(form.contains("not being cleaned") && form.contains("D02"), "and says what is not");
    String by =
        app.practice().settings().read().values().keySet().stream()
            .filter(name -> name.startsWith("person."))
            .map(name -> name.substring("person.".length()))
            .findFirst()
            .orElseThrow();
    HttpResponse<String> started =
        app.post(
            "/reprocessing/load/new",
            "sent",
            "1",
            "steriliser",
            "S2",
            "cycle",
            "B134",
            "by",
            by,
            "pick",
            pick);
    assertEquals(303, started.statusCode(), started.body());
    assertTrue(
        planned().problem().facts().loads().stream()
            .anyMatch(load -> !load.instruments().isEmpty()),
        "the load is a fact");
    assertTrue(app.get(DAY).body().contains("lane-load started"), "and stands in the picture");
  }
}
