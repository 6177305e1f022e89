package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.util.List;
import kerfwright.app.Thorough;
import kerfwright.app.input.BadInput;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Looking things up, in a real browser. */
@Tag("journey")
class ReferenceJourneyTest {
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

  /** One visit a page: barriers, colours in the dark, every width, room for a gloved hand. */
  @Test
  void everyPageIsFreeOfBarriersFitsItsWidthAndAGlovedHand() {
    Page page = browser.page(820, 1180, true, ColorScheme.LIGHT);
    int number = 0;
    for (String path : Thorough.of(ReferencePagesTest.PAGES, 5)) {
      number++;
      page.navigate(app.address(path));
      assertEquals("", Browser.barriers(page), path);
      assertEquals(
          "",
          Browser.small(page, "a.button, main button, select, summary, .field input"),
          path + " for a gloved hand");
      for (int width : List.of(320, 360, 820, 1280)) {
        page.setViewportSize(width, 900);
        assertEquals("", Browser.over(page), path + " scrolls sideways at " + width);
        Browser.shoot(page, "journey-09-reference-" + number + "-" + width);
      }
      page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
      assertEquals("", Browser.paleness(page), path + " in the dark");
      page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
      page.setViewportSize(820, 1180);
    }
  }

  @Test
  void aNumberLeadsToItsSourceInTwoClicksWithoutScript() {
    Page page = browser.page(820, 1180, false, ColorScheme.LIGHT);
    page.navigate(app.address("/reference/materials"));
    page.locator("a[href='/reference/material?id=enamel']").click();
    page.locator("td a[href*='/reference/source?key=']").first().click();
    PlaywrightAssertions.assertThat(page.locator("h2").first()).containsText("What rests on it");
  }

  @Test
  void theFormsWorkByKeyboardWithoutScript() {
    Page page = browser.page(820, 1180, false, ColorScheme.LIGHT);
    page.navigate(app.address("/reference/numbers"));
    page.getByLabel("ISO 6360 number").focus();
    page.keyboard().type("806.314.197.534.014");
    page.keyboard().press("Enter");
    PlaywrightAssertions.assertThat(page.locator("h2.digits")).hasText("806 314 197 534 014");
    page.getByText("Find similar").last().click();
    PlaywrightAssertions.assertThat(page.locator(".neighbours h3").first()).containsText("D04");
  }

  @Test
  void aToothIsPickedOnTheArch() {
    Page page = browser.page(820, 1180, false, ColorScheme.LIGHT);
    page.navigate(app.address("/reference/teeth"));
    page.locator("a[data-fdi='36']").click();
    PlaywrightAssertions.assertThat(page.locator("#answer")).containsText("LL6");
  }

  @Test
  void thePlotPrintsOnA4() {
    Page page = browser.page();
    page.navigate(app.address("/reference/plot"));
    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
    assertTrue(page.locator("figure svg").isVisible());
    assertTrue(!page.locator(".book-nav").isVisible());
    page.pdf(
        new Page.PdfOptions()
            .setFormat("A4")
            .setPath(java.nio.file.Path.of("target/screenshots/plot-a4.pdf")));
  }
}
