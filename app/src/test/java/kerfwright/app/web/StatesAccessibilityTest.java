package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Stream;
import kerfwright.app.Thorough;
import kerfwright.app.drawer.Takeovers;
import kerfwright.app.template.Templates;
import kerfwright.app.web.caseform.FilledForm;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.practice.drawer.DrawerQuery;
import kerfwright.practice.drawer.StockItem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What pages look like beyond their first sight: planned, refused, empty, open, half-way. Each is
 * free of barriers in German on a small phone in the dark, its colours hold in the light too, and
 * it fits a desk.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StatesAccessibilityTest {
  private static final List<String> EMPTY =
      List.of(
          "/",
          "/case",
          "/day",
          "/day/trays",
          "/day/week",
          "/chairside",
          "/drawer",
          "/reprocessing",
          "/reprocessing/load/new",
          "/records",
          "/restock",
          "/pace");

  private final Map<String, Consumer<Page>> states = new LinkedHashMap<>();
  private Served app;
  private Served empty;
  private Browser browser;
  private Page page;
  private String day;
  private String plan;

  @BeforeAll
  void start() throws Exception {
    browser = Browser.start();
    page = browser.page(320, 720, true, ColorScheme.DARK);
    page.setExtraHTTPHeaders(Map.of("Accept-Language", "de"));
    app = new Served();
    empty = Served.empty();
    day = "/day/" + java.time.LocalDate.now();
    plan =
        FilledForm.of(
                kerfwright.app.Wiring.production().demoCases().read().stream()
                    .filter(c -> c.procedure().id().equals("crown-sectioning"))
                    .findFirst()
                    .orElseThrow())
            .query();
    app.post(day + "/plan");
    Patience.until(
        () -> app.get(day + "/board").body(),
        board -> board.contains("remedy-list") || !board.contains("hx-get"));
    app.post(day + "/stop");
    Patience.until(() -> app.get(day + "/board").body(), board -> !board.contains("hx-get"));
    theDay();
    casesAndPlans();
    drawerAndRound();
    atTheChair();
    for (String path : EMPTY) {
      states.put("empty " + path, page -> page.navigate(empty.address(path)));
    }
    for (String path : ReferencePagesTest.PAGES) {
      states.put(path, open(path));
    }
  }

  @AfterAll
  void stop() {
    for (AutoCloseable one : new AutoCloseable[] {app, empty, browser}) {
      try {
        if (one != null) {
          one.close();
        }
      } catch (Exception ended) {
        throw new IllegalStateException(ended);
      }
    }
  }

  private Consumer<Page> open(String path) {
    return page -> page.navigate(app.address(path));
  }

  /** Opens a page and sends a form from it, as somebody would who filled it in. */
  private Consumer<Page> sent(String from, String to, String... fields) {
    return page -> {
      page.navigate(app.address(from));
      page.evaluate(
          "([to, fields]) => { document.documentElement.dataset.sent = 'yes';"
              + " const form = document.createElement('form');"
              + " form.method = 'post'; form.action = to;"
              + " for (let i = 0; i < fields.length; i += 2) {"
              + " const one = document.createElement('input'); one.type = 'hidden';"
              + " one.name = fields[i]; one.value = fields[i + 1]; form.append(one); }"
              + " document.body.append(form); form.submit(); }",
          List.of(to, List.of(fields)));
      page.locator("html:not([data-sent]) footer").waitFor();
      // its style sheets too
      page.waitForLoadState();
    };
  }

  private void theDay() {
    states.put("day planned", open(day));
    states.put("day move", open(day + "/move?booking=A11&start=12:05&chair=1"));
    states.put("day move impossible", open(day + "/move?booking=A12&start=08:50&chair=2"));
    states.put("day move not understood", open(day + "/move?booking=A1&start=25:99"));
    states.put("day nothing to do", sent(day, day + "/remedy", "remedy", "998"));
    states.put("day without list", open("/day/2031-01-01"));
    states.put("day booking", open(day + "/booking?id=A1"));
    states.put(
        "day booking slips",
        sent(day + "/booking", day + "/booking", "reference", "two words", "start", "9"));
    states.put(
        "day settings slips",
        sent("/day/settings", "/day/settings", "day.opens", "8", "life.steel", "0"));
    states.put(
        "day settings back to usual",
        sent("/day/settings", "/day/settings", "life.steel", "4", "reset", "day.opens"));
    states.put("day tray slips", sent("/day/trays", "/day/trays", "name", ""));
  }

  private void casesAndPlans() {
    states.put("plan", open("/plan?" + plan));
    states.put(
        "plan refused", open("/plan?" + plan.replaceFirst("ml_per_min=\\d+", "ml_per_min=0")));
    states.put("case slips", open("/plan?asked=1&tooth=99&coolant_ml_per_min=x"));
    states.put(
        "what-if",
        page -> {
          page.navigate(app.address("/plan?" + plan));
          page.locator("section.step .ask").first().click();
          page.locator("input[name=load]").fill("0.5");
          page.locator(".compare tbody tr.worse").first().waitFor();
        });
    states.put("page not there", open("/nothing-here"));
    states.put("scan unknown", open("/scan?code=ZZZ999"));
    states.put("settings slips", sent("/people", "/people/named", "initials", "too long"));
    states.put("pace reset", open("/pace/reset"));
  }

  private void drawerAndRound() throws Exception {
    StockItem item = app.practice().service().drawer().list(DrawerQuery.all(1)).items().get(0);
    states.put("drawer item", open("/drawer/item/" + item.id()));
    states.put(
        "drawer move refused",
        sent("/drawer", "/drawer/move", "pick", item.id() + ":" + item.version(), "to", "in-load"));
    states.put("drawer found nothing", open("/drawer?q=nothing-fits"));
    states.put("drawer new slips", sent("/drawer/new", "/drawer/new", "label", "two words"));
    states.put("drawer import", open("/drawer/import"));
    UUID list = app.practice().service().newId();
    kerfwright.app.stocklist.ListTable table =
        kerfwright.app.stocklist.ListFile.read(
            "list.csv",
            "name,number,len,rpm\nI1,806 314 197 534 014,8.0,300000\nI1,12,8.0,x\n"
                .getBytes(java.nio.charset.StandardCharsets.UTF_8));
    app.practice().drafts().keep(list, "list.csv", table);
    states.put("import preview", open("/drawer/import/" + list));
    states.put("import idle", open("/drawer/import/" + list + "/progress"));
    states.put("import running", progress(list, new Takeovers.Progress(400, 900, true, "")));
    states.put("import failed", progress(list, new Takeovers.Progress(9, 9, false, "I1: ?")));
    UUID load = app.practice().loads().loads().newest(9).get(0).id();
    states.put("load running", open("/reprocessing/load/" + load));
    states.put("load fail", open("/reprocessing/load/" + load + "/fail"));
    states.put(
        "load decided",
        open("/reprocessing/load/" + app.practice().loads().loads().newest(9).get(1).id()));
    states.put("load filled by the day", open("/reprocessing/load/new?pieces=R01,D01"));
    states.put(
        "load refused", sent("/reprocessing/load/new", "/reprocessing/load/new", "sent", "1"));
    String entry = app.practice().record().record().at(1).orElseThrow().id().toString();
    states.put("record entry", open("/records/" + entry));
    states.put("record correction", open("/records/" + entry + "/correct"));
    states.put("record slips", sent("/records/new", "/records/new", "case", "two words"));
    states.put(
        "restock with a wish",
        sent(
            "/restock",
            "/restock/wish",
            "type",
            "ceramic-round-010",
            "day",
            "2031-01-01",
            "pieces",
            "2"));
  }

  /** The page as it is sent half-way, kept still. */
  private Consumer<Page> progress(UUID list, Takeovers.Progress progress) {
    String path = "/drawer/import/" + list + "/progress";
    String html =
        Templates.render(
            Say.in(Language.GERMAN),
            "drawer/progress.jte",
            Map.of("id", list, "name", "list.csv", "progress", progress));
    return page -> {
      page.route(
          "**" + path,
          route ->
              route.fulfill(new Route.FulfillOptions().setContentType("text/html").setBody(html)));
      page.navigate(app.address(path));
    };
  }

  private void atTheChair() {
    states.put("chair begin", open("/chairside?" + plan));
    states.put("chair run", this::begun);
    states.put(
        "chair swap",
        page -> {
          begun(page);
          page.locator("#open-swap").click();
          page.locator(".swap-choice").first().waitFor();
        });
    states.put("chair runs", open("/chairside"));
  }

  private void begun(Page page) {
    page.navigate(app.address("/chairside?" + plan));
    page.locator("input[name=by]").first().check();
    page.locator("input[name=read]").check();
    page.locator("form.begin button.main").click();
    page.locator("body[data-ready=yes]").waitFor();
  }

  Stream<String> names() {
    return Thorough.of(List.copyOf(states.keySet()), 4).stream();
  }

  @ParameterizedTest
  @MethodSource("names")
  void isFreeOfBarriersInGermanAndFits(String name) {
    states.get(name).accept(page);
    assertEquals("de", page.locator("html").getAttribute("lang"), name);
    assertEquals("", Browser.over(page), name + " scrolls sideways at 320");
    // pages that have a test of their own were looked through there
    if (!name.startsWith("/")) {
      assertEquals("", Browser.barriers(page), name + " in the dark");
      Browser.shoot(page, "state-" + name.replaceAll("[^a-z0-9]+", "-"));
    }
  }
}
