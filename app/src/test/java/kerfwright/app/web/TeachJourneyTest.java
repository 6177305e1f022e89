package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import kerfwright.app.Wiring;
import kerfwright.app.input.BadInput;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** From a step of a plan to a lecture, a comparison and a handout, in a real browser. */
@Tag("journey")
class TeachJourneyTest {
  private static Browser browser;
  private static Served app;
  private static String query;

  @BeforeAll
  static void start() throws BadInput {
    browser = Browser.start();
    app = new Served();
    query =
        FilledForm.of(
                Wiring.production().demoCases().read().stream()
                    .filter(c -> c.procedure().id().equals("access-cavity"))
                    .findFirst()
                    .orElseThrow())
            .query();
  }

  @AfterAll
  static void stop() {
    if (app != null) {
      app.close();
    }
    if (browser != null) {
      browser.close();
    }
  }

  private static Page page(String path) {
    Page page = browser.page(1280, 900, true, ColorScheme.LIGHT);
    page.navigate(app.address(path));
    return page;
  }

  @Test
  void everyStepOfAPlanIsShownBesideItsReasons() {
    Page page = page("/plan?" + query);
    int steps = page.locator("section.step").count();
    assertTrue(steps > 1);
    assertEquals(steps, page.locator("section.because a.show-why").count());
    Browser.shoot(page, "journey-11-teach-plan");
    page.locator("details:has(section.because) > summary").click();
    page.locator("section.because a.show-why").first().click();
    PlaywrightAssertions.assertThat(page.locator(".frame:not([hidden])")).hasCount(1);
    assertTrue(page.url().contains("/teach/show/") && page.url().contains("layer="), page.url());
    assertEquals(0, page.locator("header.top nav").count(), "a lecture has no navigation");
  }

  @Test
  void aLectureIsSteppedByKeysAndButtonsAndKeepsItsPlace() {
    Page page = page("/teach/show/pressed?layer=enamel");
    Locator at = page.locator("#at");
    PlaywrightAssertions.assertThat(at).hasText("1");
    page.keyboard().press("ArrowRight");
    PlaywrightAssertions.assertThat(at).hasText("2");
    page.locator("#next").click();
    PlaywrightAssertions.assertThat(at).hasText("3");
    PlaywrightAssertions.assertThat(page.locator("#frame-3")).isVisible();
    page.reload();
    PlaywrightAssertions.assertThat(at).hasText("3");
    page.keyboard().press("End");
    PlaywrightAssertions.assertThat(at).hasText("4");
    page.keyboard().press("ArrowLeft");
    PlaywrightAssertions.assertThat(at).hasText("3");
    double smallest =
        ((Number)
                page.evaluate(
                    "() => Math.min(...[...document.querySelectorAll('main *')]"
                        + ".filter(one => one.checkVisibility() && [...one.childNodes]"
                        + ".some(n => n.nodeType === 3 && n.data.trim()))"
                        + ".filter(one => !one.closest('title, desc'))"
                        + ".map(one => one.closest('svg')"
                        + " ? Number(one.getAttribute('font-size')) * one.closest('svg')"
                        + ".getBoundingClientRect().width / one.closest('svg').viewBox.baseVal.width"
                        + " : parseFloat(getComputedStyle(one).fontSize)))"))
            .doubleValue();
    assertTrue(smallest >= 24, "read from the back of a room: " + smallest + " px");
    assertEquals("", Browser.barriers(page));
    Browser.shoot(page, "journey-11-teach-lecture");
  }

  @Test
  void theSliderMovesTheLoadAgainstTheThreshold() {
    Page page = page("/teach/show/threshold?layer=enamel&load=0.5");
    String before = page.locator("#frames svg .load").getAttribute("d");
    String limit = page.locator("#frames svg .threshold").getAttribute("d");
    page.locator("input[type=range]").fill("4");
    PlaywrightAssertions.assertThat(page.locator("#frames h2")).containsText("With 4");
    assertNotEquals(before, page.locator("#frames svg .load").getAttribute("d"));
    assertEquals(limit, page.locator("#frames svg .threshold").getAttribute("d"));
    PlaywrightAssertions.assertThat(page.locator("#hand-load")).hasText("4");
  }

  @Test
  void lecturesAreSteppedWithoutScriptToo() {
    Page page = browser.page(390, 844, false, ColorScheme.DARK);
    page.navigate(app.address("/teach/show/chip?layer=dentine"));
    page.locator("#next").click();
    PlaywrightAssertions.assertThat(page.locator("#frame-2")).isVisible();
    PlaywrightAssertions.assertThat(page.locator("#frame-1")).isHidden();
    assertEquals("", Browser.over(page));
  }

  @Test
  void nothingMovesForWhoWantsNoMotion() {
    Page page = page("/teach/show/pressed?layer=enamel&step=4");
    String moving =
        "() => document.getAnimations().filter(one => one.playState === 'running').length";
    assertTrue(((Number) page.evaluate(moving)).intValue() > 0);
    page.emulateMedia(
        new Page.EmulateMediaOptions()
            .setReducedMotion(com.microsoft.playwright.options.ReducedMotion.REDUCE));
    page.reload();
    assertEquals(0, ((Number) page.evaluate(moving)).intValue());
  }

