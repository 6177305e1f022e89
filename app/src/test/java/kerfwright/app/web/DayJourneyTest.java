package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * The day of the demo practice: planned, moved, late, remedied, undone; with and without script.
 */
@Tag("journey")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DayJourneyTest {
  private static final String DAY = "/day/" + LocalDate.now();

  private Served app;

  @BeforeAll
  void start() throws Exception {
    app = new Served();
    post(DAY + "/plan");
    untilDone();
  }

  @AfterAll
  void stop() {
    if (app != null) {
      app.close();
    }
  }

  private HttpResponse<String> post(String path, String... fields) throws Exception {
    StringBuilder body = new StringBuilder();
    for (int i = 0; i < fields.length; i += 2) {
      body.append(i == 0 ? "" : "&").append(fields[i]).append('=');
      body.append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
    }
    return app.send(
        HttpRequest.newBuilder(URI.create(app.address(path)))
            .header("Origin", app.address(""))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
            .build());
  }

  private void untilDone() throws Exception {
    Patience.until(() -> app.get(DAY + "/board").body(), board -> !board.contains("hx-get"));
  }

  private String undone() throws Exception {
    assertEquals(303, post(DAY + "/undo").statusCode());
    return app.get(DAY).body();
  }

  private static String found(String pattern, String text) {
    Matcher matcher = Pattern.compile(pattern, Pattern.DOTALL).matcher(text);
    assertTrue(matcher.find(), pattern);
    return matcher.group(1);
  }

  @Test
  void theShortageIsShownWithItsProofAndARemedyEndsIt() throws Exception {
    String page = app.get(DAY).body();
    assertTrue(page.contains("One instrument is missing"), page);
    assertTrue(page.contains("proven: it cannot be done with fewer"));
    assertTrue(page.contains("An extra load at 08:55"), "the load between the usual times");
    assertTrue(page.contains("Swap A5 and A7"));
    String index =
        found("Swap A5 and A7(?:(?!name=\"remedy\").)*name=\"remedy\" value=\"(\\d+)\"", page);
    assertEquals(303, post(DAY + "/remedy", "remedy", index).statusCode());
    untilDone();
    assertTrue(app.get(DAY).body().contains("Every tray is complete"));
    assertTrue(undone().contains("One instrument is missing"));
    assertEquals(409, post(DAY + "/remedy", "remedy", "998").statusCode());
  }

  @Test
  void whatToBuyGoesOnTheOrderListWithItsReasonAndOffAgain() throws Exception {
    String page = app.get(DAY).body();
    String index = found("action=\"" + DAY + "/buy\"><input[^>]*value=\"(\\d+)\"", page);
    assertEquals(303, post(DAY + "/buy", "remedy", index).statusCode());
    assertTrue(app.get(DAY).body().contains("On the order list"));
    String order = app.get("/restock").body();
    assertTrue(order.contains("; one more is enough"), order);
    assertTrue(app.get("/restock.csv").body().contains("It is missing on"));
    String type = found("name=\"type\" value=\"([^\"]+)\"", order);
    String[] request = {"type", type, "day", LocalDate.now().toString(), "pieces", "1"};
    HttpResponse<String> off = post("/restock/wish/drop", request);
    String told = app.get(off.headers().firstValue("Location").orElseThrow()).body();
    assertTrue(told.contains("Undo") && !told.contains("It is missing on"));
    assertEquals(303, post("/restock/wish", request).statusCode());
    assertTrue(app.get("/restock").body().contains("It is missing on"));
    assertEquals(409, post(DAY + "/buy", "remedy", "998").statusCode());
  }

  /** Before the practice opens: what has begun by the clock of the machine cannot be moved. */
  @Test
  void aMoveTellsWhatBreaksBeforeAnythingChanges() throws Exception {
    String before = app.get(DAY + "/board").body();
    String move = "/move?booking=A12&start=08:50&chair=2";
    assertTrue(app.get(DAY + move).body().contains("would overlap"));
    String breaks = app.get(DAY + "/move?booking=A11&start=12:05&chair=1&now=08:00").body();
    assertTrue(breaks.contains("12:05 to 12:50"), breaks);
    assertEquals(before, app.get(DAY + "/board").body(), "looking changes nothing");
    assertEquals(409, post(DAY + "/move", "booking", "A12", "start", "08:50").statusCode());
    assertEquals(
        303,
        post(DAY + "/move", "booking", "A11", "start", "12:05", "chair", "1", "now", "08:00")
            .statusCode());
    assertTrue(app.get(DAY).body().contains("12:05"));
    assertFalse(undone().contains("12:05"));
    assertTrue(app.get(DAY + "/move?booking=A1&start=25:99").body().contains("such as 10:15"));
  }

  @Test
  void aLateCasePushesThoseAfterItAndKeepsMostTrays() throws Exception {
    String late = app.get(DAY + "/move?booking=A2&late=25&now=08:30").body();
    assertTrue(late.contains("A2: 08:00 to 09:05"), late);
    assertTrue(late.contains("A4: 09:05 to 09:35"), "the next one in the chair waits");
    assertEquals(
        303, post(DAY + "/move", "booking", "A2", "late", "25", "now", "08:30").statusCode());
    assertTrue(app.get(DAY).body().contains("09:05"));
    assertFalse(undone().contains("A2, 08:00 to 09:05"));
  }

  @Test
  void anAppointmentIsEnteredWithFaultsBesideTheirFields() throws Exception {
    HttpResponse<String> slip =
        post(DAY + "/booking", "reference", "two words", "start", "9", "chair", "1");
    assertEquals(422, slip.statusCode());
    assertTrue(slip.body().contains("without spaces") && slip.body().contains("such as 10:15"));
    String[] fields = {
      "reference", "K-0600", "tooth", "11", "chair", "1", "start", "12:10", "tray", "cavity"
    };
    assertEquals(303, post(DAY + "/booking", fields).statusCode());
    String page = app.get(DAY).body();
    assertTrue(page.contains("K-0600"), "entered and planned round at once");
    assertFalse(undone().contains("K-0600"));
    HttpResponse<String> bad =
        post(
            DAY + "/booking",
            "reference",
            "K-0601",
            "chair",
            "1",
            "start",
            "12:10",
            "minutes",
            "30",
            "case",
            "case: K-0601\nprocedure: knitting\n");
    assertEquals(422, bad.statusCode());
    assertTrue(bad.body().contains("procedure"), "the fault of the case is told");
  }

  @Test
  void aTrayLaidMovesWithItsAppointment() throws Exception {
    assertEquals(303, post(DAY + "/laid", "booking", "A1").statusCode());
    HttpResponse<String> swap = app.get(DAY + "/move?booking=A1&start=12:05&chair=1");
    assertTrue(swap.body().contains("A1: 12:05"), "a laid tray moves with its appointment");
    undone();
    assertEquals(404, app.get("/day/none").statusCode());
    assertEquals(409, post(DAY + "/laid", "booking", "A99").statusCode());
  }

  @Test
  void theUsualWeekIsSimulated() throws Exception {
    assertEquals(303, post("/day/week").statusCode());
    String board =
        Patience.until(
            () -> app.get("/day/week/board").body(), one -> one.contains("simulated weeks"));
    assertTrue(board.contains("<svg") && board.contains("To add"), board);
  }

  @Test
  void anAppointmentIsDraggedAndMovedByKeysWithScript() {
    try (Browser browser = Browser.start()) {
      Page page = browser.page(1180, 1200, true, ColorScheme.LIGHT);
      page.navigate(app.address(DAY));
      var visit = page.locator("#board .visit[data-booking=A15] rect").first();
      visit.scrollIntoViewIfNeeded();
      var box = visit.boundingBox();
      page.mouse().move(box.x + 20, box.y + 20);
      page.mouse().down();
      page.mouse().move(box.x + 60, box.y + 24);
      page.mouse().up();
      page.waitForSelector("#effect button");
      assertTrue(page.locator("#effect").innerText().contains("A15"), "dragged");
      page.locator("#board .visit[data-booking=A16]").focus();
      page.keyboard().press("ArrowRight");
      page.keyboard().press("Enter");
      page.waitForSelector("#effect >> text=A16: 14:55");
      Browser.shoot(page, "journey-08-day-moved");
      assertEquals("", String.join("\n", browser.complaints()));
    }
  }
}
