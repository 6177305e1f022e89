package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import kerfwright.app.input.BadInput;
import kerfwright.app.web.caseform.FilledForm;
import kerfwright.practice.chairside.RunEvent;
import kerfwright.practice.drawer.DrawerQuery;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.label.OwnCode;
import kerfwright.practice.record.CutUse;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.record.RecordQuery;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A plan run at the chair, in a real browser: nothing is lost and nothing is logged twice. */
@Tag("journey")
class ChairsideJourneyTest {
  private static Browser browser;
  private static String example;
  private Served app;

  @BeforeAll
  static void start() throws BadInput {
    browser = Browser.start();
    example = FilledForm.of(kerfwright.app.Wiring.production().demoCases().read().get(0)).query();
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void openPractice() throws BadInput {
    app = new Served();
  }

  @AfterEach
  void closePractice() {
    browser.close();
    app.close();
  }

  /** Opens the example under another case reference and begins to run it. */
  private Page begun(String reference, int width, int height, ColorScheme scheme) {
    return begun(browser.page(width, height, true, scheme), reference);
  }

  private Page begun(Page page, String reference) {
    Browser.ownClock(page);
    String query = example.replaceFirst("K-\\d+", reference);
    page.navigate(app.address("/chairside?" + query));
    initials(page);
    page.locator("input[name=read]").check();
    page.locator("form.begin button.main").click();
    page.waitForURL("**/chairside/run/*");
    ready(page);
    return page;
  }

  /** Picked where the practice has people, typed where it has none yet. */
  private static void initials(Page page) {
    Locator by = page.locator("input[name=by]").first();
    if ("radio".equals(by.getAttribute("type"))) {
      by.check();
    } else {
      by.fill("ab");
    }
  }

  private static void ready(Page page) {
    page.locator("body[data-ready=yes]").waitFor();
  }

  private static int steps(Page page) {
    return page.locator("#dots button").count();
  }

  /** To a step, by its dot; back to one by the large area where a phone shows no dots. */
  private static void toStep(Page page, int step) {
    Locator dot = page.locator("#dots button").nth(step - 1);
    if (dot.isVisible()) {
      dot.click();
      return;
    }
    String there = "Step " + step + " of";
    for (int taps = 0; taps < 40 && !page.locator("#step-no").innerText().contains(there); taps++) {
      page.locator("#back").click();
    }
    PlaywrightAssertions.assertThat(page.locator("#step-no")).containsText(there);
  }

  private static void forward(Page page) {
    page.locator("#forward").click();
  }

  private List<RecordEntry> entries(String reference) {
    List<RecordEntry> entries =
        new ArrayList<>(
            app.practice()
                .record()
                .record()
                .list(new RecordQuery(reference, null, null, null, null, null, null, 100)));
    entries.sort(java.util.Comparator.comparing(one -> one.use().step().order()));
    return entries;
  }

  /** A while later: what may be taken back for some seconds is sent after them. */
  private static void everythingIsInTheRecord(Page page) {
    page.clock().fastForward(Browser.SENT_MS);
    PlaywrightAssertions.assertThat(page.locator("#link"))
        .containsText("Everything is in the record");
  }

  @Test
  void aWholeCaseIsRunByTheLargeAreasAndEveryStepStandsInTheRecordOnce() {
    long start = System.nanoTime();
    Page page = begun("K-7101", 1180, 820, ColorScheme.LIGHT);
    int steps = steps(page);
    List<String> labels = new ArrayList<>();
    Browser.shoot(page, "journey-04-chair-begun");
    for (int i = 0; i < steps; i++) {
      labels.add(page.locator("#label").innerText());
      forward(page);
      PlaywrightAssertions.assertThat(page.locator("#forward-words")).containsText("Log step");
      page.clock().fastForward(1100);
      if (i == 0) {
        Browser.shoot(page, "journey-04-chair-cutting");
      }
      forward(page);
      PlaywrightAssertions.assertThat(page.locator("#dots button.done")).hasCount(i + 1);
      if (i + 1 < steps) {
        PlaywrightAssertions.assertThat(page.locator("#step-no"))
            .containsText("Step " + (i + 2) + " of");
      }
    }
    forward(page);
    PlaywrightAssertions.assertThat(page.locator("#end")).isVisible();
    Browser.shoot(page, "journey-04-chair-end");
    everythingIsInTheRecord(page);
    double all = (System.nanoTime() - start) / 1e9 + steps * 1.1;
    List<RecordEntry> entries = entries("K-7101");
    assertEquals(steps, entries.size());
    for (int i = 0; i < steps; i++) {
      RecordEntry entry = entries.get(i);
      assertEquals(i + 1, entry.use().step().order());
      assertEquals(labels.get(i), entry.use().instrument().label());
      assertEquals(page.locator("#by").innerText(), entry.use().by());
      Double seconds = entry.use().cut().totalSeconds();
      assertTrue(seconds != null && seconds > 1 && seconds < all, seconds + " of " + all);
      assertTrue(entry.use().cut().mm3ByMaterial().values().stream().allMatch(v -> v > 0));
    }
  }

  private static String handpieceOf(RecordEntry entry) {
    CutUse.Piece piece = entry.use().handpiece();
    return piece == null ? "" : piece.used().label();
  }

  @Test
  void theHandpieceIsChosenByItselfChangedByATapAndStandsInEveryEntry() {
    Page page = begun("K-7115", 1180, 820, ColorScheme.LIGHT);
    List<String> chosen = new ArrayList<>();
    int steps = steps(page);
    for (int i = 0; i < steps; i++) {
      chosen.add(page.locator("#which").innerText());
      assertFalse(chosen.get(i).isEmpty());
      page.locator("#log").click();
      PlaywrightAssertions.assertThat(page.locator("#dots button.done")).hasCount(i + 1);
    }
    forward(page);
    everythingIsInTheRecord(page);
    List<RecordEntry> entries = entries("K-7115");
    assertEquals(chosen, entries.stream().map(ChairsideJourneyTest::handpieceOf).toList());
    chosen.forEach(label -> assertEquals(InstrumentState.USED, state(label), label));
    page.navigate(app.address("/records?instrument=" + chosen.get(0)));
    PlaywrightAssertions.assertThat(page.locator("tbody tr"))
        .hasCount((int) chosen.stream().filter(chosen.get(0)::equals).count());
    PlaywrightAssertions.assertThat(page.locator("tbody tr").first()).containsText(chosen.get(0));
  }

  @Test
  void anotherHandpieceIsOneTapBeforeBeginAndTwoOrAScanDuringTheRun() {
    Page page = browser.page(820, 1180, true, ColorScheme.LIGHT);
    page.navigate(app.address("/chairside?" + example.replaceFirst("K-\\d+", "K-7116")));
    Locator choices = page.locator("fieldset:has(input[name^=handpiece-])").first();
    assertTrue(choices.locator("input").first().isChecked());
    List<String> labels = choices.locator(".pick span").allInnerTexts();
    assertTrue(labels.size() > 2, labels.toString());
    choices.locator(".pick").nth(1).click();
    Browser.shoot(page, "journey-04-chair-handpiece");
    initials(page);
    page.locator("input[name=read]").check();
    page.locator("form.begin button.main").click();
    page.waitForURL("**/chairside/run/*");
    ready(page);
    PlaywrightAssertions.assertThat(page.locator("#which")).hasText(labels.get(1));
    page.locator("#log").click();
    // the next step begins: from now on the first is not taken back, and is sent
    forward(page);
    everythingIsInTheRecord(page);
    toStep(page, 1);
    page.locator("#which").click();
    Browser.shoot(page, "journey-04-chair-handpieces");
    assertEquals("", Browser.barriers(page));
    page.locator("#handpiece-list button").last().click();
    PlaywrightAssertions.assertThat(page.locator("#which")).hasText("not noted");
    page.keyboard().type(labels.get(0));
    page.keyboard().press("Enter");
    PlaywrightAssertions.assertThat(page.locator("#which")).hasText(labels.get(0));
    page.reload();
    ready(page);
    toStep(page, 1);
    PlaywrightAssertions.assertThat(page.locator("#which")).hasText(labels.get(0));
    assertEquals(labels.get(1), handpieceOf(entries("K-7116").get(0)));
    assertEquals(InstrumentState.CLEAN, state(labels.get(0)));
  }

  @Test
  void aReloadInTheMiddleKeepsStepClockAndWhatWasLogged() {
    Page page = begun("K-7102", 820, 1180, ColorScheme.DARK);
    forward(page);
    page.clock().fastForward(600);
    forward(page);
    forward(page);
    page.clock().fastForward(1200);
    page.reload();
    ready(page);
    PlaywrightAssertions.assertThat(page.locator("#step-no")).containsText("Step 2 of");
    PlaywrightAssertions.assertThat(page.locator("#forward-words")).containsText("Log step 2");
    PlaywrightAssertions.assertThat(page.locator("#elapsed")).not().hasText("0:00");
    PlaywrightAssertions.assertThat(page.locator("#dots button.done")).hasCount(1);
    forward(page);
    everythingIsInTheRecord(page);
    assertEquals(2, entries("K-7102").size());
  }

  @Test
  void twoStepsLoggedWithoutConnectionAndReloadedStandInTheRecordExactlyOnce() throws BadInput {
    Page page = begun("K-7103", 1180, 820, ColorScheme.LIGHT);
    page.locator("body[data-kept=yes]").waitFor();
    page.context().setOffline(true);
    // the browser lets a last message out while it unloads a page: the server is really gone
    app.lose();
    for (int i = 0; i < 2; i++) {
      forward(page);
      page.clock().fastForward(300);
      forward(page);
    }
    PlaywrightAssertions.assertThat(page.locator("#link")).containsText("No connection");
    page.reload();
    ready(page);
    PlaywrightAssertions.assertThat(page.locator("#step-no")).containsText("Step 3 of");
    PlaywrightAssertions.assertThat(page.locator("#dots button.done")).hasCount(2);
    Browser.shoot(page, "journey-04-chair-offline");
    assertEquals(List.of(), entries("K-7103"));
    app.regain();
    page.context().setOffline(false);
    everythingIsInTheRecord(page);
    assertEquals(
        List.of(1, 2), entries("K-7103").stream().map(one -> one.use().step().order()).toList());
  }

  @Test
  void whatIsSentTwiceIsWrittenOnce() {
    Page page = begun("K-7104", 1180, 820, ColorScheme.LIGHT);
    // the answer to the first sending gets lost on its way back
    page.evaluate(
        "() => { const real = window.fetch; window.regain = () => { window.fetch = real; };"
            + " window.fetch = async (...call) => { await real(...call); throw new TypeError(); };"
            + " }");
    forward(page);
    page.clock().fastForward(300);
    forward(page);
    forward(page);
    PlaywrightAssertions.assertThat(page.locator("#link")).containsText("No connection");
    assertEquals(1, entries("K-7104").size());
    page.evaluate("() => window.regain()");
    everythingIsInTheRecord(page);
    assertEquals(1, entries("K-7104").size());
  }

  @Test
  void aStepLoggedByMistakeIsTakenBackBeforeItReachesTheRecord() {
    Page page = begun("K-7105", 1180, 820, ColorScheme.LIGHT);
    // however slow the machine is, the hand is quick enough
    page.clock().setFixedTime(new java.util.Date());
    page.locator("#log").click();
    page.locator("#undo").click();
    PlaywrightAssertions.assertThat(page.locator("#step-no")).containsText("Step 1 of");
    everythingIsInTheRecord(page);
    assertEquals(List.of(), entries("K-7105"));
  }

  @Test
  void aSwapPlansTheRestAgainWithoutTheInstrumentThatIsGone() {
    Page page = begun("K-7106", 1180, 820, ColorScheme.LIGHT);
    String gone = page.locator("#label").innerText();
    page.locator("#open-swap").click();
    Locator choice = page.locator(".swap-choice").last();
    String other = choice.locator("b").innerText();
    Browser.shoot(page, "journey-04-chair-swap");
    assertEquals("", Browser.barriers(page));
    choice.click();
    PlaywrightAssertions.assertThat(page.locator("#swap-fault")).containsText("why it is swapped");
    why(page, "broken");
    choice.click();
    PlaywrightAssertions.assertThat(page.locator("#swap-fault")).containsText("all pieces");
    page.locator("#pieces .pick").last().click();
    choice.click();
    PlaywrightAssertions.assertThat(page.locator("#label")).containsText(other);
    PlaywrightAssertions.assertThat(page.locator("#alarm")).containsText("Pieces of " + gone);
    page.locator("#alarm-close").click();
    int steps = steps(page);
    for (int i = 1; i <= steps; i++) {
      assertNotEquals(gone, page.locator("#label").innerText(), "step " + i);
      if (i < steps) {
        page.locator("#log").click();
        PlaywrightAssertions.assertThat(page.locator("#dots button.done")).hasCount(i);
      }
    }
    forward(page);
    everythingIsInTheRecord(page);
    assertEquals(InstrumentState.WITHDRAWN, state(gone));
    assertEquals(List.of(RunEvent.What.PIECES_MISSING), events("K-7106"));
    assertEquals(other, entries("K-7106").get(0).use().instrument().label());
    page.reload();
    ready(page);
    toStep(page, 1);
    PlaywrightAssertions.assertThat(page.locator("#label")).containsText(other);
  }

  @Test
  void aSwapWithoutConnectionGoesOnAndIsPlannedAgainWithIt() {
    Page page = begun("K-7107", 1180, 820, ColorScheme.LIGHT);
    page.context().setOffline(true);
    page.locator("#open-swap").click();
    Locator choice = page.locator(".swap-choice").first();
    String other = choice.locator("b").innerText();
    why(page, "dropped");
    choice.click();
    PlaywrightAssertions.assertThat(page.locator("#label")).containsText(other);
    PlaywrightAssertions.assertThat(page.locator("#step-cautions"))
        .containsText("Swapped without connection");
    page.locator("#log").click();
    page.context().setOffline(false);
    everythingIsInTheRecord(page);
    toStep(page, 1);
    PlaywrightAssertions.assertThat(page.locator("#step-cautions"))
        .not()
        .containsText("Swapped without connection");
    assertEquals(other, entries("K-7107").get(0).use().instrument().label());
  }

  private static void why(Page page, String why) {
    page.locator(".pick:has(input[name=why][value='" + why + "'])").click();
  }

  private InstrumentState state(String label) {
    return app.practice().service().drawer().list(DrawerQuery.all(500)).items().stream()
        .filter(item -> item.label().equals(label))
        .findFirst()
        .orElseThrow()
        .state();
  }

  private List<RunEvent.What> events(String reference) {
    return app.practice().runs().newest(50).stream()
        .filter(run -> run.caseReference().equals(reference))
        .flatMap(run -> app.practice().runs().events(run.id()).stream())
        .map(RunEvent::what)
        .toList();
  }

  @Test
  void aDroppedOneIsUsedAndOneThatIsNotThereGoesToQuarantine() {
    for (String why : List.of("dropped", "not-here", "blunt")) {
      Page page = begun("K-7201-" + why, 820, 1180, ColorScheme.LIGHT);
      String gone = page.locator("#label").innerText();
      page.locator("#open-swap").click();
      why(page, why);
      page.locator(".swap-choice").first().click();
      PlaywrightAssertions.assertThat(page.locator("#label")).not().containsText(gone);
      everythingIsInTheRecord(page);
      PlaywrightAssertions.assertThat(page.locator("#told")).containsText("planned again");
      page.waitForCondition(() -> !events("K-7201-" + why).isEmpty());
      InstrumentState expected =
          switch (why) {
            case "dropped" -> InstrumentState.USED;
            case "blunt" -> InstrumentState.WITHDRAWN;
            default -> InstrumentState.QUARANTINE;
          };
      assertEquals(expected, state(gone), gone + " " + why);
      page.context().close();
    }
  }

  @Test
  void aLayerSeenEarlyPlansTheRestAnew() {
    Page page = begun("K-7202", 820, 1180, ColorScheme.LIGHT);
    forward(page);
    page.locator("[data-opens=differs]").click();
    page.locator("[data-branch=seen]").click();
    Browser.shoot(page, "journey-04-chair-differs");
    assertEquals("", Browser.barriers(page));
    page.locator("#branch-seen button.main").click();
    PlaywrightAssertions.assertThat(page.locator("#seen-fault")).containsText("depth in mm");
    String planned = page.locator("#borders .pick").first().innerText();
    page.locator("#borders .pick").first().click();
    page.locator("#seen-mm").fill("0,7");
    page.locator("#branch-seen button.main").click();
    PlaywrightAssertions.assertThat(page.locator("#told")).containsText("from what you saw");
    page.locator("[data-opens=differs]").click();
    page.locator("[data-branch=seen]").click();
    String now = page.locator("#borders .pick").first().innerText();
    assertNotEquals(planned, now);
    assertTrue(now.contains("0.70 mm") || now.contains("0.7 mm"), now);
    page.waitForCondition(() -> !events("K-7202").isEmpty());
    assertEquals(List.of(RunEvent.What.SEEN), events("K-7202"));
  }

  @Test
  void aPerforationStopsTheClockTellsWhatToDoAndIsWrittenDown() {
    Page page = begun("K-7203", 390, 844, ColorScheme.LIGHT);
    forward(page);
    page.locator("[data-opens=differs]").click();
    page.locator("[data-branch=perforation]").click();
    PlaywrightAssertions.assertThat(page.locator("#branch-perforation"))
        .containsText("force no irrigant");
    Browser.shoot(page, "journey-04-chair-perforation");
    page.locator("[data-event=perforation]").click();
    PlaywrightAssertions.assertThat(page.locator("#forward-words")).containsText("Begin");
    page.waitForCondition(() -> !events("K-7203").isEmpty());
    assertEquals(List.of(RunEvent.What.PERFORATION), events("K-7203"));
  }

  @Test
  void aFinishedRunOpensAsFinishedOnAnotherDevice() {
    Page page = begun("K-7204", 1180, 820, ColorScheme.LIGHT);
    int steps = steps(page);
    for (int i = 0; i < steps; i++) {
      page.locator("#log").click();
      PlaywrightAssertions.assertThat(page.locator("#dots button.done")).hasCount(i + 1);
    }
    forward(page);
    everythingIsInTheRecord(page);
    Page other = browser.page(390, 844, true, ColorScheme.LIGHT);
    other.navigate(page.url());
    ready(other);
    PlaywrightAssertions.assertThat(other.locator("#end")).isVisible();
    PlaywrightAssertions.assertThat(other.locator("#dots button.done")).hasCount(steps);
  }

  @Test
  void aFootSwitchAndTheKeyboardRunItAlone() {
    Page page = begun("K-7108", 1180, 820, ColorScheme.LIGHT);
    page.keyboard().press("PageDown");
    PlaywrightAssertions.assertThat(page.locator("#forward-words")).containsText("Log step 1");
    page.keyboard().press("PageUp");
    PlaywrightAssertions.assertThat(page.locator("#forward-words")).containsText("Begin");
    page.keyboard().press("Space");
    page.keyboard().press("Enter");
    PlaywrightAssertions.assertThat(page.locator("#step-no")).containsText("Step 2 of");
    page.keyboard().press("ArrowRight");
    page.keyboard().press("PageDown");
    PlaywrightAssertions.assertThat(page.locator("#step-no")).containsText("Step 3 of");
    page.keyboard().press("ArrowLeft");
    PlaywrightAssertions.assertThat(page.locator("#step-no")).containsText("Step 2 of");
  }

  @Test
  void aScannedLabelMovesOnWhenItIsTheNextOneAndWarnsWhenItIsNot() {
    Page page = begun("K-7109", 1180, 820, ColorScheme.LIGHT);
    page.keyboard().type("ZZ99");
    page.keyboard().press("Enter");
    PlaywrightAssertions.assertThat(page.locator("#alarm")).containsText("ZZ99 was scanned");
    Browser.shoot(page, "journey-04-chair-wrong-scan");
    page.locator("#alarm-close").click();
    forward(page);
    String second =
        (String) page.evaluate("JSON.parse(document.getElementById('sheet').value).steps[1].label");
    String code =
        app.practice().service().drawer().in(InstrumentState.CLEAN).stream()
            .filter(item -> item.label().equals(second))
            .map(item -> new OwnCode(OwnCode.Kind.INSTRUMENT, item.id()).text())
            .findFirst()
            .orElse(second);
    page.keyboard().type(code);
    page.keyboard().press("Enter");
    PlaywrightAssertions.assertThat(page.locator("#step-no")).containsText("Step 2 of");
    PlaywrightAssertions.assertThat(page.locator("#dots button.done")).hasCount(1);
  }

  @Test
  void theEndOfTheBandCallsForAChange() {
    Page page = begun("K-7110", 1180, 820, ColorScheme.DARK);
    forward(page);
    PlaywrightAssertions.assertThat(page.locator("#change")).isHidden();
    // the end of the band of a slow step is hours away
    page.clock().fastForward(6 * 3_600_000);
    PlaywrightAssertions.assertThat(page.locator("#change")).isVisible();
    PlaywrightAssertions.assertThat(page.locator("#where")).containsText("longer than planned");
    Browser.shoot(page, "journey-04-chair-change-now");
    assertEquals("", Browser.barriers(page));
  }

  @Test
  void figuresCanBeReadFromAnArmsLengthAndMore() {
    for (int[] size : List.of(new int[] {1180, 820}, new int[] {820, 1180})) {
      Page page = begun(browser.exactly(size[0], size[1], true, ColorScheme.LIGHT), "K-7111");
      for (String id : List.of("scales", "water", "depth", "time", "elapsed", "rpm", "label")) {
        double font =
            ((Number)
                    page.evaluate(
                        "id => parseFloat(getComputedStyle(document.getElementById(id)).fontSize)",
                        id))
                .doubleValue();
        // digits of the fonts used are at least 0.72 of the size
        assertTrue(0.72 * font >= 0.022 * size[1], id + " " + font + " on " + size[1]);
      }
      assertEquals("", Browser.barriers(page));
      assertEquals(
          0,
          ((Number)
                  page.evaluate(
                      "document.documentElement.scrollWidth -"
                          + " document.documentElement.clientWidth"))
              .intValue());
      page.context().close();
    }
  }

  @Test
  void theEndCueIsTheSecondLargestAndTheDepthReachedMovesThroughTheLayers() {
    for (int[] size :
        List.of(new int[] {1280, 900}, new int[] {1180, 820}, new int[] {820, 1180})) {
      Page page = begun(browser.exactly(size[0], size[1], true, ColorScheme.LIGHT), "K-7113");
      assertTrue(font(page, "label") > font(page, "cue"));
      for (String id : List.of("rpm", "step-what", "depth", "water", "elapsed", "stop-if")) {
        assertTrue(font(page, "cue") > font(page, id), id);
      }
      assertTrue(left(page, "stack") < left(page, "label") + 1, "the layers stand at the left");
      page.context().close();
    }
    Page page = begun("K-7113", 1180, 820, ColorScheme.LIGHT);
    String before = page.locator("#reached").getAttribute("d");
    forward(page);
    page.clock().fastForward(6 * 3_600_000);
    PlaywrightAssertions.assertThat(page.locator("#reached")).not().hasAttribute("d", before);
  }

  @Test
  void aPhoneAlwaysShowsCueDepthWaterAndTheOneTapLog() {
    for (int[] size : List.of(new int[] {390, 844}, new int[] {844, 390})) {
      Page page = begun(browser.exactly(size[0], size[1], true, ColorScheme.LIGHT), "K-7114");
      double ends =
          page.locator("#stage-step").boundingBox().y
              + page.locator("#stage-step").boundingBox().height;
      for (String id : List.of("cue", "depth", "water")) {
        var box = page.locator("#" + id).boundingBox();
        assertTrue(box.y + box.height <= ends + 1, id + " on " + size[0] + " ends below " + ends);
      }
      for (String id : List.of("log", "forward")) {
        var box = page.locator("#" + id).boundingBox();
        assertTrue(box.y + box.height <= size[1] + 1, id + " on " + size[0]);
      }
      page.context().close();
    }
  }

  private static double font(Page page, String id) {
    return ((Number)
            page.evaluate(
                "id => parseFloat(getComputedStyle(document.getElementById(id)).fontSize)", id))
        .doubleValue();
  }

  private static double left(Page page, String id) {
    return page.locator("#" + id).boundingBox().x;
  }

  @Test
  void nothingBeginsBeforeTheCautionsAreReadAndARefusedPlanIsNotRun() throws Exception {
    Page page = browser.page();
    String query = example;
    page.navigate(app.address("/chairside?" + query));
    assertEquals("", Browser.barriers(page));
    page.evaluate("document.querySelectorAll('[required]').forEach(o => o.required = false)");
    initials(page);
    page.locator("form.begin button.main").click();
    PlaywrightAssertions.assertThat(page.locator("#fault")).containsText("read the cautions");
    String dry = query.replaceFirst("coolant_ml_per_min=\\d+", "coolant_ml_per_min=0");
    page.navigate(app.address("/chairside?" + dry));
    PlaywrightAssertions.assertThat(page.locator("main")).containsText("cannot be run");
    assertFalse(page.locator("form.begin").isVisible());
    int before = app.practice().runs().newest(100).size();
    page.request()
        .post(
            app.address("/chairside"),
            com.microsoft.playwright.options.RequestOptions.create()
                .setHeader("Origin", app.address("").replaceAll("/$", ""))
                .setForm(
                    com.microsoft.playwright.options.FormData.create()
                        .set("query", dry)
                        .set("by", "AB")
                        .set("read", "1")));
    assertEquals(before, app.practice().runs().newest(100).size());
  }

  @Test
  void runsCanBeGoneOnWith() {
    begun("K-7112", 1180, 820, ColorScheme.LIGHT).context().close();
    Page page = browser.page();
    page.navigate(app.address("/chairside"));
    PlaywrightAssertions.assertThat(page.locator("main")).containsText("K-7112");
    assertEquals("", Browser.barriers(page));
    page.locator("a[href^='/chairside/run/']").first().click();
    ready(page);
    assertTrue(steps(page) > 1);
  }
}
