package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.util.Map;
import kerfwright.app.learner.LearnerPages;
import kerfwright.practice.teaching.Given;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A learner chooses, answers and is told why; a teacher leads a class on its phones. */
@Tag("journey")
class LearnJourneyTest {
  private static Served app;
  private static Browser browser;

  @BeforeAll
  static void start() throws Exception {
    browser = Browser.start();
    app = new Served();
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

  private static Page page(int width, int height) {
    return browser.page(width, height, true, ColorScheme.LIGHT);
  }

  @Test
  void aChoiceIsComputedBesideThePlan() {
    Page page = page(1280, 900);
    page.navigate(app.address("/learn"));
    page.click("a[href='/learn/choose']");
    page.click("a[href='/learn/choose/K-0412']");
    assertEquals(0, page.locator("#result").count(), "the plan is hidden");
    assertFalse(page.locator("main").innerText().contains("109"), "and so is its speed");
    page.selectOption("#instrument2", "D22");
    page.selectOption("#handpiece2", "electric-1to5");
    page.fill("#rpm2", "180 000");
    page.click("text=Compute my choice");
    Locator result = page.locator("#result");
    PlaywrightAssertions.assertThat(result).containsText("Breaks a rule");
    PlaywrightAssertions.assertThat(result).containsText("metal clogs the grains");
    PlaywrightAssertions.assertThat(result).containsText("at most 1.5 times");
    assertEquals("D22", page.inputValue("#instrument2"));
    Browser.shoot(page, "journey-11-learn-choice");
    page.fill("#rpm2", "quick");
    page.click("text=Compute my choice");
    PlaywrightAssertions.assertThat(page.locator(".fault[role=alert]"))
        .containsText("Give the speed");
    assertEquals("quick", page.inputValue("#rpm2"));
    page.context().close();
  }

  /** Opening a case plans it first; a tap that takes a while says so until the page is there. */
  @Test
  void whatTakesAWhileSaysSo() {
    Page page = page(390, 844);
    page.navigate(app.address("/learn/choose"));
    // the page stays, so that what is said can be seen
    page.evaluate("() => document.addEventListener('click', (e) => e.preventDefault(), true)");
    page.click("a[href='/learn/choose/K-0420']");
    PlaywrightAssertions.assertThat(page.locator(".busy[role=status]")).hasText("Computing …");
    assertEquals("", Browser.barriers(page));
    page.context().close();
  }

  @Test
  void everyMistakeIsRefusedAndComputed() throws Exception {
    Map<String, String> says =
        Map.of(
            "carbide-through-ceramic", "the ceramic chips",
            "diamond-through-metal", "metal clogs",
            "many-blades-for-bulk", "too few or too many blades",
            "dry-on-vital", "a living tooth dry",
            "diamond-on-adhesive", "scratch the enamel",
            "with-rotation-in-a-slot", "both walls of a slot");
    for (Map.Entry<String, String> one : says.entrySet()) {
      String to =
          app.get("/learn/mistake/" + one.getKey()).headers().firstValue("Location").orElseThrow();
      String page = app.get(to.replace("#result", "")).body();
      assertTrue(page.contains("Breaks a rule"), one.getKey());
      assertTrue(page.contains(one.getValue()), one.getKey());
      assertTrue(page.contains("Time with pauses"), one.getKey() + " is computed");
      assertTrue(page.contains("<aside class=\"cautions\">"), one.getKey());
    }
    String dry = app.get("/learn/mistake/dry-on-vital").headers().firstValue("Location").get();
    String heat = app.get(dry.replace("#result", "")).body();
    assertTrue(heat.contains("No figure is given for dry cutting"));
    assertFalse(
        heat.replaceAll("(?s)<article.*?<h3>Heat|<aside.*", "").matches("(?s).*\\d K\\b.*"));
  }

  @Test
  void aSetIsAnsweredWithTheReasonAtOnceAndKeptUnderAnAlias() throws Exception {
    Page page = page(390, 844);
    page.navigate(app.address("/learn/sets"));
    page.fill("#alias", "Anna Schmidt".substring(0, 12));
    page.fill("#count", "3");
    page.click("text=Begin");
    PlaywrightAssertions.assertThat(page.locator(".summary")).containsText("without a space");
    page.fill("#alias", "blue-7");
    page.fill("#count", "3");
    page.fill("#seed", "7");
    page.click("text=Begin");
    for (int i = 1; i <= 3; i++) {
      PlaywrightAssertions.assertThat(page.locator("h1")).hasText("Question " + i + " of 3");
      assertTrue(page.locator("button.answer").first().boundingBox().height >= 48);
      page.locator("button.answer").nth(i % 4).click();
      PlaywrightAssertions.assertThat(page.locator("[role=status] h2")).containsText("is ");
      assertEquals(1, page.locator("li.answer.right").count());
      Browser.shoot(page, "journey-11-learn-question-" + i);
      assertEquals("", Browser.over(page));
      page.locator("a.button.main").click();
    }
    PlaywrightAssertions.assertThat(page.locator(".lead")).containsText("of 3 right");
    Browser.shoot(page, "journey-11-learn-result");
    page.navigate(app.address("/learn/progress?alias=blue-7"));
    PlaywrightAssertions.assertThat(page.locator("main")).containsText("By topic");
    assertEquals(3, app.practice().lessons().answers("blue-7").size());
    String csv = app.get("/learn/answers.csv?alias=blue-7").body();
    assertEquals(4, csv.lines().count(), csv);
    assertTrue(csv.startsWith("alias,set,time,number,topic,kind,answer,right"), csv);
    page.click("text=Delete these answers");
    page.click("text=Yes, delete");
    assertEquals(0, app.practice().lessons().answers("blue-7").size());
    page.context().close();
  }

  @Test
  void anOwnQuestionIsWrittenChangedAndDeletedAfterAsking() {
    Page page = page(1280, 900);
    page.navigate(app.address("/learn/questions"));
    page.fill("#text", "Which handpiece do we keep for ceramic?");
    for (int i = 0; i < 4; i++) {
      page.fill("#answer" + i, "the one " + (i == 3 ? 2 : i));
    }
    page.click("button:has-text('Save')");
    PlaywrightAssertions.assertThat(page.locator(".summary"))
        .containsText("Two answers are the same");
    assertEquals("the one 0", page.inputValue("#answer0"));
    page.fill("#answer3", "the one 3");
    page.click("button:has-text('Save')");
    page.click("text=Which handpiece do we keep");
    page.fill("#why", "It has the torque.");
    page.click("button:has-text('Save')");
    assertEquals("It has the torque.", app.practice().lessons().questions().get(0).why());
    page.click("text=Which handpiece do we keep");
    page.click("a:has-text('Delete')");
    page.click("text=No, keep");
    assertEquals(1, app.practice().lessons().questions().size());
    page.click("a:has-text('Delete')");
    page.click("text=Yes, delete");
    PlaywrightAssertions.assertThat(page.locator("main")).containsText("None yet");
    page.context().close();
  }

  @Test
  void aClassAnswersOnItsPhones() {
    Assumptions.assumeTrue(LearnerPages.networkAddress().isPresent(), "on no network");
    Page teacher = page(1280, 900);
    teacher.navigate(app.address("/learn/sets"));
    teacher.fill("#count", "1");
    teacher.fill("#seed", "11");
    teacher.click("text=With a class");
    teacher.click("text=Open the class");
    Browser.shoot(teacher, "journey-11-learn-class-join");
    assertEquals("", Browser.barriers(teacher));
    Page phone = page(390, 844);
    phone.setExtraHTTPHeaders(Map.of("Accept-Language", "de"));
    phone.navigate(teacher.locator(".class-url").innerText());
    Browser.shoot(phone, "journey-11-learn-phone-join");
    phone.fill("#alias", "rot-5");
    phone.click("button");
    PlaywrightAssertions.assertThat(teacher.locator(".class-count")).containsText("1 joined");
    teacher.click("text=First question");
    PlaywrightAssertions.assertThat(phone.locator("h1")).hasText("Frage 1 von 1");
    assertEquals("", Browser.barriers(phone));
    assertEquals("", Browser.over(phone));
    Browser.shoot(phone, "journey-11-learn-phone-question");
    phone.locator("button.answer").nth(2).click();
    PlaywrightAssertions.assertThat(phone.locator("[role=status]"))
        .containsText("Antwort angekommen");
    PlaywrightAssertions.assertThat(teacher.locator(".class-count")).containsText("1 answered");
    Browser.shoot(teacher, "journey-11-learn-class-question");
    teacher.click("text=Show the answer");
    PlaywrightAssertions.assertThat(phone.locator("li.answer.right")).hasCount(1);
    Browser.shoot(phone, "journey-11-learn-phone-shown");
    Browser.shoot(teacher, "journey-11-learn-class-shown");
    teacher.click("text=To the end");
    PlaywrightAssertions.assertThat(phone.locator("h1")).containsText("letzte Frage");
    Given given = app.practice().lessons().answers("rot-5").get(0);
    assertEquals(2, given.option());
    teacher.click("text=End the class");
    teacher.click("text=Yes, end it");
    PlaywrightAssertions.assertThat(teacher.locator("h1")).hasText("Learn");
    teacher.context().close();
    phone.context().close();
  }
}
