package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A practice starts for the first time: five questions at most, of use after each. */
@Tag("journey")
class FirstStartJourneyTest {
  private static Served app;
  private static Browser browser;

  @BeforeAll
  static void start() throws Exception {
    browser = Browser.start();
    app = Served.empty();
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

  @Test
  void fiveQuestionsAreAskedOneByOneAndEachAnswerCounts() {
    Page page = browser.page();
    page.navigate(app.address("/"));
    question(page, "question 1 of 5");
    Browser.shoot(page, "journey-01-first-start-asked");
    assertEquals("", Browser.barriers(page));
    page.getByLabel("Universal: 3").check(force());
    save(page);

    question(page, "question 2 of 5");
    save(page);
    PlaywrightAssertions.assertThat(page.locator("[role=alert]")).isVisible();
    page.locator(".question input[type=checkbox]").first().check(force());
    page.getByLabel("Water at the tip").fill("35");
    save(page);
    // of use at once: a new case begins with the practice's own handpiece, water and notation
    page.navigate(app.address("/case"));
    assertEquals("35", page.locator("input[name=coolant_ml_per_min]").inputValue());
    PlaywrightAssertions.assertThat(page.locator("input[name=handpieces]:checked")).hasCount(1);
    PlaywrightAssertions.assertThat(page.locator(".tooth.t16")).hasText("3");

    page.navigate(app.address("/"));
    question(page, "question 3 of 5");
    PlaywrightAssertions.assertThat(page.locator(".question a.main"))
        .hasAttribute("href", "/drawer/import");
    page.getByText("Not now").click();

    question(page, "question 4 of 5");
    page.locator(".question input[name=initials]").fill("ab");
    save(page);

    question(page, "question 5 of 5");
    page.locator(".question input").nth(1).fill("none");
    save(page);
    PlaywrightAssertions.assertThat(page.locator("[role=alert]")).isVisible();
    page.locator(".question input").nth(1).fill("8");
    save(page);

    PlaywrightAssertions.assertThat(page.locator(".question")).hasCount(0);
    Browser.shoot(page, "journey-01-first-start-done");
    page.navigate(app.address("/people"));
    PlaywrightAssertions.assertThat(page.locator("main")).containsText("AB");
    // the drawer alone is still empty, and says what to do
    page.navigate(app.address("/drawer"));
    PlaywrightAssertions.assertThat(page.locator("main a.main"))
        .hasAttribute("href", "/drawer/import");
  }

  private static com.microsoft.playwright.Locator.CheckOptions force() {
    return new com.microsoft.playwright.Locator.CheckOptions().setForce(true);
  }

  private static void question(Page page, String number) {
    PlaywrightAssertions.assertThat(page.locator(".question")).containsText(number);
  }

  private static void save(Page page) {
    page.locator(".question form button.main").click();
  }

  @Test
  void anEmptyDrawerBeginsWithAUsualSetThatPlansAtOnce() throws Exception {
    try (Served practice = Served.empty()) {
      assertEquals(422, practice.post("/start/usual-set", "latch_rpm", "100000").statusCode());
      assertEquals(
          303,
          practice
              .post("/start/usual-set", "friction_grip_rpm", "400 000", "latch_rpm", "100000")
              .statusCode());
      assertTrue(practice.get("/drawer").body().contains("usual set: compare with your package"));
      String plan = practice.get("/plan?case=K-1&procedure=access-cavity&tooth=46").body();
      assertTrue(plan.contains("/chairside?"), "it can be run");
      assertEquals(
          422,
          practice
              .post("/start/usual-set", "friction_grip_rpm", "400000", "latch_rpm", "100000")
              .statusCode(),
          "only an empty drawer is filled");
    }
  }
}
