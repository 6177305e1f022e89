package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.app.Thorough;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseReader;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.SourceText;
import kerfwright.app.input.TreeReader;
import kerfwright.app.web.caseform.FilledForm;
import kerfwright.planner.casework.CutCase;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The plan in a real browser: its heat, its questions, its copies, its print. */
@Tag("journey")
class PlanPageTest {
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
                    .filter(c -> c.procedure().id().equals("crown-sectioning"))
                    .findFirst()
                    .orElseThrow())
            .query();
  }

  @AfterEach
  void closeWindows() {
    browser.close();
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

  private static Page plan(ColorScheme scheme) {
    Page page = browser.page(1280, 900, true, scheme);
    page.navigate(app.address("/plan?" + query));
    return page;
  }

  private static void ask(Page page, int step) {
    page.locator("section.step .ask").nth(step - 1).click();
    PlaywrightAssertions.assertThat(page.locator("#ask-" + step + " #what-if")).isVisible();
  }

  @Test
  void movingAlongTheHeatShowsStepAndDepthAtThatTime() {
    Page page = plan(ColorScheme.LIGHT);
    Locator told = page.locator("#scrub-told");
    PlaywrightAssertions.assertThat(told).containsText("At 0 s");
    String level = page.locator(".hero .scrub-line").getAttribute("d");
    page.locator("#scrub").focus();
    for (int i = 0; i < 30; i++) {
      page.keyboard().press("ArrowRight");
    }
    PlaywrightAssertions.assertThat(told).containsText("At 30 s");
    assertNotEquals(level, page.locator(".hero .scrub-line").getAttribute("d"));
    PlaywrightAssertions.assertThat(page.locator("section.step.now")).hasCount(1);
    page.keyboard().press("End");
    PlaywrightAssertions.assertThat(told).containsText("After the last cut");
    PlaywrightAssertions.assertThat(told).containsText("mm deep");
    var box = page.locator("#chart-heat .u-over").boundingBox();
    page.mouse().move(box.x + box.width * 0.4, box.y + box.height / 2);
    PlaywrightAssertions.assertThat(told).not().containsText("After the last cut");
    Browser.shoot(page, "journey-03-plan-along-the-heat");
  }

  @Test
  void aChangeIsComputedBesideThePlanAndARefusalSaysWhy() {
    for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
      Page page = plan(scheme);
      ask(page, 2);
      Locator first = page.locator(".compare tbody tr").first();
      PlaywrightAssertions.assertThat(first).hasClass(java.util.regex.Pattern.compile(".*same.*"));
      page.locator("input[name=load]").fill("0.5");
      PlaywrightAssertions.assertThat(first).hasClass(java.util.regex.Pattern.compile(".*worse.*"));
      PlaywrightAssertions.assertThat(first).containsText("+");
      PlaywrightAssertions.assertThat(page.locator("#what-if-answer canvas")).hasCount(1);
      Browser.shoot(page, "journey-03-plan-what-if-" + scheme);
      page.locator("input[name=water]").fill("0");
      PlaywrightAssertions.assertThat(page.locator("#what-if-answer"))
          .containsText("Not allowed: step");
      assertEquals("", Browser.barriers(page));
      page.context().close();
    }
  }

  @Test
  void anotherStepAndAnotherInstrumentBringTheirOwnSpeeds() {
    Page page = plan(ColorScheme.LIGHT);
    ask(page, 1);
    ask(page, 3);
    PlaywrightAssertions.assertThat(page.locator("#what-if")).hasCount(1);
    PlaywrightAssertions.assertThat(page.locator("#ask-3 #what-if")).isVisible();
    PlaywrightAssertions.assertThat(page.locator(".compare caption")).containsText("Step 3");
    Locator instruments = page.locator("#what-if select[name=instrument]");
    String planned = instruments.inputValue();
    String other =
        instruments.locator("option").all().stream()
            .map(option -> option.getAttribute("value"))
            .filter(id -> !id.equals(planned))
            .findFirst()
            .orElseThrow();
    instruments.selectOption(other);
    PlaywrightAssertions.assertThat(page.locator("#what-if select[name=instrument]"))
        .hasValue(other);
    PlaywrightAssertions.assertThat(page.locator(".compare tbody tr").first())
        .not()
        .hasClass(java.util.regex.Pattern.compile(".*same.*"));
  }

  @Test
  void questionsAreAnsweredWithoutScriptToo() {
    Page page = browser.page(1024, 1366, false, ColorScheme.LIGHT);
    page.navigate(app.address("/plan?" + query));
    page.locator("section.step .ask").first().click();
    page.locator("#what-if .ask-again button").click();
    PlaywrightAssertions.assertThat(page.locator("#what-if-answer table")).isVisible();
    assertTrue(page.url().contains("/plan/what-if?"));
  }

  @Test
  void linkAndTextAreCopied() throws Exception {
    Page page = plan(ColorScheme.LIGHT);
    BrowserContext context = page.context();
    context.grantPermissions(List.of("clipboard-read", "clipboard-write"));
    page.locator(".more > summary").click();
    page.locator("[data-copy-link]").click();
    PlaywrightAssertions.assertThat(page.locator("#copied")).containsText("Copied");
    assertEquals(page.url(), page.evaluate("navigator.clipboard.readText()"));
    page.locator("[data-copy-text]").click();
    String link = page.url();
    String text =
        Patience.until(
            () -> (String) page.evaluate("navigator.clipboard.readText()"),
            one -> !one.equals(link));
    assertTrue(text.contains("K-0415") && text.contains("rpm"), text);
    assertEquals(app.get("/plan.txt?" + query).body(), text);
  }

  /** Short and long plans; access through a molar has six operations, one more than has to fit. */
  private static final List<String> LOOKED_AT =
      List.of(
          "access-natural-vital",
          "onlay-gold",
          "cavity-under-enamel",
          "occlusal-adjustment-gold",
          "sectioning-zirconia");

  @Test
  void theFirstFiveStepsAreOnOneScreenAndTheFirstCueOnAPhone() throws Exception {
    CaseReader reader = new CaseReader(Wiring.production().cases());
    Page service = browser.exactly(1280, 900, true, ColorScheme.LIGHT);
    Page upright = browser.exactly(820, 1180, true, ColorScheme.LIGHT);
    Page lying = browser.exactly(1180, 820, true, ColorScheme.LIGHT);
    Page phone = browser.exactly(390, 844, true, ColorScheme.LIGHT);
    List<String> misses = new ArrayList<>();
    for (String name : LOOKED_AT) {
      SourceText file = SourceText.of(Path.of("../examples/" + name + ".yaml"));
      CutCase cutCase = reader.read(TreeReader.yaml(file), "case");
      String address = app.address("/plan?" + FilledForm.of(cutCase).query());
      for (String language : Thorough.of(List.of("de", "en"), 2)) {
        String of = name + " " + language;
        misses.addAll(shown(service, address, language, "section.step", 5, of));
        misses.addAll(shown(upright, address, language, "section.step", 5, of));
        misses.addAll(shown(lying, address, language, "section.step", 5, of));
        misses.addAll(shown(phone, address, language, "section.step .until", 1, of));
        assertEquals("", smallText(phone), name);
      }
    }
    assertEquals("", String.join("\n", misses));
  }

  private static List<String> shown(
      Page page, String address, String language, String what, int most, String name) {
    page.setExtraHTTPHeaders(Map.of("Accept-Language", language));
    page.navigate(address);
    assertEquals(language, page.locator("html").getAttribute("lang"));
    Locator all = page.locator(what);
    int last = Math.min(most, all.count());
    var box = all.nth(last - 1).boundingBox();
    var screen = page.viewportSize();
    double over = box.y + box.height - screen.height;
    return over <= 0
        ? List.of()
        : List.of(
            name
                + " on "
                + screen.width
                + " x "
                + screen.height
                + ": "
                + what
                + " "
                + last
                + " ends "
                + Math.round(over)
                + " px below");
  }

  /** Words of the picture, the verdict and the steps that are smaller than 16 pixels. */
  private static String smallText(Page page) {
    return (String)
        page.evaluate(
            "() => [...document.querySelectorAll('.verdict *, .picture *')]"
                + ".filter(one => [...one.childNodes].some(n => n.nodeType === 3 && n.data.trim()))"
                + ".filter(one => !one.closest('svg') && one.checkVisibility())"
                + ".filter(one => parseFloat(getComputedStyle(one).fontSize) < 16)"
                + ".map(one => one.outerHTML.slice(0, 100)).join(' ')");
  }

  @Test
  void everyExamplePrintsOnTwoSheetsOfA4WithItsCautions() throws Exception {
    CaseReader reader = new CaseReader(Wiring.production().cases());
    Page page = browser.page(1280, 900, true, ColorScheme.LIGHT);
    for (Path file : Thorough.examples()) {
      String name = file.getFileName().toString();
      CutCase cutCase = reader.read(TreeReader.yaml(SourceText.of(file)), "case");
      page.navigate(app.address("/plan?" + FilledForm.of(cutCase).query()));
      byte[] pdf = page.pdf(new Page.PdfOptions().setFormat("A4").setPreferCSSPageSize(true));
      try (PDDocument document = Loader.loadPDF(pdf)) {
        assertTrue(
            document.getNumberOfPages() <= 2, name + ": " + document.getNumberOfPages() + " pages");
        String words =
            new org.apache.pdfbox.text.PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        assertTrue(words.contains("Planning aid only."), name + words);
      }
    }
  }
}
