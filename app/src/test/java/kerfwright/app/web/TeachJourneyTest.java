package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import kerfwright.app.Thorough;
import kerfwright.app.Wiring;
import kerfwright.app.input.BadInput;
import kerfwright.app.web.caseform.FilledForm;
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
  void everyStepOfAPlanIsShownWithOneTap() {
    Page page = page("/plan?" + query);
    int steps = page.locator("section.step").count();
    assertTrue(steps > 1);
    assertEquals(steps, page.locator("section.step a.show-why").count());
    Browser.shoot(page, "journey-11-teach-plan");
    page.locator("section.step a.show-why").first().click();
    PlaywrightAssertions.assertThat(page.locator(".frame:not([hidden])")).hasCount(1);
    assertTrue(page.url().contains("/teach/show/") && page.url().contains("layer="), page.url());
    assertEquals(0, page.locator("header.top nav").count(), "a lecture has no navigation");
  }

  /** Instruments, speeds and strokes on one layer: pictures, sections and every figure. */
  @Test
  void waysToCutALayerStandSideBySide() {
    Page page =
        page(
            "/teach/compare?layer=dentine&tool1=carbide-6&tool2=diamond-coarse"
                + "&tool3=carbide-6&rpm3=40000&tool4=carbide-6&stroke4=with");
    assertEquals(4, page.locator(".sections td svg").count());
    assertEquals(8, page.locator(".pictures td svg").count());
    assertTrue(page.locator(".one-sentence").innerText().contains("pulls D on"));
    String rows = page.locator(".side-by-side tbody").innerText();
    for (String head :
        List.of(
            "Removes",
            "Compared with A",
            "Applied load",
            "Force along the rim",
            "The wall",
            "Heat",
            "Leaves Ra",
            "Damage",
            "Lasts for",
            "cost")) {
      assertTrue(rows.contains(head), head + " in " + rows);
    }
    for (int width : new int[] {1280, 820, 390}) {
      page.setViewportSize(width, 900);
      assertEquals("", Browser.over(page));
      double smallest = Browser.smallest(page, ".side-by-side svg *");
      assertTrue(smallest >= 16, "drawings at " + width + ": " + smallest);
    }
    assertEquals("", Browser.barriers(page));
    Browser.shoot(page, "journey-11-teach-compare");
  }

  @Test
  void changesToACaseStandBesideItsPlan() {
    Page page = page("/plan?" + query);
    page.locator(".more > summary").click();
    page.locator(".more a[href^='/teach/compare/case']").click();
    page.locator("input[name=load1]").fill("0.3");
    page.locator("input[name=water2]").fill("20");
    page.locator("select[name=stroke3]").selectOption("axial");
    page.locator("main form button.main").click();
    PlaywrightAssertions.assertThat(page.locator(".side-by-side thead th")).hasCount(4);
    PlaywrightAssertions.assertThat(page.locator(".one-sentence").first()).containsText("times");
    PlaywrightAssertions.assertThat(page.locator(".one-sentence").last()).containsText("D ");
    int computed = page.locator(".pictures td figure.working").count();
    assertTrue(computed >= 3, "the plan and at least two changes");
    assertEquals(computed, page.locator(".sections td svg").count());
    String rows = page.locator(".side-by-side tbody").innerText();
    for (String head :
        List.of(
            "Removes",
            "Compared with A",
            "Force along the rim",
            "The wall",
            "Heat, W",
            "Pulp wall",
            "Roughness",
            "Life used",
            "costs")) {
      assertTrue(rows.contains(head), head + " in " + rows);
    }
    assertTrue(Browser.smallest(page, ".side-by-side svg *") >= 16);
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
    String change =
        "/teach/compare/case?of="
            + kerfwright.app.teaching.Addresses.encoded(query)
            + "&step=1&load1=0.3&stroke2=with-rotation";
    for (String subject :
        Thorough.of(
            List.of(
                "/teach/show/chip?layer=dentine&step=3",
                "/plan?" + query,
                change,
                "/teach/compare?layer=dentine&tool1=carbide-6&tool2=diamond-fine&tool3=carbide-30"),
            2)) {
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
      try (PDDocument printed = Loader.loadPDF(page.pdf())) {
        assertEquals(1, printed.getNumberOfPages(), "printed from the browser: " + subject);
        String words = new PDFTextStripper().getText(printed);
        assertFalse(words.contains("Your own words"), words);
      }
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
