package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every page: no barrier in light and dark, and no sideways scrolling from phone to desktop. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagesAccessibilityTest {
  private static final List<String> PATHS =
      List.of(
          "/",
          "/case",
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
          "/day/" + LocalDate.now() + "/tray?id=A1",
          "/day/week",
          "/day/settings",
          "/reference/handpieces");

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
    for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
      Page page = browser.page(1024, 1366, true, scheme);
      page.navigate(app.address(path));
      assertEquals("", Browser.barriers(page), path + " " + scheme);
      if (scheme == ColorScheme.LIGHT) {
        Browser.shoot(page, "page-" + name);
        for (int width : List.of(320, 768, 1920)) {
          page.setViewportSize(width, 900);
          Object over =
              page.evaluate(
                  "document.documentElement.scrollWidth - document.documentElement.clientWidth");
          assertEquals(0, ((Number) over).intValue(), path + " scrolls sideways at " + width);
        }
      }
      page.context().close();
    }
  }
}
