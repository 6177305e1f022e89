package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.util.List;
import kerfwright.app.Thorough;
import kerfwright.app.input.BadInput;
import kerfwright.app.teaching.Topic;
import kerfwright.catalogue.source.Sources;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Lectures as they are stepped, read from the back of a room and printed, in a real browser. */
@Tag("journey")
class LectureJourneyTest {
  private static Browser browser;
  private static Served app;

  @BeforeAll
  static void start() throws BadInput {
    browser = Browser.start();
    app = new Served();
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
    assertEquals("", Browser.barriers(page));
    Browser.shoot(page, "journey-11-teach-lecture");
  }

  @Test
  void everyStepOfEveryLectureIsReadFromTheBackOfARoom() {
    Page page = page("/teach");
    for (Topic topic : Thorough.of(List.of(Topic.values()), 3)) {
      page.setViewportSize(1280, 900);
      page.navigate(app.address("/teach/show/" + topic.id()));
      int frames = page.locator(".frame").count();
      for (int step = 1; step <= frames; step++) {
        for (int width : new int[] {1280, 390}) {
          page.setViewportSize(width, 900);
          double smallest = Browser.smallest(page, "main *");
          double least = width == 390 ? 16 : 24;
          assertTrue(smallest >= least, topic + " " + step + " at " + width + ": " + smallest);
        }
        page.keyboard().press("ArrowRight");
      }
      assertEquals("", Browser.barriers(page), topic.id());
    }
  }

  /** Printed from the browser: one page, all steps, sources and cautions, nothing to press. */
  @Test
  void everyLectureIsPrintedOnOnePage() throws Exception {
    for (Topic topic : Thorough.of(List.of(Topic.values()), 3)) {
      Page page = page("/teach/show/" + topic.id());
      List<String> titles = page.locator(".frame h2").allTextContents();
      boolean each = page.locator("main.each-on-paper").count() == 1;
      for (String format : List.of("A4", "Letter")) {
        byte[] pdf = page.pdf(new Page.PdfOptions().setFormat(format));
        try (PDDocument document = Loader.loadPDF(pdf)) {
          assertEquals(1, document.getNumberOfPages(), topic + " on " + format);
          String words = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
          for (String title : each ? titles : titles.subList(0, 1)) {
            assertTrue(words.contains(title), topic + ": " + title + " in " + words);
          }
          for (String control : List.of("Next", "Back", "Close", "handout", "Press with")) {
            assertFalse(words.contains(control), topic + " prints " + control);
          }
          String source = Sources.packaged().find(topic.sources().get(0)).orElseThrow().citation();
          assertTrue(words.contains(source.substring(0, 20)), topic + ": " + words);
          assertTrue(words.contains("Extracted teeth"), topic + " has its cautions");
        }
      }
      page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
      page.setViewportSize(703, 1030);
      Object cut =
          page.evaluate(
              "() => [...document.querySelectorAll('main svg')].filter(one =>"
                  + " one.checkVisibility()).filter(one => { const b ="
                  + " one.getBoundingClientRect(); return b.width < 150 || b.left < 0"
                  + " || b.right > innerWidth; }).length");
      assertEquals(0, ((Number) cut).intValue(), topic + " is cut");
      page.close();
    }
  }

  @Test
  void theSliderMovesTheLoadAgainstTheThreshold() {
    Page page = page("/teach/show/threshold?layer=enamel&load=0.5");
    String before = page.locator("#frames svg .load").getAttribute("d");
    String limit = page.locator("#frames svg .threshold").getAttribute("d");
    page.locator("input[type=range]").fill("4");
    PlaywrightAssertions.assertThat(page.locator("#frames h2")).containsText("Pressed with 4");
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
}
