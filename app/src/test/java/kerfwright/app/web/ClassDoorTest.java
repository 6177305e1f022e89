package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.javalin.router.ParsedEndpoint;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.app.learner.LearnerPages;
import kerfwright.practice.teaching.Given;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Behind the door of a class stand its questions and nothing else; forty phones answer at once. */
class ClassDoorTest {
  private static final int PHONES = 40;
  private static final Pattern URL = Pattern.compile("http://([0-9.]+):(\\d+)/class/([A-Z]{5})");
  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private static Served app;

  @BeforeAll
  static void start() throws Exception {
    Assumptions.assumeTrue(LearnerPages.networkAddress().isPresent(), "on no network");
    app = new Served();
  }

  @AfterAll
  static void stop() {
    if (app != null) {
      app.close();
    }
  }

  /** A class that is open: where phones reach it. */
  private record Door(String host, int port, String code) {
    String url(String path) {
      return "http://" + host + ":" + port + path;
    }

    String page() {
      return "/class/" + code;
    }
  }

  private static String set() throws Exception {
    HttpResponse<String> made =
        app.post("/learn/sets", "class", "1", "topic", "layers", "count", "3", "seed", "5");
    String to = made.headers().firstValue("Location").orElseThrow();
    return to.substring(to.indexOf('=') + 1);
  }

  private static Door open() throws Exception {
    app.post("/learn/class", "set", set());
    Matcher url = URL.matcher(app.get("/learn/class").body());
    assertTrue(url.find());
    return new Door(url.group(1), Integer.parseInt(url.group(2)), url.group(3));
  }

  private static void on() throws Exception {
    Matcher step =
        Pattern.compile("name=\"step\" value=\"(\\d+)\"").matcher(app.get("/learn/class").body());
    assertTrue(step.find());
    app.post("/learn/class/on", "step", step.group(1));
  }

  private static HttpResponse<String> get(Door door, String path, String cookie)
      throws IOException, InterruptedException {
    return CLIENT.send(
        HttpRequest.newBuilder(URI.create(door.url(path))).header("Cookie", cookie).build(),
        HttpResponse.BodyHandlers.ofString());
  }

  private static HttpResponse<String> post(Door door, String path, String cookie, String body)
      throws IOException, InterruptedException {
    return CLIENT.send(
        HttpRequest.newBuilder(URI.create(door.url(path)))
            .header("Cookie", cookie)
            .header("Origin", "http://" + door.host() + ":" + door.port())
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build(),
        HttpResponse.BodyHandlers.ofString());
  }

  private static String join(Door door, String alias) throws Exception {
    HttpResponse<String> joined = post(door, door.page() + "/join", "x=1", "alias=" + alias);
    assertEquals(303, joined.statusCode(), joined.body());
    String cookie = joined.headers().firstValue("Set-Cookie").orElseThrow();
    assertTrue(cookie.contains("HttpOnly") && cookie.contains("Path=/class/"), cookie);
    return cookie.substring(0, cookie.indexOf(';'));
  }

  @Test
  void noRouteOfThePracticeAnswersAtTheDoor() throws Exception {
    Door door = open();
    String cookie = join(door, "walker");
    assertEquals(200, get(door, door.page(), cookie).statusCode(), "its own page answers");
    int walked = 0;
    for (ParsedEndpoint parsed : app.server().unsafe.internalRouter.allHttpHandlers()) {
      String method = parsed.endpoint.method.name();
      String path = parsed.endpoint.path.replaceAll("\\{[a-z]+}", "chairside.js");
      if (!method.startsWith("BEFORE") && !method.startsWith("AFTER")) {
        HttpResponse<String> answer =
            method.equals("GET")
                ? get(door, path, cookie)
                : post(door, path, cookie, "set=1&step=1&alias=walker");
        walked++;
        assertTrue(
            answer.statusCode() == 403 || answer.statusCode() == 404,
            method + " " + path + ": " + answer.statusCode());
        assertTrue(answer.body().length() < 200, "nothing is told: " + answer.body());
      }
    }
    assertTrue(walked > 80, walked + " routes");
  }

  @Test
  void theDoorAnswersOnlyByItsAddressAndFromItsOwnPages() throws Exception {
    Door door = open();
    String cookie = join(door, "stranger");
    assertTrue(status(door, "rebound.example").contains(" 403 "));
    assertTrue(status(door, door.host() + ":" + door.port()).contains(" 200 "));
    HttpRequest foreign =
        HttpRequest.newBuilder(URI.create(door.url(door.page() + "/answer")))
            .header("Cookie", cookie)
            .header("Origin", "http://elsewhere.example")
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString("n=1&option=1"))
            .build();
    assertEquals(403, CLIENT.send(foreign, HttpResponse.BodyHandlers.ofString()).statusCode());
    assertEquals(404, get(door, "/class/WRONG", cookie).statusCode());
    assertEquals(422, post(door, door.page() + "/join", "x=1", "alias=Anna+Schmidt").statusCode());
    assertEquals(422, post(door, door.page() + "/join", "x=1", "alias=STRANGER").statusCode());
    assertEquals(
        404, post(door, door.page() + "/answer", "class=made-up", "n=1&option=1").statusCode());
  }

  private static String status(Door door, String host) throws IOException {
    try (Socket socket = new Socket(door.host(), door.port())) {
      String request =
          "GET " + door.page() + " HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      return new BufferedReader(
              new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII))
          .readLine();
    }
  }

  @Test
  void fortyPhonesAnswerAtOnceAndNoneIsLost() throws Exception {
    Door door = open();
    List<String> cookies = new ArrayList<>();
    for (int i = 0; i < PHONES; i++) {
      cookies.add(join(door, "phone" + i));
    }
    on();
    ExecutorService phones = Executors.newFixedThreadPool(PHONES);
    List<Callable<Integer>> all = new ArrayList<>();
    for (int i = 0; i < PHONES; i++) {
      String cookie = cookies.get(i);
      int option = i % 4;
      all.add(
          () -> post(door, door.page() + "/answer", cookie, "n=1&option=" + option).statusCode());
    }
    for (Future<Integer> answer : phones.invokeAll(all)) {
      assertEquals(303, answer.get());
    }
    phones.shutdown();
    String live = app.get("/learn/class/live").body();
    assertTrue(live.contains("40 answered"), live);
    assertEquals(4, Pattern.compile("value=\"10\"").matcher(live).results().count(), live);
    assertFalse(
        get(door, door.page() + "/now?step=0", cookies.get(0))
            .body()
            .contains("mark-word\">Right"));
    on();
    assertTrue(get(door, door.page() + "/now?step=0", cookies.get(0)).body().contains("Right"));
    List<Given> kept =
        app.practice().lessons().answers("").stream()
            .filter(one -> one.alias().startsWith("phone"))
            .toList();
    assertEquals(PHONES, new TreeSet<>(kept.stream().map(Given::alias).toList()).size());
  }

  @Test
  void theDoorIsShutWhenTheClassEnds() throws Exception {
    Door door = open();
    app.post("/learn/class/end");
    assertThrows(IOException.class, () -> get(door, door.page(), "x=1"));
    assertEquals(302, app.get("/learn/class").statusCode());
  }
}
