package kerfwright.app.web;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Clock;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ScreenshotCaret;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * The Chromium of this machine, without a screen of its own where that one is there; nothing is
 * downloaded. One is started for all tests of a process and ends with it; each test class has its
 * own windows, with nothing shared between them.
 */
final class Browser implements AutoCloseable {
  private static final List<Path> PLACES =
      List.of(
          Path.of("/usr/bin/chromium-headless-shell"),
          Path.of("/usr/bin/chromium"),
          Path.of("/usr/bin/chromium-browser"));

  private static final String AXE = AxeBuilder.getAxeScript();

  /** After so long what was logged at the chair is sent: it may be taken back for some seconds. */
  static final long SENT_MS = 12_000;

  private static com.microsoft.playwright.@Nullable Browser running;

  private final com.microsoft.playwright.Browser chromium;
  private final List<BrowserContext> windows = new ArrayList<>();
  private final List<String> requests = new ArrayList<>();
  private final List<String> complaints = new ArrayList<>();

  private Browser(com.microsoft.playwright.Browser chromium) {
    this.chromium = chromium;
  }

  private static com.microsoft.playwright.Browser launch(Path executable) {
    Playwright playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    return playwright
        .chromium()
        .launch(
            new BrowserType.LaunchOptions()
                .setTimeout(Patience.LONGEST.toMillis())
                .setExecutablePath(executable)
                .setArgs(
                    List.of(
                        "--no-sandbox",
                        "--disable-gpu",
                        "--process-per-site",
                        "--renderer-process-limit=1",
                        "--disable-background-networking",
                        "--disable-component-update",
                        "--disable-sync",
                        "--no-first-run")));
  }

  /** Skips the test where there is no Chromium, unless the build demands one. */
  static Browser start() {
    Path executable = PLACES.stream().filter(Files::isExecutable).findFirst().orElse(null);
    boolean required = "1".equals(System.getenv("KERFWRIGHT_REQUIRE_BROWSER"));
    if (executable == null && required) {
      Assertions.fail("KERFWRIGHT_REQUIRE_BROWSER is 1, but there is no Chromium at " + PLACES);
    }
    Assumptions.assumeTrue(executable != null, "no Chromium on this machine");
    PlaywrightAssertions.setDefaultAssertionTimeout(Patience.LONGEST.toMillis());
    if (running == null || !running.isConnected()) {
      running = launch(executable);
    }
    return new Browser(running);
  }

  /** A window of this size, or of the one {@code -Dscreen=390x844} puts in place of every size. */
  Page page(int width, int height, boolean script, ColorScheme scheme) {
    String[] screen = System.getProperty("screen", width + "x" + height).split("x");
    return exactly(Integer.parseInt(screen[0]), Integer.parseInt(screen[1]), script, scheme);
  }

  /**
   * A window of this size whatever screen a journey is tried on, for what is said of this size
   * alone; every request and complaint of it is kept.
   */
  Page exactly(int width, int height, boolean script, ColorScheme scheme) {
    BrowserContext context =
        chromium.newContext(
            new NewContextOptions()
                .setViewportSize(width, height)
                .setJavaScriptEnabled(script)
                .setColorScheme(scheme));
    windows.add(context);
    context.setDefaultTimeout(Patience.LONGEST.toMillis());
    Page page = context.newPage();
    page.onRequest(request -> requests.add(request.url()));
    page.onConsoleMessage(
        message -> {
          if (message.type().equals("error") || message.type().equals("warning")) {
            complaints.add(message.text() + " (" + message.location() + ", on " + page.url() + ")");
          }
        });
    page.onPageError(complaints::add);
    return page;
  }

  Page page() {
    return page(1024, 1366, true, ColorScheme.LIGHT);
  }

  List<String> requests() {
    return List.copyOf(requests);
  }

  List<String> complaints() {
    return List.copyOf(complaints);
  }

  /** Height of the smallest words of a page as they are shown, in drawings too, px. */
  static double smallest(Page page, String within) {
    return ((Number)
            page.evaluate(
                "within => Math.min(...[...document.querySelectorAll(within)]"
                    + ".filter(one => one.checkVisibility() && [...one.childNodes]"
                    + ".some(n => n.nodeType === 3 && n.data.trim()))"
                    + ".filter(one => !one.closest('title, desc'))"
                    + ".map(one => one.closest('svg')"
                    + " ? Number(one.getAttribute('font-size')) * one.getScreenCTM().a"
                    + " : parseFloat(getComputedStyle(one).fontSize)))",
                within))
        .doubleValue();
  }

