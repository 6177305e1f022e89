package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DayBooks;
import kerfwright.practice.daylist.TrayId;
import kerfwright.practice.label.OwnCode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** From a scanned code to the page it names, with a scanner and without. */
@Tag("journey")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ScanJourneyTest {
  private static final String GTIN = "09501101530003";
  private static final String TYPED =
      """
      ([text, selector]) => {
        const target = selector ? document.querySelector(selector) : document.body;
        if (selector) target.focus();
        let at = performance.now();
        const press = (key) => {
          const event = new KeyboardEvent("keydown", {key, bubbles: true, cancelable: true});
          // as fast as a scanner, however busy the machine
          Object.defineProperty(event, "timeStamp", {value: at += 5});
          const kept = target.dispatchEvent(event);
          if (kept && selector && key.length === 1) target.value += key;
          return kept;
        };
        for (const key of text) press(key);
        return press("Enter");
      }
      """;

  private Served app;
  private Browser browser;

  @BeforeAll
  void start() throws Exception {
    app = new Served();
  }

  @AfterAll
  void stop() {
    if (app != null) {
      app.close();
    }
    if (browser != null) {
      browser.close();
    }
  }

  private HttpResponse<String> scan(String code) throws IOException, InterruptedException {
    return app.get("/scan?code=" + URLEncoder.encode(code, StandardCharsets.UTF_8));
  }

  private HttpResponse<String> post(String path, String form)
      throws IOException, InterruptedException {
    return app.send(
        HttpRequest.newBuilder(URI.create(app.address(path)))
            .header("Origin", app.address(""))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(form))
            .build());
  }

  private static String place(HttpResponse<String> answer) {
    assertEquals(303, answer.statusCode(), answer.body());
    String location = answer.headers().firstValue("Location").orElseThrow();
    return location.replaceFirst("^http://[^/]+", "");
  }

  private UUID item(String label) throws IOException, InterruptedException {
    Matcher found =
        Pattern.compile("/drawer/item/([0-9a-f-]{36})\\?scanned=1").matcher(place(scan(label)));
    assertTrue(found.find());
    return UUID.fromString(found.group(1));
  }

  @Test
  void aLabelAndItsOwnCodeLeadToTheInstrument() throws Exception {
    UUID id = item("D01");
    assertEquals(id, item("d01"));
    String code = new OwnCode(OwnCode.Kind.INSTRUMENT, id).text();
    assertEquals("/drawer/item/" + id + "?scanned=1", place(scan(code)));
    assertTrue(app.get(place(scan(code))).body().contains("D01"));
  }

  @Test
  void aTrayLeadsToItsPiecesOnTheDayAndHasALabel() throws Exception {
    DayBooks days = app.practice().days();
    LocalDate date = LocalDate.now();
    Booking booking = days.read(date).bookings().get(0);
    UUID tray = TrayId.of(date, booking);
    String code = new OwnCode(OwnCode.Kind.TRAY, tray).text();
    String page = place(scan(code));
    assertEquals("/day/" + date + "/tray?id=" + booking.id(), page);
    String shown = app.get(page).body();
    assertTrue(shown.contains("Tray of " + booking.id()), shown);
    assertTrue(shown.contains(booking.caseReference()), shown);
    assertTrue(app.get("/labels?tray=" + tray).body().contains(booking.caseReference()));
    UUID other = TrayId.of(date.plusDays(1), booking);
    assertTrue(
        scan(new OwnCode(OwnCode.Kind.TRAY, other).text())
            .body()
            .contains("its tray is not known"));
  }

  /** The page, or where it leads. */
  private String found(String typed) throws Exception {
    HttpResponse<String> answer = scan(typed);
    return answer.body() + answer.headers().firstValue("Location").orElse("");
  }

  @Test
  void wordsNumbersAndReferencesAreFoundAndElseTheNearest() throws Exception {
    assertTrue(place(scan("K-0412")).startsWith("/cases/"), "a case by its reference");
    String zirconia = found("zirconia");
    assertTrue(zirconia.contains("/reference/material?id=zirconia"), zirconia);
    assertTrue(found("veneer").contains("/case?procedure=veneer-preparation"));
    String number = found("806 314 197 534 014");
    assertTrue(number.contains("/reference/numbers?iso=806"), number);
    assertTrue(number.contains("/drawer/item/"), "and what of it is in the drawer");
    String size = found("US 557");
    assertTrue(size.contains("/reference/numbers?us=557"), size);
    String load = app.practice().loads().loads().newest(1).get(0).name();
    assertTrue(found(load).contains("/reprocessing/load/"), load);
    String near = found("zirconias");
    assertTrue(near.contains("Nearest") && near.contains("/reference/material?id=zirconia"), near);
  }

  @Test
  void whatIsNotKnownIsSaidAndLosesNothing() throws Exception {
    HttpResponse<String> unknown = scan("Q-77<b>");
    assertEquals(422, unknown.statusCode());
    assertTrue(unknown.body().contains("Q-77&lt;b"), unknown.body());
    HttpResponse<String> gone = scan(new OwnCode(OwnCode.Kind.POUCH, new UUID(1, 2)).text());
    assertEquals(422, gone.statusCode());
    assertTrue(gone.body().contains("its pouch is not known here"), gone.body());
    HttpResponse<String> misread = scan("]d20109501101530004");
    assertEquals(422, misread.statusCode());
    assertTrue(misread.body().contains("is 4 and should be 3"), misread.body());
    assertTrue(scan("").body().contains("Scan an instrument"));
    Browser.picture(app, "/scan?code=ZZZ999", "journey-07-scan-unknown");
  }

  @Test
  void aPackageIsAddedOnceAndFoundFromThenOn() throws Exception {
    String code = "]d201" + GTIN + "1730020010LOT12\u001d21S7";
    String page = scan(code).body();
    assertTrue(page.contains(GTIN) && page.contains("LOT12") && page.contains("28 Feb 2030"), page);
    Matcher add = Pattern.compile("href=\"(/drawer/new\\?code=[^\"]+)\"").matcher(page);
    assertTrue(add.find(), page);
    String form =
        app.get(add.group(1).replace("&amp;", "&").replace("{", "%7B").replace("}", "%7D")).body();
    assertTrue(form.contains("LOT12"), form);
    String sent =
        "id=PK1&iso=806+314+197+534+014&head_length_mm=8&pieces=1&state=quarantine&code="
            + URLEncoder.encode("]d201" + GTIN + "1730020010LOT12{GS}21S7", StandardCharsets.UTF_8);
    String item = place(post("/drawer/new", sent)).replaceFirst("\\?.*", "");
    assertTrue(app.get(item).body().contains("LOT12"));
    assertEquals(item + "?scanned=1", place(scan(code)));
    assertEquals(item + "?scanned=1", place(scan("(01)" + GTIN + "(10)LOT12")));
    String other = scan("]d201" + GTIN + "10LOT13").body();
    assertTrue(other.contains("Add one like PK1"), other);
    assertEquals(
        303, post("/scan/belongs", "code=" + "%5Dd201" + GTIN + "10LOT13&label=D04").statusCode());
    assertEquals(
        "/drawer/item/" + item("D04") + "?scanned=1", place(scan("]d201" + GTIN + "10LOT13")));
    HttpResponse<String> taken =
        post("/scan/belongs", "code=" + "%5Dd201" + GTIN + "10LOT14&label=D04");
    assertEquals(409, taken.statusCode());
    assertTrue(taken.body().contains("D04 already has a package"), taken.body());
  }

  @Test
  void aCodeThatCanBeReadInSeveralWaysAsksWhich() throws Exception {
    String page = scan("01" + GTIN + "1012342155").body();
    assertTrue(page.contains("12342155") && page.contains("1234</dd>"), page);
    assertTrue(page.contains("in several ways"), page);
  }

  @Test
  void labelsOfTickedInstrumentsArePrinted() throws Exception {
    String picks = "pick=" + item("D01") + "%3A1&pick=" + item("D03") + "%3A1";
    String page = post("/labels", picks).body();
    assertTrue(page.contains("2 labels on 1 sheet."), page);
    HttpResponse<String> svg = post("/labels.svg", picks + "&copies=20");
    assertEquals("image/svg+xml", svg.headers().firstValue("Content-Type").orElse(""));
    assertEquals(40, svg.body().split("font-weight=\"bold\"", -1).length - 1);
    assertTrue(post("/labels.pdf", picks).body().startsWith("%PDF-"));
    HttpResponse<String> bad = post("/labels.pdf", picks + "&columns=0&rows=x");
    assertEquals(422, bad.statusCode());
    assertTrue(bad.body().contains("Columns: 1 to 20"), bad.body());
    assertTrue(post("/labels.pdf", picks + "&columns=20").body().contains("at least 18 by 9 mm"));
    assertTrue(post("/labels/sheet", picks + "&columns=4").body().contains("is kept"));
    assertTrue(post("/labels", picks).body().contains("name=\"columns\" value=\"4\""));
    assertTrue(post("/labels/sheet", picks + "&columns=3").body().contains("is kept"));
  }

  @Test
  void aScannerWorksOnEveryPageAndLeavesFieldsAlone() throws Exception {
    browser = Browser.start();
    UUID id = item("D01");
    String code = new OwnCode(OwnCode.Kind.INSTRUMENT, id).text();
    Page page = browser.page(1180, 820, true, ColorScheme.LIGHT);
    page.navigate(app.address("/settings"));
    page.evaluate(TYPED, new Object[] {code, null});
    page.waitForURL("**/drawer/item/" + id + "**");

    page.navigate(app.address("/people"));
    page.evaluate(TYPED, new Object[] {code, "input[name=initials]:not([type=hidden])"});
    page.waitForURL("**/drawer/item/" + id + "**");

    // with something typed and not saved, the code waits
    page.navigate(app.address("/people"));
    page.fill("input[name=initials]:not([type=hidden])", "AB");
    page.evaluate(TYPED, new Object[] {code, "select[name=does]"});
    assertEquals(code, page.inputValue("#scan-top"));
    assertTrue(page.isVisible("#scan-unsaved"));
    assertEquals("AB", page.inputValue("input[name=initials]:not([type=hidden])"));

    // every page that shows or takes an instrument, tray, pouch or load
    for (String path :
        List.of(
            "/",
            "/day",
            "/day/" + LocalDate.now() + "/tray?id=A1",
            "/drawer",
            "/drawer/new",
            "/reprocessing",
            "/reprocessing/load/new",
            "/records",
            "/records/new",
            "/labels",
            "/restock")) {
      page.navigate(app.address(path));
      page.evaluate(TYPED, new Object[] {code, null});
      page.waitForURL("**/drawer/item/" + id + "**");
    }

    // a field for what is scanned takes it, and its form knows what it means
    page.navigate(app.address("/records/new"));
    page.evaluate(TYPED, new Object[] {code, "#instrument"});
    assertEquals(code, page.inputValue("#instrument"));
    assertTrue(page.url().endsWith("/records/new"));

    // where things are ticked, what is scanned is ticked
    page.navigate(app.address("/reprocessing"));
    Locator box = page.locator("form[action='/reprocessing/clean'] input[name=pick]").first();
    String used = box.getAttribute("data-codes").split(" ")[1];
    box.uncheck();
    page.evaluate(TYPED, new Object[] {used, null});
    PlaywrightAssertions.assertThat(box).isChecked();

    // few keys are no scan: enter does what it always does
    page.navigate(app.address("/drawer"));
    assertEquals(true, page.evaluate(TYPED, new Object[] {"D01", "#q"}));
    assertEquals("D01", page.inputValue("#q"));
    page.context().close();
  }
}