  @Test
  void changesToACaseStandBesideItsPlan() {
    Page page = page("/plan?" + query);
    page.locator(".more > summary").click();
    page.locator(".more a[href^='/teach/compare/case']").click();
    page.locator("input[name=load1]").fill("0.3");
    page.locator("input[name=water2]").fill("20");
    page.locator("main form button.main").click();
    PlaywrightAssertions.assertThat(page.locator(".side-by-side thead th")).hasCount(3);
    PlaywrightAssertions.assertThat(page.locator(".one-sentence").first()).containsText("%");
    PlaywrightAssertions.assertThat(page.locator(".standing")).not().isEmpty();
    assertEquals("", Browser.barriers(page));
    Browser.shoot(page, "journey-11-teach-case");
  }

  @Test
  void aNumberIsBuiltPieceByPiece() {
    Page page = page("/teach/number");
    String before = page.locator(".lesson-seen svg").first().innerHTML();
    page.locator("select[name=material]").selectOption("500");
    PlaywrightAssertions.assertThat(page.locator(".number-so-far .set")).hasCount(1);
    page.locator("select[name=shape]").selectOption("107");
    PlaywrightAssertions.assertThat(page.locator(".number-so-far .set")).hasCount(2);
    assertNotEquals(before, page.locator(".lesson-seen svg").first().innerHTML());
    PlaywrightAssertions.assertThat(page.locator(".aloud dt").first()).hasText("5 0 0");
  }

  @Test
  void everyClaimLeadsToItsFindingsAndSources() {
    Page page = page("/teach/claims");
    assertTrue(page.locator("article.claim").count() >= 12);
    assertEquals(
        page.locator("article.claim").count(), page.locator("article.claim .verdict-is").count());
    assertEquals("", Browser.barriers(page));
    page.locator("#ductile-wants-blades li a").first().click();
    assertTrue(page.url().endsWith("/reference/evidence#DC032"), page.url());
  }

  /** Of a lecture and of a case: own words, kept, opened again, printed on one page. */
  @Test
  void aHandoutIsMadeKeptOpenedAgainAndPrintedOnOnePage() throws Exception {
    for (String subject : List.of("/teach/show/chip?layer=dentine&step=3", "/plan?" + query)) {
      Page page = page("/teach");
      page.navigate(
          app.address(
              "/teach/handouts/new?of=" + kerfwright.app.teaching.Addresses.encoded(subject)));
      page.locator("input[name=title]").fill("For the assistants");
      page.locator("textarea[name=words]").fill("Rest your finger.\nCount to three.");
      page.locator("form button.main").click();
      page.waitForURL("**/teach/handouts/*-*");
      PlaywrightAssertions.assertThat(page.locator(".paper .own")).hasCount(2);
      assertEquals("", Browser.barriers(page));
      String kept = page.url();
      page.navigate(app.address("/teach/handouts"));
      page.getByText("For the assistants").first().click();
      assertEquals(kept, page.url());
      page.locator("textarea[name=words]").fill("Rest it on the next tooth.");
      page.locator("form button.main").click();
      PlaywrightAssertions.assertThat(page.locator(".paper .own")).hasCount(1);
      Browser.shoot(page, "journey-11-teach-handout");
      HttpResponse<byte[]> pdf =
          HttpClient.newHttpClient()
              .send(
                  HttpRequest.newBuilder(URI.create(kept + "/pdf")).build(),
                  HttpResponse.BodyHandlers.ofByteArray());
      try (PDDocument document = Loader.loadPDF(pdf.body())) {
        assertEquals(1, document.getNumberOfPages());
        String words = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        assertTrue(words.contains("Rest it on the next tooth."), words);
        assertTrue(words.contains("Planning aid only."), words);
      }
    }
  }

  @Test
  void aHandoutSomebodyChangedMeanwhileKeepsWhatWasTyped() throws Exception {
    String id = "0191d2a0-0000-7000-8000-000000000009";
    String[] fields = {"id", id, "version", "0", "of", "/teach/claims?id=steam-dulls"};
    assertEquals(303, post(fields, "title", "One", "words", "").statusCode());
    HttpResponse<String> late = post(fields, "title", "Two", "words", "kept in the form");
    assertEquals(422, late.statusCode());
    assertTrue(late.body().contains("kept in the form"), late.body());
    assertEquals(422, post(fields, "title", "", "words", "x").statusCode());
    assertEquals(404, app.get("/teach/handouts/new?of=/nowhere").statusCode());
    assertEquals(404, app.get("/teach/handouts/new?of=%2Fplan%3Ftooth%3D99").statusCode());
  }

  private static HttpResponse<String> post(String[] fields, String... more) throws Exception {
    String[] all = java.util.Arrays.copyOf(fields, fields.length + more.length);
    System.arraycopy(more, 0, all, fields.length, more.length);
    return app.post("/teach/handouts", all);
  }

  @Test
  void inGermanNothingIsMissingAndNothingScrollsSideways() {
    Page page = browser.page(390, 844, true, ColorScheme.LIGHT);
    page.setExtraHTTPHeaders(Map.of("Accept-Language", "de"));
    for (String path :
        List.of("/teach", "/teach/show", "/teach/show/flutes", "/teach/claims", "/teach/compare")) {
      page.navigate(app.address(path));
      assertEquals("de", page.locator("html").getAttribute("lang"));
      assertEquals("", Browser.over(page), path);
    }
  }
}
