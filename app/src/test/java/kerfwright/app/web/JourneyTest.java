package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.LoadState;
import com.microsoft.playwright.options.Media;
import java.util.ArrayList;
import java.util.List;
import kerfwright.app.input.BadInput;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a clinician does, in a real browser. */
@Tag("journey")
class JourneyTest {
  private static Browser browser;
  private static Served app;

  @BeforeAll
  static void start() throws BadInput {
    browser = Browser.start();
    app = new Served();
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

  private static void fillIn(Page page) {
    choose(page);
    outline(page);
  }

  private static void choose(Page page) {
    page.getByLabel("Case reference").fill("K-7001");
    page.locator("#procedure-access-cavity").check();
    page.locator("input[name=tooth_pick][value='26']").check();
    page.locator("#restoration-metal-ceramic").check();
  }

  private static void outline(Page page) {
    page.getByLabel("Length, mm").fill("4");
    page.getByLabel("Width, mm").fill("3");
  }

  @Test
  void theDrawersFormShowsOnlyWhatTheChosenKindHas() {
    Page page = browser.page(820, 1180, false, com.microsoft.playwright.options.ColorScheme.LIGHT);
    page.navigate(app.address("/drawer/new"));
    for (String kind : java.util.List.of("diamond", "turbine", "spoon", "diamond")) {
      page.locator("#f-kind").selectOption(kind);
      for (String field : java.util.List.of("iso", "head_mm", "grit", "blades", "max_rpm")) {
        assertEquals(
            kind.equals("diamond"), page.locator("#f-" + field).isVisible(), kind + " " + field);
      }
      assertTrue(page.locator("#f-place").isVisible() && page.locator("#f-kind").isVisible());
    }
  }

  @Test
  void aCaseIsEnteredAndItsPlanSeen() {
    Page page = browser.page();
    page.navigate(app.address("/"));
    page.getByRole(com.microsoft.playwright.options.AriaRole.LINK)
        .filter(new Locator.FilterOptions().setHasText("Plan a cut"))
        .last()
        .click();
    fillIn(page);
    Locator preview = page.locator("#preview");
    PlaywrightAssertions.assertThat(preview).containsText("in all");
    PlaywrightAssertions.assertThat(page.locator("select[name=layer_material]").first())
        .hasValue("feldspathic-porcelain");
    Browser.shoot(page, "journey-02-case-filled-in");
    page.locator("p.actions button").click();
    PlaywrightAssertions.assertThat(page.locator("h1")).containsText("Tooth 26: access cavity");
    assertTrue(page.locator("section.step").count() >= 2);
    assertTrue(page.locator(".hero svg").first().isVisible());
    PlaywrightAssertions.assertThat(page.locator(".standing")).isVisible();
    Browser.shoot(page, "journey-02-case-planned");
    if (!page.locator("a.wide-only[href^='/case?']").isVisible()) {
      // a phone keeps what is rarely needed under one word
      page.locator(".more > summary").click();
    }
    page.locator("a[href^='/case?']:visible")
        .filter(new Locator.FilterOptions().setHasText("Change the case"))
        .click();
    assertEquals("K-7001", page.getByLabel("Case reference").inputValue());
    page.goBack();
    page.getByText("The case: K-7001").click();
    PlaywrightAssertions.assertThat(page.locator("h1")).containsText("Tooth 26: access cavity");
    assertEquals("", Browser.barriers(page));
    Browser.shoot(page, "journey-02-case-kept");
  }

  @Test
  void theSameWorksWithoutScript() {
    Page page = browser.page(1024, 1366, false, ColorScheme.LIGHT);
    page.navigate(app.address("/case"));
    choose(page);
    outline(page);
    page.getByText("Fill in what is usual").click();
    assertTrue(page.locator("fieldset.layer").count() >= 3);
    page.getByText("Add a layer").click();
    page.locator("p.actions button").click();
    PlaywrightAssertions.assertThat(page.locator("h1")).containsText("Tooth 26");
  }

  @Test
  void aSlipIsToldBesideItsFieldWhileTyping() {
    Page page = browser.page();
    page.navigate(app.address("/case"));
    fillIn(page);
    page.getByLabel("Water at the tip, mL/min").fill("lots");
    PlaywrightAssertions.assertThat(page.locator("#fault-coolant_ml_per_min"))
        .containsText("must be a number from 0 to 500 mL/min");
    page.getByLabel("Water at the tip, mL/min").fill("40");
    PlaywrightAssertions.assertThat(page.locator("#fault-coolant_ml_per_min")).isEmpty();
  }

  @Test
  void theLastOfTwoQuickChangesIsFollowed() {
    Page page = browser.page();
    page.navigate(app.address("/case"));
    fillIn(page);
    PlaywrightAssertions.assertThat(page.locator("#preview")).containsText("Open the plan");
    page.evaluate(
        "() => { const water = document.querySelector('[name=coolant_ml_per_min]');"
            + " for (const typed of ['40', 'lots']) { water.value = typed;"
            + " water.dispatchEvent(new Event('input', { bubbles: true })); } }");
    PlaywrightAssertions.assertThat(page.locator("#fault-coolant_ml_per_min"))
        .containsText("must be a number");
  }

  @Test
  void layersAreFilledInAddedAndRemovedInPlace() {
    Page page = browser.page();
    page.navigate(app.address("/case"));
    fillIn(page);
    page.getByText("Fill in what is usual").click();
    PlaywrightAssertions.assertThat(page.locator("fieldset.layer")).not().hasCount(0);
    int before = page.locator("fieldset.layer").count();
    page.getByText("Add a layer").click();
    PlaywrightAssertions.assertThat(page.locator("fieldset.layer")).hasCount(before + 1);
    page.locator("fieldset.layer button").last().click();
    PlaywrightAssertions.assertThat(page.locator("fieldset.layer")).hasCount(before);
    assertEquals("K-7001", page.getByLabel("Case reference").inputValue());
    PlaywrightAssertions.assertThat(page.locator("#preview")).containsText("Open the plan");
  }

  @Test
  void whatIsMissingStaysToldAfterThePlanWasAskedFor() {
    Page page = browser.page();
    page.navigate(app.address("/case"));
    page.waitForTimeout(700);
    PlaywrightAssertions.assertThat(page.locator("#fault-procedure")).isEmpty();
    page.locator("p.actions button").click();
    PlaywrightAssertions.assertThat(page.locator("#fault-procedure")).containsText("is missing");
    page.getByLabel("Case reference").fill("K-7003");
    PlaywrightAssertions.assertThat(page.locator("#fault-case")).isEmpty();
    PlaywrightAssertions.assertThat(page.locator("#fault-procedure")).containsText("is missing");
  }

  @Test
  void aTypedToothTakesThePlaceOfAPickedOne() {
    Page page = browser.page();
    page.navigate(app.address("/case"));
    fillIn(page);
    page.getByLabel("or type it").fill("#30");
    page.locator("p.actions button").click();
    PlaywrightAssertions.assertThat(page.locator("h1")).containsText("Tooth 46");
  }

  @Test
  void usualValuesThatComeLateLeaveTheFieldSomebodyIsIn() {
    Page page = browser.page();
    page.navigate(app.address("/case"));
    page.locator("#procedure-access-cavity").check();
    page.waitForLoadState(LoadState.NETWORKIDLE);
    List<Route> held = new ArrayList<>();
    page.route("**/case?*", held::add);
    page.locator("input[name=tooth_pick][value='26']").check();
    page.waitForCondition(() -> !held.isEmpty());
    Locator length = page.getByLabel("Length, mm");
    length.focus();
    page.unroute("**/case?*");
    held.forEach(Route::resume);
    PlaywrightAssertions.assertThat(page.locator("select[name=layer_material]").first())
        .hasValue("enamel");
    page.keyboard().type("4");
    assertEquals("4", length.inputValue());
    page.waitForResponse("**/case?*", () -> page.getByLabel("Water at the tip, mL/min").focus());
    assertEquals("4", length.inputValue());
  }

  @Test
  void usualValuesThatComeLateLeaveWhatIsTyped() {
    Page page = browser.page();
    page.navigate(app.address("/case"));
    page.locator("#procedure-access-cavity").check();
    page.waitForLoadState(LoadState.NETWORKIDLE);
    List<Route> held = new ArrayList<>();
    page.route("**/case?*", held::add);
    page.locator("input[name=tooth_pick][value='26']").check();
    page.waitForCondition(() -> !held.isEmpty());
    outline(page);
    held.forEach(Route::resume);
    page.unroute("**/case?*");
    PlaywrightAssertions.assertThat(page.locator("select[name=layer_material]").first())
        .hasValue("enamel");
    assertEquals("4", page.getByLabel("Length, mm").inputValue());
    assertEquals("3", page.getByLabel("Width, mm").inputValue());
  }

  @Test
  void usualValuesThatComeLateLeaveTheBoundarySomebodyIsAt() {
    Page page = browser.page(1180, 1400, true, ColorScheme.LIGHT);
    page.navigate(app.address("/case"));
    fillIn(page);
    Locator boundary = page.locator(".boundary").first();
    boundary.waitFor();
    page.waitForLoadState(LoadState.NETWORKIDLE);
    List<Route> held = new ArrayList<>();
    page.route("**/case?*", held::add);
    page.locator("input[name=tooth_pick][value='27']").check();
    page.waitForCondition(() -> !held.isEmpty());
    boundary.focus();
    page.waitForResponse(
        "**/case?*",
        () -> {
          held.forEach(Route::resume);
          page.unroute("**/case?*");
        });
    PlaywrightAssertions.assertThat(boundary).isFocused();
    Locator typical = page.locator("input[name=layer_typical]").first();
    double before = Double.parseDouble(typical.inputValue());
    page.keyboard().press("ArrowUp");
    assertEquals(before - 0.05, Double.parseDouble(typical.inputValue()), 0.001);
  }

  @Test
  void aBoundaryOfTheLayersIsDraggedMovedByKeysAndTyped() {
    Page page = browser.page(1180, 1400, true, ColorScheme.LIGHT);
    page.navigate(app.address("/case"));
    fillIn(page);
    page.getByText("Fill in what is usual").click();
    Locator typical = page.locator("input[name=layer_typical]");
    PlaywrightAssertions.assertThat(page.locator("#preview")).containsText("Open the plan");
    double first = Double.parseDouble(typical.first().inputValue());
    double second = Double.parseDouble(typical.nth(1).inputValue());
    Locator boundary = page.locator(".boundary").first();
    boundary.focus();
    page.keyboard().press("ArrowUp");
    page.keyboard().press("ArrowUp");
    assertEquals(first - 0.1, Double.parseDouble(typical.first().inputValue()), 0.026);
    assertEquals(
        second, Double.parseDouble(typical.nth(1).inputValue()), "the layer below is thinned");
    Locator last = page.locator(".boundary").last();
    double before = Double.parseDouble(typical.last().inputValue());
    last.scrollIntoViewIfNeeded();
    var box = last.boundingBox();
    page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
    page.mouse().down();
    page.mouse().move(box.x + box.width / 2, box.y + box.height / 2 + 30);
    page.mouse().up();
    assertTrue(Double.parseDouble(typical.last().inputValue()) > before);
    PlaywrightAssertions.assertThat(page.locator("#preview .preview-section")).isVisible();
    typical.first().fill("1.05");
    PlaywrightAssertions.assertThat(boundary).containsText("1.05 mm");
    assertEquals("", Browser.barriers(page));
    Browser.shoot(page, "journey-02-case-boundaries");
  }

  @Test
  void targetsAreLargeEnoughForAGlovedHand() {
    Page page = browser.page(820, 1180, true, ColorScheme.LIGHT);
    for (String path : List.of("/", "/case", "/drawer")) {
      page.navigate(app.address(path));
      String small =
          Browser.small(
              page,
              "header a, a.button, main button:not(.default-submit), select, .pick, .tooth, summary,"
                  + " main input:not([type=radio]):not([type=checkbox])");
      assertEquals("", small, path);
    }
  }

  @Test
  void theFormIsFilledInByKeyboardAlone() {
    Page page = browser.page();
    page.navigate(app.address("/case"));
    page.keyboard().press("Tab");
    assertEquals("Skip to the content", page.evaluate("document.activeElement.innerText"));
    page.getByLabel("Case reference").focus();
    page.keyboard().type("K-7002");
    page.keyboard().press("Tab");
    // the first of the pictures: an access cavity
    page.keyboard().press("Space");
    page.keyboard().press("Tab");
    assertEquals("pulp", page.evaluate("document.activeElement.name"));
    Object reached = "pulp";
    for (int tab = 0; tab < 4 && !"jaw".equals(reached); tab++) {
      page.keyboard().press("Tab");
      reached = page.evaluate("document.activeElement.name");
    }
    assertEquals("jaw", reached);
    page.keyboard().press("Tab");
    assertEquals("tooth_pick", page.evaluate("document.activeElement.name"));
    page.keyboard().press("Space");
    page.locator("#restoration-metal-ceramic").check();
    page.getByLabel("Length, mm").fill("4");
    page.getByLabel("Width, mm").fill("3");
    page.keyboard().press("Enter");
    PlaywrightAssertions.assertThat(page.locator("h1")).containsText("Tooth 18");
  }

  @Test
  void aPlanPrintsOnA4() {
    Page page = browser.page();
    page.navigate(app.address("/"));
    page.navigate(app.address(page.locator("a.case-link").first().getAttribute("href")));
    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
    assertTrue(!page.locator("nav").isVisible());
    assertTrue(page.locator(".standing").isVisible());
    page.pdf(
        new Page.PdfOptions()
            .setFormat("A4")
            .setPath(java.nio.file.Path.of("target/screenshots/journey-02-case-printed.pdf")));
  }

  @Test
  void noRequestLeavesTheMachineAndNothingIsComplainedOf() {
    Page page = browser.page();
    page.navigate(app.address("/case"));
    fillIn(page);
    PlaywrightAssertions.assertThat(page.locator("#preview")).containsText("Open the plan");
    for (String request : browser.requests()) {
      assertTrue(request.startsWith(app.address("/")), request);
    }
    // the browser notes answers of status 4xx, and that a preview was given up for a newer one
    List<String> unexpected =
        browser.complaints().stream()
            .filter(one -> !one.contains("status of 4") && !one.startsWith("htmx:sendAbort"))
            .filter(one -> !one.startsWith("htmx:afterRequest"))
            .toList();
    assertEquals(List.of(), unexpected);
  }
}
