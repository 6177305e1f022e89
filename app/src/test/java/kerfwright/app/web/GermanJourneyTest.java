package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.util.List;
import java.util.Map;
import kerfwright.app.EnglishWords;
import kerfwright.app.input.BadInput;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The same in German: a case, its slips, its plan, its refusal, with no English left in them. */
class GermanJourneyTest {
  /** Keys and titles of sources keep their language. */
  private static final String WHOLE_TEXT =
      "document.querySelectorAll('.src, .sources').forEach(one => one.remove());"
          + " document.querySelectorAll('details').forEach(one => one.open = true);"
          + " [...document.querySelectorAll('[aria-label]')].map(one =>"
          + " one.getAttribute('aria-label')).join(' | ') + ' | ' + document.title + ' | '"
          + " + document.body.innerText";

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

  private static Page german() {
    Page page = browser.page();
    page.setExtraHTTPHeaders(Map.of("Accept-Language", "de"));
    return page;
  }

  private static void noEnglishOn(Page page) {
    String text = (String) page.evaluate(WHOLE_TEXT);
    assertTrue(text.length() > 300, text);
    assertEquals(List.of(), EnglishWords.in(text));
  }

  @Test
  void aCaseIsEnteredAndItsPlanReadInGerman() {
    Page page = german();
    page.navigate(app.address("/case"));
    assertEquals("de", page.locator("html").getAttribute("lang"));
    page.getByLabel("Fallkennung").fill("K-7001");
    page.locator("#procedure-access-cavity").check();
    page.locator("input[name=tooth_pick][value='26']").check();
    page.locator("#restoration-metal-ceramic").check();
    page.getByLabel("L\u00e4nge, mm").fill("4,0");
    page.getByLabel("Breite, mm").fill("3,0");
    PlaywrightAssertions.assertThat(page.locator("select[name=layer_material]").first())
        .hasValue("feldspathic-porcelain");
    page.getByText("\u00dcbliches eintragen").click();
    PlaywrightAssertions.assertThat(page.locator("fieldset.layer")).not().hasCount(0);
    Browser.shoot(page, "case-german");
    noEnglishOn(page);
    page.locator("p.actions button").click();
    PlaywrightAssertions.assertThat(page.locator("h1"))
        .containsText("Zahn 26: Zugangskavit\u00e4t");
    Browser.shoot(page, "plan-german");
    noEnglishOn(page);
  }

  @Test
  void slipsAreToldInGerman() {
    Page page = german();
    page.navigate(app.address("/plan?asked=1&tooth=99&outline_length_mm=900&coolant_ml_per_min=x"));
    PlaywrightAssertions.assertThat(page.locator("#fault-procedure")).containsText("fehlt noch");
    PlaywrightAssertions.assertThat(page.locator("#fault-coolant_ml_per_min"))
        .containsText("muss sein: eine Zahl von 0 bis 500 mL/min");
    Browser.shoot(page, "case-faults-german");
    noEnglishOn(page);
  }

  @Test
  void aRefusalIsReadInGerman() {
    Page page = german();
    page.navigate(
        app.address(
            "/plan?case=K-1&procedure=access-cavity&tooth=16&pulp=vital&outline_shape=ellipse"
                + "&outline_length_mm=4&outline_width_mm=3&coolant_ml_per_min=0"
                + "&handpieces=turbine"));
    PlaywrightAssertions.assertThat(page.locator("p.finding.refuse")).containsText("mL/min Wasser");
    Browser.shoot(page, "plan-refused-german");
    noEnglishOn(page);
  }
}
