package kerfwright.app.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Cookie;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import kerfwright.app.security.OneTimeCodes;
import kerfwright.practice.people.Role;
import org.junit.jupiter.api.Test;

/**
 * Switching on the code of an app by the drawn code alone, as a phone does, signing in with it and
 * with a recovery code, and coming to a colleague's device; in both languages.
 */
class CodeJourneyTest {
  private static final Pattern ADDRESS =
      Pattern.compile("otpauth://totp/Kerfwright:(\\w+)\\?secret=([A-Z2-7]{32})&issuer=Kerfwright");

  @Test
  void switchedOnAndSignedInWith() throws Exception {
    try (Browser browser = Browser.start();
        Staffed practice = new Staffed()) {
      go(browser, practice, Locale.ENGLISH, Role.CLINICIAN);
    }
  }

  @Test
  void onAPhoneInGerman() throws Exception {
    try (Browser browser = Browser.start();
        Staffed practice = new Staffed()) {
      go(browser, practice, Locale.GERMAN, Role.ASSISTANT);
    }
  }

  private static void go(Browser browser, Staffed practice, Locale language, Role role)
      throws Exception {
    boolean german = language == Locale.GERMAN;
    String initials = practice.account(role).initials();
    Page page =
        german
            ? browser.page(390, 844, true, ColorScheme.DARK)
            : browser.page(820, 1180, true, ColorScheme.LIGHT);
    page.setExtraHTTPHeaders(Map.of("Accept-Language", language.getLanguage()));
    String name = "code-" + language + "-";
    signIn(page, practice, initials);
    page.locator("a[href='/account']").first().click();
    look(page, name + "account");
    page.locator("a[href='/account/code']").click();
    look(page, name + "off");
    page.locator("form[action='/account/code/begin'] button").click();
    look(page, name + "begun");
    Matcher read = ADDRESS.matcher(read(page.locator("svg.qr").screenshot()));
    assertTrue(read.matches());
    assertEquals(initials, read.group(1));
    String secret = read.group(2);
    assertThat(page.locator(".secret")).hasText(secret.replaceAll("(.{4})(?=.)", "$1 "));
    String first = OneTimeCodes.at(secret, Instant.now());
    page.locator("[name=code]").fill(first);
    page.locator("form[action='/account/code/on'] button").click();
    look(page, name + "recovery");
    List<String> recovery = page.locator(".codes li").allTextContents();
    assertEquals(10, recovery.size());
    page.locator("a.main[href='/account']").click();
    page.locator("a[href='/account/code']").click();
    look(page, name + "on");
    signOut(page, practice);

    signIn(page, practice, initials);
    look(page, name + "asked");
    page.locator("[name=code]").first().fill(first);
    page.locator("form[action='/sign-in'] button").first().click();
    look(page, name + "used");
    assertThat(page.locator("[role=alert]")).isVisible();
    page.locator("[name=code]")
        .first()
        .fill(OneTimeCodes.at(secret, Instant.now().plusSeconds(30)));
    page.locator("form[action='/sign-in'] button").first().click();
    assertThat(page.locator("a[href='/account']").first()).hasText(initials);
    signOut(page, practice);

    signIn(page, practice, initials);
    page.locator("summary").last().click();
    look(page, name + "lost");
    page.locator("details [name=code]").fill(recovery.get(4));
    page.locator("details button").click();
    assertThat(page.locator("a[href='/account']").first()).hasText(initials);

    // at the device of a colleague
    String[] parts = practice.device(Role.OWNER).split("=", 2);
    page.context()
        .addCookies(List.of(new Cookie(parts[0], parts[1]).setUrl(practice.app.address("/"))));
    page.navigate(practice.app.address("/switch"));
    look(page, name + "switch");
    page.locator(".people button", new Page.LocatorOptions().setHasText(initials)).click();
    look(page, name + "whole");
    page.locator("[name=password]").fill(Staffed.PASSWORD);
    page.locator("[name=code]").fill(recovery.get(5));
    page.locator("form[action='/switch'] button.main").click();
    assertThat(page.locator("a[href='/account']").first()).hasText(initials);
    assertEquals(
        List.of(), browser.complaints().stream().filter(one -> !one.contains("401")).toList());
  }

  private static void signIn(Page page, Staffed practice, String initials) {
    page.navigate(practice.app.address("/sign-in"));
    page.locator("[name=initials]").fill(initials);
    page.locator("[name=password]").fill(Staffed.PASSWORD);
    page.locator("form[action='/sign-in'] button").click();
  }

  private static void signOut(Page page, Staffed practice) {
    page.navigate(practice.app.address("/sign-out"));
    page.locator("form[action='/sign-out'] button").click();
    page.waitForURL("**/sign-in");
  }

  private static void look(Page page, String name) {
    assertEquals("", Browser.barriers(page), name);
    assertEquals("", Browser.over(page), name);
    Browser.shoot(page, name);
  }

  /** By a library that did not draw it. */
  private static String read(byte[] picture) throws Exception {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture));
    int wide = image.getWidth();
    int high = image.getHeight();
    int[] pixels = image.getRGB(0, 0, wide, high, null, 0, wide);
    return new QRCodeReader()
        .decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(wide, high, pixels))))
        .getText();
  }
}
