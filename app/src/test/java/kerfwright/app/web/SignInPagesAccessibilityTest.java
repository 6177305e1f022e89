package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Cookie;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.app.Thorough;
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
          Thorough.of(
              List.of("/confirm", "/people", "/trail", "/", "/account", "/sign-out", "/sign-in"),
              3)) {
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

  private static final List<String> MENU =
      List.of(
          "/",
          "/people",
          "/day",
          "/cases",
          "/chairside",
          "/drawer",
          "/reprocessing",
          "/records",
          "/restock",
          "/reference",
          "/teach",
          "/settings");

  /** How many lines the links of the top take. */
  private static final String LINES =
      "new Set([...document.querySelectorAll('.top nav a')].map(link => link.offsetTop)).size";

  /** Links of the top that do not show whole. */
  private static final String CUT =
      """
      () => {
        const cut = [];
        const nav = document.querySelector('.top nav');
        const room = nav.getBoundingClientRect();
        for (const link of nav.querySelectorAll('a')) {
          const box = link.getBoundingClientRect();
          if (box.right > Math.min(room.right, innerWidth) + 1 || link.scrollWidth > link.clientWidth + 1) {
            cut.push(link.textContent);
          }
        }
        return cut.join('; ');
      }
      """;

  @Test
  void noLabelOfAMenuIsCutOnATablet() throws Exception {
    List<String> cut = new ArrayList<>();
    try (Browser browser = Browser.start();
        Staffed practice = new Staffed()) {
      for (Role role : Thorough.of(List.of(Role.values()), 4)) {
        String[] cookie = practice.device(role).split("=", 2);
        for (String language : List.of("en", "de")) {
          for (int width : List.of(820, 1180)) {
            Page page = browser.exactly(width, width == 820 ? 1180 : 820, true, ColorScheme.LIGHT);
            page.context()
                .addCookies(
                    List.of(new Cookie(cookie[0], cookie[1]).setUrl(practice.app.address("/"))));
            page.setExtraHTTPHeaders(Map.of("Accept-Language", language));
            for (String path : role == Role.OWNER ? List.of("/", "/people") : List.of("/")) {
              page.navigate(practice.app.address(path));
              assertEquals(language, page.locator("html").getAttribute("lang"));
              String told = page.evaluate(CUT) + Browser.cutChoices(page);
              if (!told.isEmpty()) {
                cut.add(String.join(" ", role.id(), language, path, width + ":", told));
              }
              Browser.shoot(page, "menus-" + role.id() + path.replace('/', '-') + language + width);
            }
            page.context().close();
          }
        }
      }
    }
    assertEquals("", String.join("\n", cut));
  }

  @Test
  void theMenuOfTheOwnerStaysInOneLineOnALyingTablet() throws Exception {
    try (Browser browser = Browser.start();
        Staffed practice = new Staffed()) {
      String[] cookie = practice.device(Role.OWNER).split("=", 2);
      Page page = browser.exactly(1180, 820, true, ColorScheme.LIGHT);
      page.context()
          .addCookies(List.of(new Cookie(cookie[0], cookie[1]).setUrl(practice.app.address("/"))));
      page.setExtraHTTPHeaders(Map.of("Accept-Language", "de"));
      for (String path : MENU) {
        page.navigate(practice.app.address(path));
        assertEquals(1, page.evaluate(LINES), path);
        assertEquals(0, page.locator(".top #lock").boundingBox().y, 20, path + ": in the same");
      }
      for (int width : List.of(1056, 1080, 1112, 1150, 1171, 1172)) {
        page.setViewportSize(width, 820);
        assertEquals(1, page.evaluate(LINES), "lines at " + width);
        assertEquals("", page.evaluate(CUT), "at " + width);
        Browser.shoot(page, "menu-de-" + width);
      }
      page.context().close();
    }
  }

  private static void look(Browser browser, Served app, String cookie, String path) {
    String name = "signin-" + path.replaceAll("[^a-z]+", "") + (cookie.equals("a=b") ? "no" : "");
    for (Map.Entry<String, Integer> one : Map.of("en", 1280, "de", 390).entrySet()) {
      boolean german = one.getKey().equals("de");
      Page page =
          browser.exactly(
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
