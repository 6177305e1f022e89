package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.record.RecordQuery;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * One practice from its first start on: set up, its list taken over, a case planned, printed, run
 * at the chair, read in the record, restocked. What one page writes the next one reads.
 */
@Tag("journey")
class WholeJourneyTest {
  private static final String CASE = "K-9001";

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
  void aPracticeGoesFromItsFirstStartToItsFirstOrder() throws Exception {
    Page page = browser.page(1180, 820, true, com.microsoft.playwright.options.ColorScheme.LIGHT);
    firstStart(page);
    plan(page);
    print(page);
    List<RecordEntry> entries = run(page);
    record(page, entries);
    restock(page, entries);
    // a preview given up for a newer one is noted by the browser
    assertEquals(
        List.of(),
        browser.complaints().stream()
            .filter(
                one -> !one.startsWith("htmx:sendAbort") && !one.startsWith("htmx:afterRequest"))
            .toList());
  }

  private void firstStart(Page page) throws Exception {
    page.navigate(app.address("/"));
    Browser.shoot(page, "journey-00-whole-1-first-start");
    save(page);
    for (Locator one : page.locator(".question input[name=handpieces]").all()) {
      one.check(new Locator.CheckOptions().setForce(true));
    }
    page.locator(".question input[name=water]").fill("50");
    save(page);
    page.locator(".question a.main").click();
    page.locator("#list")
        .setInputFiles(
            new FilePayload(
                "drawer.csv",
                "text/csv",
                kerfwright.app.demo.DemoPractice.drawerText()
                    .text()
                    .getBytes(StandardCharsets.UTF_8)));
    page.locator("main form button.main").click();
    Browser.shoot(page, "journey-00-whole-2-list");
    page.locator("main button.main").click();
    page.waitForURL("**/drawer?did=*");
    page.navigate(app.address("/"));
    page.locator(".question input[name=initials]").fill("AB");
    save(page);
    save(page);
    PlaywrightAssertions.assertThat(page.locator(".question")).hasCount(0);
  }

  private static void save(Page page) {
    page.locator(".question form button.main").click();
  }

  private void plan(Page page) {
    page.navigate(app.address("/case"));
    page.getByLabel("Case reference").fill(CASE);
    page.locator("#procedure-access-cavity").check();
    page.locator("input[name=tooth_pick][value='26']").check();
    page.locator("#restoration-metal-ceramic").check();
    PlaywrightAssertions.assertThat(page.locator("select[name=layer_material]").first())
        .hasValue("feldspathic-porcelain");
    page.getByLabel("Length, mm").fill("4");
    page.getByLabel("Width, mm").fill("3");
    page.locator("p.actions button").click();
    PlaywrightAssertions.assertThat(page.locator("h1")).containsText("Tooth 26: access cavity");
    assertTrue(page.locator("section.step").count() >= 2);
    Browser.shoot(page, "journey-00-whole-3-plan");
  }

  private void print(Page page) throws Exception {
    APIResponse card =
        page.request()
            .get(app.address(page.locator("a.wide-only[href^='/plan.pdf']").getAttribute("href")));
    assertEquals(200, card.status());
    byte[] pdf = card.body();
    assertTrue(new String(pdf, 0, 5, StandardCharsets.US_ASCII).startsWith("%PDF-"));
    if (Boolean.getBoolean("screenshots")) {
      Files.write(Path.of("target/screenshots/journey-00-whole-4-card.pdf"), pdf);
    }
  }

  private List<RecordEntry> run(Page page) throws Exception {
    page.locator("a[href^='/chairside?']").click();
    page.locator("input[name=by]").first().check();
    page.locator("input[name=read]").check();
    page.locator("form.begin button.main").click();
    page.locator("body[data-ready=yes]").waitFor();
    int steps = page.locator("#dots button").count();
    for (int step = 0; step < steps; step++) {
      page.locator("#forward").click();
      PlaywrightAssertions.assertThat(page.locator("#forward-words")).containsText("Log step");
      page.locator("#forward").click();
    }
    Browser.shoot(page, "journey-00-whole-5-chair");
    return Patience.until(
        () ->
            app.practice()
                .record()
                .record()
                .list(new RecordQuery(CASE, null, null, null, null, null, null, 100)),
        all -> all.size() == steps);
  }

  private void record(Page page, List<RecordEntry> entries) {
    page.navigate(app.address("/records?case=" + CASE));
    for (RecordEntry entry : entries) {
      String label = entry.use().instrument().label();
      PlaywrightAssertions.assertThat(page.locator("main")).containsText(label);
      StockItem item =
          app.practice().service().drawer().find(entry.use().instrument().id()).orElseThrow();
      assertEquals(InstrumentState.USED, item.state(), label + " waits to be cleaned");
    }
    Browser.shoot(page, "journey-00-whole-6-record");
    page.navigate(app.address("/reprocessing"));
    PlaywrightAssertions.assertThat(page.locator("main"))
        .containsText(entries.get(0).use().instrument().label());
  }

  private void restock(Page page, List<RecordEntry> entries) {
    page.navigate(app.address("/restock"));
    PlaywrightAssertions.assertThat(page.locator("main"))
        .containsText(entries.get(0).use().instrument().label());
    PlaywrightAssertions.assertThat(page.locator("main")).containsText("so the figures are rough");
    Browser.shoot(page, "journey-00-whole-7-restock");
    APIResponse order = page.request().get(app.address("/restock.pdf"));
    assertTrue(new String(order.body(), 0, 5, StandardCharsets.US_ASCII).startsWith("%PDF-"));
  }
}