  /** The clock of a window goes as others do, and can be put forward instead of waiting. */
  static void ownClock(Page page) {
    page.clock().install(new Clock.InstallOptions().setTime(new Date()));
  }

  /** A picture to look at, where {@code -Dscreenshots=true} asks for it. */
  static void shoot(Page page, String name) {
    if (!Boolean.getBoolean("screenshots")) {
      return;
    }
    // hiding the caret would add a style of its own, which the pages forbid
    page.screenshot(
        new Page.ScreenshotOptions()
            .setCaret(ScreenshotCaret.INITIAL)
            .setPath(Path.of("target/screenshots/" + name + ".png"))
            .setFullPage(true));
  }

  /** A picture of a page at the end of a test that needs no browser itself. */
  static void picture(Served app, String path, String name) {
    if (Boolean.getBoolean("screenshots") && PLACES.stream().anyMatch(Files::isExecutable)) {
      try (Browser browser = start()) {
        Page page = browser.page();
        page.navigate(app.address(path));
        shoot(page, name);
      }
    }
  }

  /** What the accessibility check (WCAG 2.2, levels A and AA) finds; empty where all is well. */
  static String barriers(Page page) {
    return violations(
        page, "{type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']}");
  }

  /** What is too pale to read, the colours alone. */
  static String paleness(Page page) {
    return violations(page, "{type: 'rule', values: ['color-contrast']}");
  }

  /**
   * Run in the page itself and told in words there: nothing of what is well is sent back. Of a long
   * table the first rows stand for all.
   */
  private static String violations(Page page, String only) {
    if (page.evaluate("typeof axe").equals("undefined")) {
      page.evaluate(AXE);
    }
    return (String)
        page.evaluate(
            "() => axe.run({exclude: [['tbody tr:nth-child(n+7)']]}, {preload: false,"
                + " resultTypes: ['violations'], runOnly: "
                + only
                + "}).then(found => found.violations.map(rule => rule.id + ': ' + rule.help + ' '"
                + " + rule.nodes.slice(0, 3).map(node => node.html).join(', ')).join('\\n'))");
  }

  /** Targets too small for a gloved hand, 44 px each way; empty where all are large enough. */
  static String small(Page page, String targets) {
    return (String)
        page.evaluate(
            "targets => [...document.querySelectorAll(targets)]"
                + ".filter(one => one.checkVisibility())"
                + ".map(one => [one, one.getBoundingClientRect()])"
                + ".filter(([, box]) => box.height > 0 && (box.height < 43.9 || box.width < 43.9))"
                + ".map(([one, box]) => one.outerHTML.slice(0, 80) + ' ' + box.width + ' x '"
                + " + box.height).join('\\n')",
            targets);
  }

  /** What reaches beyond the window, so that the page scrolls sideways; empty where all fits. */
  static String over(Page page) {
    return (String)
        page.evaluate(
            "() => { const root = document.documentElement; const wide = root.clientWidth;"
                + " if (root.scrollWidth <= wide) return '';"
                + " const scrolled = one => { for (let up = one.parentElement; up; up = up.parentElement)"
                + " if (up !== root && up !== document.body"
                + " && getComputedStyle(up).overflowX !== 'visible') return true; return false; };"
                + " const beyond = one => one.getBoundingClientRect().right > wide + 1;"
                + " return (root.scrollWidth - wide) + ' px: '"
                + " + [...document.body.querySelectorAll('*')]"
                + ".filter(one => beyond(one) && !scrolled(one) && ![...one.children].some(beyond))"
                + ".slice(0, 5).map(one => one.outerHTML.slice(0, 160)).join(' | '); }");
  }

  /** Choices of lists that are wider than their list: they could not be read once chosen. */
  static String cutChoices(Page page) {
    return (String)
        page.evaluate(
            """
            () => {
              const arrow = 20;
              const pen = document.createElement('canvas').getContext('2d');
              return [...document.querySelectorAll('select')].flatMap((list) => {
                const style = getComputedStyle(list);
                pen.font = style.font;
                const wide = list.clientWidth - parseFloat(style.paddingLeft)
                    - parseFloat(style.paddingRight) - arrow;
                return [...list.options].map(one => one.text)
                    .filter(text => pen.measureText(text).width > wide);
              }).join('; ');
            }
            """);
  }

  /** Closes the windows of a test: a page left open goes on working and slows the next. */
  @Override
  public void close() {
    windows.forEach(BrowserContext::close);
    windows.clear();
  }
}
