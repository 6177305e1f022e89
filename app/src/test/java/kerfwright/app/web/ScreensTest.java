package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import kerfwright.app.Thorough;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands in sight, shows whole and is large enough for a glove, on which screen. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ScreensTest {
  private static final List<String> LANGUAGES = Thorough.of(List.of("de", "en"), 2);

  private Browser browser;
  private Served app;

  @BeforeAll
  void start() throws Exception {
    browser = Browser.start();
    app = new Served();
  }

  @AfterEach
  void closeWindows() {
    browser.close();
  }

  @AfterAll
  void stop() {
    if (app != null) {
      app.close();
    }
  }

  private Page window(int width, int height, String language) {
    Page page = browser.exactly(width, height, true, ColorScheme.LIGHT);
    page.setExtraHTTPHeaders(Map.of("Accept-Language", language));
    return page;
  }

  private static String begin(String procedure) {
    return "/chairside?case=K-7301&tooth=46&procedure=" + procedure;
  }

  /** Seen without scrolling, with nothing over it. */
  private static void inSight(Page page, Locator one, String of) {
    Object seen =
        one.evaluate(
            "one => { const box = one.getBoundingClientRect();"
                + " const top = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);"
                + " return box.top >= 0 && box.left >= 0 && box.bottom <= innerHeight"
                + " && box.right <= innerWidth && top !== null"
                + " && (one.contains(top) || top.contains(one)) ? '' : JSON.stringify(box); }");
    var screen = page.viewportSize();
    assertEquals("", seen, of + " on " + screen.width + " x " + screen.height);
    assertEquals(0, page.evaluate("scrollY"), of);
  }

  @ParameterizedTest
  @CsvSource({"onlay-cavity, 5", "crown-preparation, 12"})
  void beginAtTheChairStandsInTheFirstScreen(String procedure, int atLeast) {
    for (int[] size : List.of(new int[] {1180, 820}, new int[] {390, 844}, new int[] {844, 390})) {
      for (String language : LANGUAGES) {
        Page page = window(size[0], size[1], language);
        page.navigate(app.address(begin(procedure)));
        assertEquals(language, page.locator("html").getAttribute("lang"));
        assertTrue(page.locator(".tray li").count() >= atLeast, procedure);
        Browser.shoot(page, "screens-begin-" + procedure + "-" + language + "-" + size[0]);
        inSight(page, page.locator("form.begin button.main"), "begin of " + procedure + language);
        assertEquals("", Browser.barriers(page), language);
        page.context().close();
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "onlay-cavity, 390, 844",
    "onlay-cavity, 844, 390",
    "crown-preparation, 390, 844",
    "crown-preparation, 844, 390",
    "access-cavity&restoration=metal-ceramic, 390, 844",
    "access-cavity&restoration=metal-ceramic, 844, 390"
  })
  void atTheChairCueDepthWaterAndTheOneTapLogStayInSightThroughEveryStep(
      String procedure, int width, int height) {
    for (String language : LANGUAGES) {
      Page page = window(width, height, language);
      page.navigate(app.address(begin(procedure)));
      page.locator("input[name=by]").first().check();
      page.locator("input[name=read]").check();
      page.locator("form.begin button.main").click();
      page.locator("body[data-ready=yes]").waitFor();
      int steps = page.locator("#dots button").count();
      assertTrue(steps >= 5, procedure + " has " + steps);
      for (int step = 1; step <= steps; step++) {
        String of = procedure + " " + language + " step " + step;
        assertTrue(page.locator("#step-no").innerText().contains(" " + step + " "), of);
        for (String id : List.of("cue", "depth", "water", "log", "forward")) {
          inSight(page, page.locator("#" + id), of + ": " + id);
        }
        if (page.locator("#stop-line").isVisible()) {
          inSight(page, page.locator("#stop-if"), of + ": when to stop");
        }
        if (step == 1 || step == steps) {
          Browser.shoot(
              page, "screens-chair-" + procedure.split("&")[0] + language + width + "-" + step);
        }
        page.locator("#log").click();
        page.locator("#dots button.done").nth(step - 1).waitFor(hidden());
      }
      page.context().close();
    }
  }

  /** There, though a phone does not show the row of steps. */
  private static Locator.WaitForOptions hidden() {
    return new Locator.WaitForOptions()
        .setState(com.microsoft.playwright.options.WaitForSelectorState.ATTACHED);
  }

  @Test
  void whatIsChosenInAListShowsWholeOnATablet() {
    for (int[] size : List.of(new int[] {1180, 820}, new int[] {820, 1180})) {
      for (String language : LANGUAGES) {
        Page page = window(size[0], size[1], language);
        for (String path : List.of("/drawer", "/cases", "/day/" + LocalDate.now())) {
          page.navigate(app.address(path));
          assertTrue(page.locator("select").count() > 0, path);
          assertEquals("", Browser.cutChoices(page), path + " " + language + " at " + size[0]);
          assertEquals("", Browser.over(page), path);
          Browser.shoot(page, "screens-lists-" + path.split("/")[1] + "-" + language + size[0]);
        }
        page.context().close();
      }
    }
  }

  @Test
  void everyToothIsWideEnoughForAThumb() {
    for (int width : List.of(320, 390, 520, 820)) {
      Page page = window(width, 844, "en");
      page.navigate(app.address("/case"));
      for (int jaw = 0; jaw < 4; jaw++) {
        page.locator("#jaw-" + jaw).check();
        String of = "jaw " + jaw + " at " + width;
        assertEquals(jaw < 2 ? 16 : 10, page.locator(".tooth:visible").count(), of);
        assertEquals("", Browser.small(page, ".tooth"), of);
        assertEquals("", Browser.over(page), of);
        assertEquals("", order(page), of);
        page.locator(".arch:visible").scrollIntoViewIfNeeded();
        Browser.shoot(page, "screens-teeth-" + jaw + "-" + width);
      }
      page.context().close();
    }
  }

  /** Right of the patient on the left, front teeth together; nothing lies over another. */
  private static String order(Page page) {
    return (String)
        page.evaluate(
            "() => { const all = [...document.querySelectorAll('.tooth')]"
                + ".filter(one => one.checkVisibility()).map(one => ({fdi: Number(one.control.value),"
                + " box: one.getBoundingClientRect()}));"
                + " const middle = one => one.box.x + one.box.width / 2;"
                + " const at = fdi => all.find(one => one.fdi === fdi);"
                + " const wrong = [];"
                + " for (const right of all.filter(one => [1, 4, 5, 8].includes(Math.floor(one.fdi / 10)))) {"
                + " const other = {1: 20, 4: 30, 5: 60, 8: 70}[Math.floor(right.fdi / 10)] + right.fdi % 10;"
                + " const wrapped = right.box.y !== at(other).box.y;"
                + " if (!wrapped && middle(right) >= middle(at(other))) wrong.push(right.fdi); }"
                + " return wrong.join(' '); }");
  }

  /** However thin the layers, each grip is apart from the next and a line leads to its boundary. */
  @ParameterizedTest
  @CsvSource({"390", "820", "1180"})
  void everyBoundaryOfTheLayersHasAGripAFingerReaches(int width) {
    Page page = window(width, 844, "en");
    page.navigate(app.address("/case"));
    page.locator("#procedure-access-cavity").check();
    page.locator("input[name=tooth_pick][value='26']").check();
    page.locator("#restoration-metal-ceramic").check();
    page.locator("input[name=layer_typical]").nth(2).waitFor();
    page.waitForCondition(() -> page.locator(".boundary").count() >= 4);
    for (int thin = 0; thin < 3; thin++) {
      page.locator("input[name=layer_typical]").nth(thin).fill("0.05");
    }
    int layers = page.locator(".boundary").count();
    assertEquals(layers, page.locator(".stack-leaders polyline").count());
    assertEquals("", Browser.small(page, ".boundary"));
    for (int i = 0; i < layers; i++) {
      var grip = page.locator(".boundary").nth(i).boundingBox();
      if (i > 0) {
        var above = page.locator(".boundary").nth(i - 1).boundingBox();
        assertTrue(grip.y >= above.y + above.height, "grip " + i + " over the one above");
      }
      // the line ends at the middle of its grip, and begins where the layer ends, to scale
      var layer = page.locator(".stack-layer").nth(i).boundingBox();
      double[] line = line(page, i);
      assertEquals(grip.y + grip.height / 2, line[1], 1.5, "line of " + i + " to its grip");
      assertEquals(layer.y + layer.height, line[0], 2.5, "line of " + i + " from its boundary");
    }
    assertEquals("", Browser.over(page));
    assertEquals("", Browser.barriers(page));
    page.locator("#stack").scrollIntoViewIfNeeded();
    Browser.shoot(page, "screens-boundaries-" + width);
  }

  /** Where the line to a grip begins and ends, px down the window. */
  private static double[] line(Page page, int of) {
    List<?> ends =
        (List<?>)
            page.evaluate(
                "of => { const line = document.querySelectorAll('.stack-leaders polyline')[of];"
                    + " const top = line.ownerSVGElement.getBoundingClientRect().top;"
                    + " const all = [...line.points].map(one => top + one.y);"
                    + " return [all[0], all[all.length - 1]]; }",
                of);
    return ends.stream().mapToDouble(one -> ((Number) one).doubleValue()).toArray();
  }

  /** A finger on the section itself scrolls the page; only the grips hold it. */
  @Test
  void theSectionDoesNotHoldAFingerThatScrolls() {
    Page page = window(390, 844, "en");
    page.navigate(app.address("/case"));
    page.locator("#procedure-access-cavity").check();
    page.locator("input[name=tooth_pick][value='26']").check();
    page.locator(".boundary").first().waitFor();
    String held = "one => getComputedStyle(one).touchAction";
    assertEquals("auto", page.locator("#stack").evaluate(held));
    assertEquals("none", page.locator(".boundary").first().evaluate(held));
  }
}
