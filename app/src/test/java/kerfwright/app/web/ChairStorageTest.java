package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.concurrent.TimeUnit;
import kerfwright.app.input.BadInput;
import kerfwright.app.web.caseform.FilledForm;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.record.RecordQuery;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What the chair keeps on its device, with much in it and with no room left. */
@Timeout(value = 8, unit = TimeUnit.MINUTES)
class ChairStorageTest {
  private static Browser browser;
  private static Served app;
  private static String example;

  @BeforeAll
  static void start() throws BadInput {
    browser = Browser.start();
    app = new Served();
    example = FilledForm.of(kerfwright.app.Wiring.production().demoCases().read().get(0)).query();
  }

  @AfterAll
  static void stop() {
    if (app != null) {
      app.close();
      browser.close();
    }
  }

  private static Page begun(Page page, String reference) {
    page.navigate(app.address("/chairside?" + example.replaceFirst("K-\\d+", reference)));
    page.locator("input[name=by]").first().check();
    page.locator("input[name=read]").check();
    page.locator("form.begin button.main").click();
    page.waitForURL("**/chairside/run/*");
    page.locator("body[data-ready=yes]").waitFor();
    return page;
  }

  private static Page page() {
    Page page = browser.page(1180, 820, true, ColorScheme.LIGHT);
    Browser.ownClock(page);
    return page;
  }

  private static List<RecordEntry> entries(String reference) {
    return app.practice()
        .record()
        .record()
        .list(new RecordQuery(reference, null, null, null, null, null, null, 100));
  }

  private static void everythingIsInTheRecord(Page page) {
    page.clock().fastForward(Browser.SENT_MS);
    PlaywrightAssertions.assertThat(page.locator("#link"))
        .containsText("Everything is in the record");
  }

  /** What the database of the device holds under a name. */
  private static String stored(Page page, String store) {
    return (String)
        page.evaluate(
            "name => new Promise((yes, no) => { const open = indexedDB.open('chair');"
                + " open.onerror = no; open.onsuccess = () => { const all = open.result"
                + ".transaction(name).objectStore(name).getAll(); all.onsuccess = () => {"
                + " open.result.close(); yes(JSON.stringify(all.result)); }; }; })",
            store);
  }

  @Test
  void theSheetsOfFormerRunsFillNoStorageAndOldOnesMoveOver() {
    Page page = page();
    page.navigate(app.address("/chairside"));
    page.evaluate(
        "() => { try { for (let i = 0; ; i++) localStorage.setItem('chair.run.old-' + i,"
            + " JSON.stringify({ sheet: 'x'.repeat(90000), savedAt: Date.now() })); }"
            + " catch (full) { try { for (let i = 0; ; i++) localStorage.setItem('fill' + i,"
            + " 'x'.repeat(500)); } catch (rest) {} } }");
    begun(page, "K-7201");
    page.locator("#log").click();
    PlaywrightAssertions.assertThat(page.locator("#dots button.done")).hasCount(1);
    everythingIsInTheRecord(page);
    assertEquals(1, entries("K-7201").size());
    PlaywrightAssertions.assertThat(page.locator("#full")).isHidden();
    assertEquals(
        0,
        page.evaluate("Object.keys(localStorage).filter(key => key.startsWith('chair.')).length"));
  }

  @Test
  void whatWasSentIsDroppedFromTheDevice() {
    Page page = begun(page(), "K-7202");
    int steps = page.locator("#dots button").count();
    for (int i = 0; i < steps; i++) {
      page.locator("#dots button").nth(i).click();
      page.locator("#log").click();
      PlaywrightAssertions.assertThat(page.locator("#dots button.done")).hasCount(i + 1);
    }
    everythingIsInTheRecord(page);
    page.waitForFunction("() => document.getElementById('link').dataset.state === 'safe'");
    assertEquals(steps, entries("K-7202").size());
    assertEquals("[]", stored(page, "out"));
    assertTrue(stored(page, "runs").length() < 10_000, "the sheet is still kept");
    page.reload();
    page.locator("body[data-ready=yes]").waitFor();
    PlaywrightAssertions.assertThat(page.locator("#dots button.done")).hasCount(steps);
    assertEquals(steps, entries("K-7202").size());
  }

  /** From here on the device answers as one that has no room left, and then as one that has. */
  private static void room(Page page, boolean there) {
    page.evaluate(
        "there => { const all = IDBObjectStore.prototype; all.before = all.before || all.put;"
            + " all.put = there ? all.before : function () { this.transaction.abort();"
            + " throw new DOMException('no room', 'QuotaExceededError'); }; }",
        there);
  }

  @Test
  void withItsStorageFullTheChairWarnsAndSendsAndNeverSaysRecordedBeforeItIs() throws BadInput {
    Page page = begun(page(), "K-7203");
    app.lose();
    room(page, false);
    page.locator("#log").click();
    PlaywrightAssertions.assertThat(page.locator("#full")).isVisible();
    PlaywrightAssertions.assertThat(page.locator("#link")).containsText("1 on this page alone");
    PlaywrightAssertions.assertThat(page.locator("#told")).not().containsText("logged");
    assertEquals("", Browser.barriers(page));
    Browser.shoot(page, "journey-04-chair-full");
    page.clock().fastForward(4500);
    PlaywrightAssertions.assertThat(page.locator("#full")).isVisible();
    assertEquals(List.of(), entries("K-7203"));
    app.regain();
    everythingIsInTheRecord(page);
    assertEquals(1, entries("K-7203").size());
    room(page, true);
    PlaywrightAssertions.assertThat(page.locator("#full")).isHidden();
  }
}
