package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every page: no barrier in light and dark, and no sideways scrolling from phone to desktop. States
 * beyond the first sight: {@link StatesAccessibilityTest}.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagesAccessibilityTest {
  private static final List<String> PATHS =
      List.of(
          "/",
          "/case",
          "/cases",
          "/drawer",
          "/settings",
          "/chairside",
          "/scan",
          "/labels",
          "/backup",
          "/restock",
          "/pace",
          "/reprocessing",
          "/reprocessing/load/new",
          "/reprocessing/settings",
          "/records",
          "/records?case=K-0398",
          "/records/new",
          "/records/verify",
          "/day",
          "/day/trays",
          "/day/" + LocalDate.now() + "/booking",
          "/day/" + LocalDate.now() + "/tray?id=A1",
          "/day/week",
          "/day/settings",
          "/reference/handpieces",
          "/teach",
          "/teach/show/threshold",
          "/teach/compare",
          "/teach/number");

  private Served app;
  private Browser browser;

  @BeforeAll
  void start() throws Exception {
    browser = Browser.start();
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

  static Stream<String> paths() {
    return PATHS.stream();
  }

  @ParameterizedTest
  @MethodSource("paths")
  void isFreeOfBarriersAndFitsEveryWidth(String path) {
    String name = path.equals("/") ? "today" : path.substring(1).replaceAll("[^a-z0-9]+", "-");
    Page page = browser.page(1024, 1366, true, ColorScheme.LIGHT);
    page.navigate(app.address(path));
    assertEquals("", Browser.barriers(page), path);
    Browser.shoot(page, "page-" + name);
    for (int width : List.of(320, 768, 1920)) {
      page.setViewportSize(width, 900);
      assertEquals("", Browser.over(page), path + " scrolls sideways at " + width);
    }
    page.context().close();
    // German words are longer; a small phone in the dark is the narrowest place
    Page german = browser.page(320, 720, true, ColorScheme.DARK);
    german.setExtraHTTPHeaders(Map.of("Accept-Language", "de"));
    german.navigate(app.address(path));
    assertEquals("de", german.locator("html").getAttribute("lang"));
    assertEquals("", Browser.barriers(german), path + " in German and in the dark");
    assertEquals("", Browser.over(german), path + " scrolls sideways in German");
    german.context().close();
  }
}
