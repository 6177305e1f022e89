package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.cert.CertificateFactory;
import java.time.Clock;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import kerfwright.app.Wiring;
import kerfwright.app.network.Network;
import kerfwright.app.web.caseform.FilledForm;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.record.RecordQuery;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The chair on a tablet over the practice's network: a browser that trusts the practice's authority
 * and no other certificate that is not in order, with and without connection, locked and signed
 * out.
 */
class LanJourneyTest {
  private static final String PASSWORD = "velvet anvil under seven lamps";

  @TempDir private Path folder;

  /** The key of the authority (SPKI), by which this browser is told to trust it. */
  private String authority(Path tls) throws Exception {
    try (InputStream in = Files.newInputStream(tls.resolve("authority.crt"))) {
      byte[] key =
          CertificateFactory.getInstance("X.509")
              .generateCertificate(in)
              .getPublicKey()
              .getEncoded();
      return Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256").digest(key));
    }
  }

  @Test
  void theChairRunsOverTheNetworkWithAndWithoutConnection() throws Exception {
    Path chromium = Path.of("/usr/bin/chromium");
    boolean there = Files.isExecutable(chromium);
    if (!there && "1".equals(System.getenv("KERFWRIGHT_REQUIRE_BROWSER"))) {
      Assertions.fail("there is no Chromium at " + chromium);
    }
    Assumptions.assumeTrue(there, "no Chromium on this machine");
    Path tls = folder.resolve("tls");
    try (Network network = Network.ofOwnAuthority(tls, List.of(), Clock.systemUTC());
        Served app = Served.onNetwork(network);
        Playwright playwright =
            Playwright.create(
                new Playwright.CreateOptions()
                    .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        BrowserContext tablet =
            playwright
                .chromium()
                .launchPersistentContext(
                    folder.resolve("browser"),
                    new BrowserType.LaunchPersistentContextOptions()
                        .setExecutablePath(chromium)
                        .setViewportSize(1180, 820)
                        .setTimeout(Patience.LONGEST.toMillis())
                        .setArgs(
                            List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-background-networking",
                                "--no-first-run",
                                "--ignore-certificate-errors-spki-list=" + authority(tls))))) {
      tablet.setDefaultTimeout(Patience.LONGEST.toMillis());
      PlaywrightAssertions.setDefaultAssertionTimeout(Patience.LONGEST.toMillis());
      Page page = tablet.pages().get(0);
      page.navigate(app.address("/"));
      assertTrue(page.url().endsWith("/first"), page.url());
      Browser.shoot(page, "lan-first");
      page.locator("input[name=code]").fill("ABCD-EFGH-JKLM");
      page.locator("input[name=initials]").fill("ow");
      page.locator("input[name=password]").fill(PASSWORD);
      page.locator("input[name=pin]").fill("4071");
      page.locator("form.ask button.main").click();
      page.waitForURL("**/people");
      assertEquals("", Browser.barriers(page));
      Browser.shoot(page, "lan-people");
      page.navigate(app.address("/pair"));
      assertEquals("", Browser.barriers(page));
      Browser.shoot(page, "lan-pair");
      run(app, page);
    }
  }

  private void run(Served app, Page page) throws Exception {
    String query = FilledForm.of(Wiring.production().demoCases().read().get(0)).query();
    Browser.ownClock(page);
    page.navigate(app.address("/chairside?" + query));
    page.locator("input[name=read]").check();
    page.locator("form.begin button.main").click();
    page.waitForURL("**/chairside/run/*");
    page.locator("body[data-ready=yes]").waitFor();
    page.locator("body[data-kept=yes]").waitFor();
    assertEquals("OW", page.locator("#by").innerText());
    app.lose();
    page.reload();
    page.locator("body[data-ready=yes]").waitFor();
    page.locator("#forward").click();
    page.locator("#forward").click();
    PlaywrightAssertions.assertThat(page.locator("#dots button.done")).hasCount(1);
    PlaywrightAssertions.assertThat(page.locator("#link")).containsText("No connection");
    Browser.shoot(page, "lan-chair-without-connection");
    assertEquals(0, entries(app).size());
    app.regain();
    page.clock().fastForward(Browser.SENT_MS);
    PlaywrightAssertions.assertThat(page.locator("#link"))
        .containsText("Everything is in the record");
    List<RecordEntry> entries = entries(app);
    assertEquals(1, entries.size());
    assertEquals("OW", entries.get(0).use().by());
    locked(app, page);
  }

  private void locked(Served app, Page page) {
    page.navigate(app.address("/drawer"));
    page.locator("#lock").click();
    page.waitForURL("**/locked?to=*");
    assertEquals("", Browser.barriers(page));
    Browser.shoot(page, "lan-locked");
    page.navigate(app.address("/drawer"));
    assertTrue(page.url().contains("/locked"), page.url());
    page.locator(".people button").first().click();
    Browser.shoot(page, "lan-locked-pin");
    for (String digit : List.of("4", "0", "7", "1")) {
      page.locator("[data-digit='" + digit + "']").click();
    }
    page.locator("#keys .main").click();
    page.waitForURL("**/drawer");
    assertEquals("1", page.evaluate(DATABASES));
    page.navigate(app.address("/sign-out"));
    page.locator("#sign-out button.main").click();
    page.waitForURL("**/sign-in");
    assertEquals("", Browser.barriers(page));
    Browser.shoot(page, "lan-sign-in");
    assertEquals("0", page.evaluate(DATABASES), "what the browser kept is wiped");
    assertEquals("0", page.evaluate("async () => String((await caches.keys()).length)"));
    assertFalse(
        page.context().cookies().stream().anyMatch(one -> one.name.equals("__Host-kerfwright")));
  }

  private static final String DATABASES =
      "async () => String((await indexedDB.databases()).length)";

  private static List<RecordEntry> entries(Served app) throws Exception {
    String reference = Wiring.production().demoCases().read().get(0).reference();
    return app.practice().record().record().list(RecordQuery.ofCase(reference, 50)).stream()
        .filter(one -> one.use().step() != null && one.use().by().equals("OW"))
        .toList();
  }
}
