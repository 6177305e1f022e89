package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.javalin.router.ParsedEndpoint;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Whatever is sent to whichever route, no answer is a fault of the program. */
@Timeout(value = 6, unit = TimeUnit.MINUTES)
class HostileFormsTest {
  private static final List<String> VALUES =
      List.of(
          "",
          " ",
          "x",
          "0",
          "-1",
          "99",
          "1e999",
          "99999999999999999999",
          "NaN",
          "1,5",
          "\u0000",
          "a\u0000b\u001b[2J",
          "Ö\uFFFF\u202E",
          "16x",
          "1.6",
          "2026-13-45",
          "9999-12-31",
          "25:99",
          "23:59",
          "%",
          "' OR 1=1 --",
          "<script>alert(1)</script>",
          "x".repeat(5000),
          "01a229ca-6970-7000-9674-7a10e43e9021",
          "\uD83D\uDE00".repeat(40));

  private static Served app;

  @BeforeAll
  static void start() throws Exception {
    app = new Served();
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  private static HttpResponse<String> send(String method, String path, String type, String body)
      throws IOException, InterruptedException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(app.address(path)))
            .header("Origin", app.address("").replaceAll("/$", ""))
            .timeout(java.time.Duration.ofSeconds(60));
    if (!type.isEmpty()) {
      request.header("Content-Type", type);
    }
    return app.send(request.method(method, BodyPublishers.ofString(body)).build());
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  /** All routes with a method, a name in a path filled with something. */
  private static List<String[]> routes(String method) {
    List<String[]> routes = new ArrayList<>();
    for (ParsedEndpoint parsed : app.server().unsafe.internalRouter.allHttpHandlers()) {
      if (parsed.endpoint.method.name().equals(method)) {
        routes.add(new String[] {method, parsed.endpoint.path});
      }
    }
    return routes;
  }

  private static final Pattern NAME = Pattern.compile("name=\"([\\w.:-]{1,40})\"");

  /** Names of fields that the pages show, besides those only scripts send. */
  private static Set<String> fields() throws Exception {
    Set<String> names = new LinkedHashSet<>();
    for (String[] route : routes("GET")) {
      if (!route[1].contains("{") && !route[1].contains(".")) {
        Matcher found = NAME.matcher(app.get(route[1]).body());
        while (found.find()) {
          names.add(found.group(1));
        }
      }
    }
    names.addAll(List.of("query", "q", "page", "from", "until", "tooth", "day", "version", "pick"));
    return names;
  }

  @Test
  void noFormAndNoQueryMakesTheProgramFail() throws Exception {
    SplittableRandom chance = new SplittableRandom(20261130);
    List<String> names = new ArrayList<>(fields());
    List<String[]> all = new ArrayList<>(routes("GET"));
    all.addAll(routes("POST"));
    TreeMap<String, String> failed = new TreeMap<>();
    String today = LocalDate.now().toString();
    long end =
        System.nanoTime()
            + TimeUnit.SECONDS.toNanos(Math.max(5, Long.getLong("fuzz.seconds", 60) / 6));
    int sent = 0;
    for (int round = 0; System.nanoTime() < end; round++) {
      String[] route = all.get(round % all.size());
      Matcher holes = Pattern.compile("\\{[a-z]+}").matcher(route[1]);
      String path =
          holes.replaceAll(
              hole ->
                  hole.group().equals("{date}") && chance.nextBoolean()
                      ? today
                      : encoded(VALUES.get(chance.nextInt(VALUES.size())))
                          .replace("+", "%20")
                          .replaceAll("(?i)%00|%2f", "z"));
      StringBuilder pairs = new StringBuilder();
      for (int i = 0; i < 1 + chance.nextInt(24); i++) {
        pairs.append(i == 0 ? "" : "&").append(names.get(chance.nextInt(names.size())));
        pairs.append('=').append(encoded(VALUES.get(chance.nextInt(VALUES.size()))));
      }
      if (pairs.length() > 20_000) {
        pairs.setLength(20_000);
        pairs.setLength(pairs.lastIndexOf("&"));
      }
      HttpResponse<String> answer =
          route[0].equals("GET")
              ? app.get(path + "?" + pairs)
              : send("POST", path, "application/x-www-form-urlencoded", pairs.toString());
      sent++;
      if (answer.statusCode() >= 500) {
        failed.putIfAbsent(route[0] + " " + route[1], path + " " + pairs);
      }
    }
    assertTrue(sent > 50, "only " + sent);
    assertEquals(new TreeMap<String, String>(), failed);
  }

  private int book(String tooth) throws Exception {
    String day = LocalDate.now().plusDays(3).toString();
    return app.post(
            "/day/" + day + "/booking",
            "reference",
            "K-9",
            "tooth",
            tooth,
            "chair",
            "1",
            "start",
            "09:00",
            "minutes",
            "30",
            "tray",
            app.practice().days().trays().get(0).name())
        .statusCode();
  }

  @Test
  void aMistypedToothInABookingIsAFault() throws Exception {
    for (String tooth :
        List.of("99", "x", "1.6x", "16 17", "#", "UR", "\u0000", "16".repeat(400))) {
      int status = book(tooth);
      assertTrue(status < 500, tooth + " " + status);
      String day = LocalDate.now().plusDays(3).toString();
      for (String page : List.of("/day/" + day, "/", "/week")) {
        int shown = app.get(page).statusCode();
        assertTrue(shown < 500, page + " after " + tooth + " " + shown);
      }
    }
  }

  private static String log(String material, String at, String more) {
    return "[{\"id\":\"01a229ca-6970-7000-9674-7a10e43e9021\",\"case\":\"K-1\",\"tooth\":16,"
        + "\"run\":\"01a229ca-6970-7000-9674-7a10e43e9022\",\"step\":1,\"item\":\""
        + app.practice()
            .service()
            .drawer()
            .in(kerfwright.practice.drawer.InstrumentState.CLEAN)
            .get(0)
            .id()
        + "\",\"by\":\"AB\",\"at\":\""
        + at
        + "\",\"mm3\":{\""
        + material
        + "\":1}"
        + more
        + "}]";
  }

  @Test
  void aChairLogWithUnknownMaterialOrTimeIsRefusedWithItsReason() throws Exception {
    String now = java.time.Instant.now().toString();
    for (String body :
        List.of(
            log("unobtainium", now, ""),
            log("enamel", "+999999999-12-31T23:59:59Z", ""),
            log("enamel", "-999999999-01-01T00:00:00Z", ""),
            log("enamel", "yesterday", ""),
            log("enamel\\u0000x", now, ",\"setRpm\":1e400"),
            log("enamel", now, ",\"totalSeconds\":1e300"),
            "[{\"id\":7}]",
            "[null]",
            "[[]]")) {
      HttpResponse<String> answer = send("POST", "/chairside/log", "application/json", body);
      assertEquals(200, answer.statusCode(), body);
      assertTrue(answer.body().contains("\"stands\":"), answer.body());
      assertEquals(200, app.get("/records").statusCode(), body);
    }
    assertTrue(
        send("POST", "/chairside/log", "application/json", log("unobtainium", now, ""))
            .body()
            .contains("unobtainium"));
    for (String body : List.of("", "{", "{}", "7", "\u0000", "[".repeat(5000))) {
      int status = send("POST", "/chairside/log", "application/json", body).statusCode();
      assertTrue(status >= 400 && status < 500, body + status);
    }
  }
}
