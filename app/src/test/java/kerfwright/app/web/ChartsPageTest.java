package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.util.List;
import kerfwright.app.Wiring;
import kerfwright.app.input.BadInput;
import kerfwright.app.web.caseform.FilledForm;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Charts in a real browser: with script and without, on paper, by keyboard, light and dim. */
class ChartsPageTest {
  private static Browser browser;
  private static Served app;
  private static String plan;

  @BeforeAll
  static void start() throws BadInput {
    browser = Browser.start();
    app = new Served();
    plan =
        "/plan?"
            + FilledForm.of(
                    Wiring.production().demoCases().read().stream()
                        .filter(c -> c.procedure().id().equals("crown-sectioning"))
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

  private static Page open(String path, int width, boolean script, ColorScheme scheme) {
    Page page = browser.page(width, 900, script, scheme);
    page.navigate(app.address(path));
    return page;
  }

  @Test
  void theDrawingStandsWhereNoScriptRunsAndOnPaper() {
    Page plain = open(plan, 1024, false, ColorScheme.LIGHT);
    PlaywrightAssertions.assertThat(plain.locator("#heat")).isVisible();
    Page scripted = open(plan, 1024, true, ColorScheme.LIGHT);
    PlaywrightAssertions.assertThat(scripted.locator("#heat")).isHidden();
    PlaywrightAssertions.assertThat(scripted.locator("#chart-heat canvas")).isVisible();
    scripted.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
    PlaywrightAssertions.assertThat(scripted.locator("#heat")).isVisible();
    PlaywrightAssertions.assertThat(scripted.locator("#chart-heat canvas")).isHidden();
  }

  @Test
  void theChartIsNamedAndDescribedAsItsDrawingIs() {
    Page page = open(plan, 1024, true, ColorScheme.LIGHT);
    String about = page.locator("#heat-desc").textContent();
    Locator plot = page.locator("#chart-heat .chart-plot");
    PlaywrightAssertions.assertThat(plot).hasAttribute("role", "img");
    assertTrue(plot.getAttribute("aria-label").endsWith(about), about);
  }

  @Test
  void arrowKeysReadACurvePointByPoint() {
    Page page = open("/reference/handpieces", 1024, true, ColorScheme.LIGHT);
    Locator plot = page.locator("#chart-speed-turbine .chart-plot");
    Locator told = page.locator("#chart-speed-turbine .chart-told");
    PlaywrightAssertions.assertThat(told).containsText("Speed, 1000 per min: 400");
    plot.focus();
    page.keyboard().press("End");
    PlaywrightAssertions.assertThat(told).containsText("Speed, 1000 per min: 0");
    page.keyboard().press("Home");
    page.keyboard().press("ArrowRight");
    assertEquals(told.textContent(), plot.getAttribute("aria-valuetext"));
    assertEquals("1", plot.getAttribute("aria-valuenow"));
    PlaywrightAssertions.assertThat(told).containsText("Speed, 1000 per min: 393");
    assertEquals("", Browser.barriers(page));
  }

  @Test
  void aChartFollowsTheThemeAndTheWidthOfThePage() {
    Page page = open(plan, 1400, true, ColorScheme.LIGHT);
    String picture = "document.querySelector('#chart-heat canvas').toDataURL()";
    Object light = page.evaluate(picture);
    page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
    page.waitForFunction("before => " + picture + " !== before", light);
    for (int width : List.of(320, 3840)) {
      page.setViewportSize(width, 900);
      page.waitForFunction(
          "() => Math.abs(document.querySelector('#chart-heat canvas').clientWidth -"
              + " document.querySelector('#chart-heat .chart-plot').clientWidth) < 8");
      Object over =
          page.evaluate(
              "document.documentElement.scrollWidth - document.documentElement.clientWidth");
      assertEquals(0, ((Number) over).intValue(), "scrolls sideways at " + width);
    }
    assertNotEquals(light, page.evaluate(picture));
  }

  @Test
  void nothingIsLoadedFromElsewhereAndNothingIsRefusedByThePolicy() {
    open(plan, 1024, true, ColorScheme.LIGHT);
    Page changed = open(plan, 1024, true, ColorScheme.LIGHT);
    changed.locator("section.step .ask").first().click();
    changed.locator("input[name=load]").fill("0.6");
    PlaywrightAssertions.assertThat(changed.locator(".compare tbody tr").first())
        .hasClass(java.util.regex.Pattern.compile(".*worse.*"));
    open("/day/week", 1024, true, ColorScheme.LIGHT);
    assertEquals(List.of(), browser.complaints());
    for (String request : browser.requests()) {
      assertTrue(request.startsWith(app.address("/")), request);
    }
  }
}
