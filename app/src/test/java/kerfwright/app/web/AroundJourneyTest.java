package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.drawer.DrawerQuery;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.record.Cut;
import kerfwright.practice.record.UseReport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Restock and our own pace, as their pages show them. */
@Tag("journey")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AroundJourneyTest {
  private Served app;

  @BeforeAll
  void start() throws Exception {
    app = new Served();
  }

  @AfterAll
  void stop() {
    if (app != null) {
      Browser.picture(app, "/restock", "journey-10-restock");
      app.close();
    }
  }

  private HttpResponse<String> post(String path, String form) throws Exception {
    return app.send(
        HttpRequest.newBuilder(URI.create(app.address(path)))
            .header("Origin", app.address(""))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(form))
            .build());
  }

  @Test
  void theDayListOfTheDemoAsksForInstruments() throws Exception {
    assertTrue(app.get("/restock").body().contains("The day lists ask for it"));
  }

  @Test
  void usesOfTheRecordBecomeAnOrderWithItsReasons() throws Exception {
    assertEquals(200, app.get("/restock").statusCode());
    List<StockItem> items = app.practice().service().drawer().list(DrawerQuery.all(1000)).items();
    StockItem item =
        items.stream().filter(one -> one.label().equals("D01")).findFirst().orElseThrow();
    Instant now = Instant.now();
    for (int day = 0; day < 30; day++) {
      UseReport report =
          new UseReport(
              UUID.randomUUID(),
              "K-" + day,
              new Tooth(16),
              null,
              item.id(),
              null,
              "",
              "",
              new Cut(null, null, 60.0, null, null, Map.of("enamel", 5.0)),
              "AB",
              now.minusSeconds(86_400L * day));
      app.practice().record().log(report);
    }
    String page = app.get("/restock").body();
    assertTrue(page.contains("to order for the next 4 weeks"), page);
    assertTrue(page.contains("weeks take about"), page);
    String csv = app.get("/restock.csv").body();
    assertTrue(csv.startsWith("pieces,number,article,price,cost,here,reason\r\n"), csv);
    assertTrue(csv.lines().count() >= 2, csv);
    assertTrue(app.get("/restock.pdf?ahead=8").body().startsWith("%PDF-"));
  }

  @Test
  void aHandpieceThatWasWithdrawnIsALineOfTheOrder() throws Exception {
    List<StockItem> turbines =
        app.practice().service().drawer().list(DrawerQuery.all(1000)).items().stream()
            .filter(item -> item.is("turbine") && item.state() != InstrumentState.WITHDRAWN)
            .toList();
    StockItem gone =
        turbines.stream().filter(item -> item.state().ready()).findFirst().orElseThrow();
    assertEquals(null, gone.price(), "the demo notes no price of it");
    app.practice()
        .service()
        .move(
            List.of(new Pick(gone.id(), gone.version())), InstrumentState.WITHDRAWN, "bearing worn")
        .done();
    String page = app.get("/restock").body();
    String why = "One was withdrawn in the last 13 weeks: " + gone.label() + ".";
    assertTrue(page.contains(why), page);
    assertTrue(page.contains("no price noted"), page);
    String csv = app.get("/restock.csv").body();
    String here = "1,,air turbine handpiece,,," + (turbines.size() - 1) + "," + why;
    assertTrue(csv.contains(here), csv);
    assertTrue(app.get("/restock.pdf").body().startsWith("%PDF-"));
  }

  @Test
  void thePaceIsResetOnlyAfterAskingAndCanBeTakenBack() throws Exception {
    assertTrue(app.get("/pace").body().contains("Nothing measured yet"));
    String ask = app.get("/pace/reset").body();
    Matcher version = Pattern.compile("name=\"version\" value=\"(\\d+)\"").matcher(ask);
    assertTrue(ask.contains("Forget what was logged at the chair and start anew from now?"));
    assertTrue(version.find());
    int seen = Integer.parseInt(version.group(1));
    assertEquals(303, post("/pace/reset", "version=" + seen).statusCode());
    assertTrue(app.get("/pace").body().contains("Reset: only what was cut since"));
    assertEquals(409, post("/pace/reset/back", "version=" + seen).statusCode());
    assertEquals(303, post("/pace/reset/back", "version=" + (seen + 1)).statusCode());
    assertEquals(303, post("/pace/use", "use=no&version=" + (seen + 2)).statusCode());
    assertTrue(app.get("/pace").body().contains("Plans stay with the literature"));
  }

  @Test
  void fiveSlotsNarrowTheBandsOfWhatTheyCutAndAreRemovedOnlyAfterAsking() throws Exception {
    String before = app.get("/pace").body();
    assertTrue(before.contains("Measure: ten minutes, five slots"));
    String slots =
        "instrument=D01&handpiece=turbine&material=mica-glass-ceramic&load_g=100&water_ml=50"
            + "&engaged_mm=4&seconds=30&stall_g=&version="
            + version(before);
    HttpResponse<String> wrong = post("/pace/cut", slots + "&depths_mm=1.1+deep");
    assertEquals(422, wrong.statusCode());
    assertTrue(wrong.body().contains("One to twenty depths"));
    assertTrue(wrong.body().contains("value=\"100\""), "nothing typed is lost");
    assertEquals(303, post("/pace/cut", slots + "&depths_mm=1.1+0.9+1.2+1.0+1.1").statusCode());
    String after = app.get("/pace").body();
    assertTrue(after.contains("5 cuts of your own"), after);
    assertTrue(after.contains("no cut of yours: as wide as published tests lie apart"), "burs");
    String ask = app.get("/pace/cut/remove/1").body();
    assertTrue(ask.contains("Remove the slots number 1?"));
    assertEquals(303, post("/pace/cut/remove/1", "version=" + version(ask)).statusCode());
    assertTrue(app.get("/pace").body().contains("Nothing measured yet"));
  }

  private static String version(String page) {
    Matcher version = Pattern.compile("name=\"version\" value=\"(\\d+)\"").matcher(page);
    assertTrue(version.find());
    return version.group(1);
  }

  @Test
  void theExportOfARunningPracticeIsAnArchive() throws Exception {
    assertTrue(app.get("/backup").body().contains("kept only while the program runs"));
    HttpResponse<String> answer = post("/backup/export", "");
    assertEquals(200, answer.statusCode());
    assertEquals("application/zip", answer.headers().firstValue("Content-Type").orElse(""));
    assertTrue(answer.body().startsWith("PK"));
  }
}
