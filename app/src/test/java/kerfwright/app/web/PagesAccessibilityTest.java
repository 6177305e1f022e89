package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kerfwright.app.Thorough;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every page of every feature: no barrier in light and dark, and no sideways scrolling from phone
 * to desktop. States beyond the first sight: {@link StatesAccessibilityTest}.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagesAccessibilityTest {
  private Served app;
  private Browser browser;
  private Page page;
  private Page german;

  @BeforeAll
  void start() throws Exception {
    browser = Browser.start();
    app = new Served();
    page = browser.page(1024, 1366, true, ColorScheme.LIGHT);
    // German words are longer; a small phone in the dark is the narrowest place
    german = browser.page(320, 720, true, ColorScheme.DARK);
    german.setExtraHTTPHeaders(Map.of("Accept-Language", "de"));
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

  Stream<String> paths() {
    return Thorough.of(app.pages(), 7).stream();
  }

  @ParameterizedTest
  @MethodSource("paths")
  void isFreeOfBarriersAndFitsEveryWidth(String path) {
    String name = path.equals("/") ? "today" : path.substring(1).replaceAll("[^a-z0-9]+", "-");
    page.setViewportSize(1024, 1366);
    page.navigate(app.address(path));
    assertEquals("", Browser.barriers(page), path);
    Browser.shoot(page, "page-" + name);
    for (int width : List.of(320, 768, 1920)) {
      page.setViewportSize(width, 900);
      assertEquals("", Browser.over(page), path + " scrolls sideways at " + width);
    }
    german.navigate(app.address(path));
    assertEquals("de", german.locator("html").getAttribute("lang"));
    assertEquals("", Browser.paleness(german), path + " in the dark");
    assertEquals("", Browser.over(german), path + " scrolls sideways in German");
  }
}
