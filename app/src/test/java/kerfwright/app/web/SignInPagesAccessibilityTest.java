package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Cookie;
import java.util.List;
import java.util.Map;
import kerfwright.app.security.Doors;
import kerfwright.practice.people.Role;
import org.junit.jupiter.api.Test;

/** The pages around the sign-in, in both languages and widths: no barrier, nothing sideways. */
class SignInPagesAccessibilityTest {
  @Test
  void areFreeOfBarriersAndFitAPhone() throws Exception {
    try (Browser browser = Browser.start();
        Staffed practice = new Staffed()) {
      String owner = practice.device(Role.OWNER);
      String locked = practice.device(Role.CLINICIAN);
      practice.post(locked, "/lock");
      for (String path :
          List.of("/", "/people", "/trail", "/confirm", "/account", "/sign-out", "/sign-in")) {
        look(browser, practice.app, owner, path);
      }
      look(browser, practice.app, locked, "/locked");
      String assistant = practice.device(Role.ASSISTANT);
      String person = practice.account(Role.CLINICIAN).id().toString();
      look(browser, practice.app, assistant, "/switch");
      look(browser, practice.app, assistant, "/switch/" + person);
    }
    try (Browser browser = Browser.start();
        Served app = new Served(false, Doors.here(Staffed.START), "CODE")) {
      look(browser, app, "kerfwright-start=" + Staffed.START, "/first");
      look(browser, app, "a=b", "/");
    }
  }

  private static void look(Browser browser, Served app, String cookie, String path) {
    String name = "signin-" + path.replaceAll("[^a-z]+", "") + (cookie.equals("a=b") ? "no" : "");
    for (Map.Entry<String, Integer> one : Map.of("en", 1280, "de", 390).entrySet()) {
      boolean german = one.getKey().equals("de");
      Page page =
          browser.page(
              one.getValue(),
              german ? 844 : 900,
              true,
              german ? ColorScheme.DARK : ColorScheme.LIGHT);
      String[] parts = cookie.split("=", 2);
      page.context().addCookies(List.of(new Cookie(parts[0], parts[1]).setUrl(app.address("/"))));
      page.setExtraHTTPHeaders(Map.of("Accept-Language", one.getKey()));
      page.navigate(app.address(path));
      assertEquals("", Browser.barriers(page), path + " " + one);
      assertEquals("", Browser.over(page), path + " " + one);
      Browser.shoot(page, name + "-" + one.getKey());
      page.context().close();
    }
  }
}
