package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.router.Endpoint;
import io.javalin.router.ParsedEndpoint;
import io.javalin.security.Roles;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import kerfwright.app.input.BadInput;
import kerfwright.app.security.Access;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class WebServerTest {
  private static final String CASE =
      "case=K-1&procedure=access-cavity&tooth=16&pulp=vital"
          + "&layer_material=enamel&layer_low=&layer_typical=1.4&layer_high="
          + "&layer_material=dentine&layer_low=2.5&layer_typical=3&layer_high=3.5"
          + "&outline_shape=ellipse&outline_length_mm=4&outline_width_mm=3"
          + "&handpieces=turbine&handpieces=electric-1to1&coolant_ml_per_min=50";

  private static Served app;

  @BeforeAll
  static void start() throws BadInput {
    app = new Served();
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  private static List<Endpoint> routes() {
    List<Endpoint> routes = new ArrayList<>();
    for (ParsedEndpoint parsed : app.server().unsafe.internalRouter.allHttpHandlers()) {
      Endpoint endpoint = parsed.endpoint;
      if (!endpoint.method.name().startsWith("BEFORE")
          && !endpoint.method.name().startsWith("AFTER")) {
        routes.add(endpoint);
      }
    }
    return routes;
  }

  @Test
  void everyRouteNamesItsRole() {
    assertTrue(routes().size() >= 8);
    for (Endpoint route : routes()) {
      Roles roles = route.metadata(Roles.class);
      assertTrue(roles != null && roles.getRoles().size() == 1, route.path);
      assertInstanceOf(Access.class, roles.getRoles().iterator().next(), route.path);
    }
  }

  /** What feature a page belongs to tells every test of pages that it is there. */
  @Test
  void everyPageIsNamedByItsFeature() throws Exception {
    List<String> unnamed = new ArrayList<>();
    List<String> named = app.pages().stream().map(one -> one.replaceAll("\\?.*", "")).toList();
    for (Endpoint route : routes()) {
      if (route.method.name().equals("GET") && !route.path.contains("{")) {
        HttpResponse<String> answer = app.get(route.path);
        boolean page = answer.statusCode() == 200 && answer.body().contains("<html");
        if (page && !named.contains(route.path)) {
          unnamed.add(route.path);
        }
      }
    }
    assertEquals(List.of(), unnamed);
    for (String page : app.pages()) {
      assertEquals(200, app.get(page).statusCode(), page);
    }
  }

  @Test
  void noRouteAnswersUnderAForeignHostName() throws IOException {
    for (Endpoint route : routes()) {
      String path = route.path.replaceAll("\\{[a-z]+}", "page.css");
      String head = status(route.method.name(), path, "Host: rebound.example:" + port());
      assertTrue(head.contains(" 403 "), route.path + ": " + head);
    }
  }

  @Test
  void noRouteTakesAChangeFromAForeignPage() throws IOException {
    for (Endpoint route : routes()) {
      if (!route.method.name().equals("GET")) {
        String host = "Host: localhost:" + port();
        String origin = host + "\r\nOrigin: http://elsewhere.example";
        String site = host + "\r\nSec-Fetch-Site: cross-site";
        String form = host + "\r\nContent-Type: application/x-www-form-urlencoded";
        String path = route.path.replaceAll("\\{[a-z]+}", "page.css");
        for (String headers : List.of(origin, site, form)) {
          String head = status(route.method.name(), path, headers);
          assertTrue(head.contains(" 403 "), route.path + ": " + head);
        }
      }
    }
  }

  /** Speaks HTTP by hand, because clients refuse to lie about the host. */
  private static String status(String method, String path, String headers) throws IOException {
    try (Socket socket = new Socket("127.0.0.1", port())) {
      String request =
          method
              + " "
              + path
              + " HTTP/1.1\r\n"
              + headers
              + "\r\nContent-Length: 0\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      return new BufferedReader(
              new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII))
          .readLine();
    }
  }

  private static int port() {
    return app.server().port();
  }

  @Test
  void nothingOutsideThisMachineCanConnect() throws IOException {
    for (NetworkInterface each : Collections.list(NetworkInterface.getNetworkInterfaces())) {
      for (InetAddress address : Collections.list(each.getInetAddresses())) {
        if (address instanceof Inet4Address && !address.isLoopbackAddress()) {
          boolean connected = true;
          try (Socket socket = new Socket()) {
            socket.connect(new java.net.InetSocketAddress(address, port()), 500);
          } catch (IOException refused) {
            connected = false;
          }
          assertFalse(connected, address + " must not be listened on");
        }
      }
    }
  }

  @Test
  void everyPageForbidsForeignAndInlineContent() throws Exception {
    for (String path : List.of("/", "/case", "/drawer", "/plan?" + CASE, "/none")) {
      HttpResponse<String> page = app.get(path);
      String policy = page.headers().firstValue("Content-Security-Policy").orElse("");
      assertTrue(policy.startsWith("default-src 'none'"), path);
      assertFalse(policy.contains("unsafe"), path);
      assertFalse(page.body().matches("(?s).*\\s(style|on[a-z]+)=\".*"), path + " is inline-free");
      // a block of data is not run
      assertFalse(
          page.body().matches("(?s).*<script(?![^>]*src=)(?![^>]*type=\"application/json\").*"),
          path);
      assertFalse(
          page.body().matches("(?s).*(src|href)=\"(https?:)?//.*"), path + " loads from elsewhere");
    }
  }

  @Test
  void pagesAreLight() throws Exception {
    int assets = 0;
    for (String name : List.of("page.css", "page.js", "htmx.js", "icon.svg")) {
      HttpResponse<String> asset = app.get("/static/" + name);
      assertEquals(200, asset.statusCode(), name);
      assets += asset.body().length();
    }
    for (String path : List.of("/", "/case", "/drawer", "/plan?" + CASE)) {
      assertTrue(app.get(path).body().length() + assets < 300_000, path);
    }
  }

  @Test
  void aPlanIsShownAsPageCardAndJson() throws Exception {
    HttpResponse<String> page = app.get("/plan?" + CASE);
    assertEquals(200, page.statusCode());
    assertTrue(page.body().contains("Standing cautions"));
    assertTrue(page.body().contains("Until:"));
    HttpResponse<String> json = app.get("/plan.json?" + CASE);
    assertEquals("plan/1", new ObjectMapper().readTree(json.body()).get("contract").asText());
    HttpResponse<String> card = app.get("/plan.pdf?" + CASE);
    assertEquals("application/pdf", card.headers().firstValue("Content-Type").orElse(""));
    assertTrue(card.body().startsWith("%PDF-"));
  }

  @Test
  void aBadFormComesBackWithItsFaultsAndEverythingTyped() throws Exception {
    String bad =
        CASE.replace("tooth=16", "tooth=99")
            .replace("layer_typical=1.4", "layer_typical=thick")
            .replace("coolant_ml_per_min=50", "coolant_ml_per_min=%3Cq%3E");
    HttpResponse<String> page = app.get("/plan?" + bad);
    assertEquals(422, page.statusCode());
    String body = page.body();
    assertTrue(body.contains("3 things need a second look"), body);
    assertTrue(body.contains("there is no tooth &#39;99&#39;") || body.contains("no tooth '99'"));
    for (String place : List.of("tooth", "layer-0", "coolant_ml_per_min")) {
      assertTrue(body.contains("<li><a href=\"#fault-" + place + "\">"), "a jump to " + place);
      assertTrue(body.contains("id=\"fault-" + place + "\""), place);
    }
    assertTrue(body.contains("value=\"thick\""), "what was typed stays");
    assertTrue(body.contains("value=\"99\""));
    assertTrue(body.contains("value=\"&lt;q>\"") || body.contains("value=\"&lt;q&gt;\""), body);
    assertFalse(body.contains("<q>"), "typed markup stays text");
  }

  @Test
  void layersAreAddedAndRemovedWithoutScript() throws Exception {
    String more = app.get("/case?" + CASE + "&do=add-layer").body();
    assertTrue(more.contains("Layer 3"), "a third row");
    String less = app.get("/case?" + CASE + "&do=remove-layer-0").body();
    assertFalse(less.contains("Layer 2"));
    assertTrue(less.contains("value=\"2.5\""), "the other row keeps what was typed");
  }

  @Test
  void theUsualLayersFillTheForm() throws Exception {
    String page =
        app.get("/case?procedure=access-cavity&tooth=16&restoration=metal-ceramic&do=usual-layers")
            .body();
    assertTrue(page.contains("value=\"feldspathic-porcelain\" selected"), page);
    String ask = app.get("/case?tooth=16&do=usual-layers").body();
    assertTrue(ask.contains("tooth and procedure are needed"));
  }

  @Test
  void whatIsUsualFollowsToothAndProcedureButNeverWhatWasTyped() throws Exception {
    String first = app.get("/case?procedure=cavity-preparation&tooth=16").body();
    assertTrue(first.contains("value=\"carious-dentine\" selected"), first);
    assertTrue(first.contains("name=\"lesion_depth\" value=\"moderate\" checked"), first);
    assertTrue(first.contains("name=\"outline_length_mm\"") && first.contains("value=\"3.5\""));
    String typed =
        app.get(
                "/case?procedure=cavity-preparation&tooth=16&outline_shape=ellipse"
                    + "&outline_length_mm=2.9&outline_width_mm=1.7")
            .body();
    assertTrue(typed.contains("value=\"2.9\""), typed);
    String other = app.get("/case?procedure=access-cavity&tooth=16").body();
    assertFalse(other.contains("name=\"lesion_depth\""), "an access does not ask for decay");
  }

  @Test
  void aContradictionIsAskedWithAButtonThatPutsItRight() throws Exception {
    String bad = "procedure=post-removal&tooth=12&pulp=vital";
    HttpResponse<String> page = app.get("/plan?" + bad);
    assertEquals(422, page.statusCode());
    assertTrue(page.body().contains("value=\"fix-pulp=non-vital\""), page.body());
    String put = app.get("/case?" + bad + "&do=fix-pulp=non-vital").body();
    assertTrue(put.contains("name=\"pulp\" value=\"non-vital\" checked"), put);
  }

  @Test
  void theApiNamesTheFixOfAContradictionAndWhatWasFilledIn() throws Exception {
    String body = "{\"procedure\": \"post-removal\", \"tooth\": 12, \"pulp\": \"vital\"}";
    JsonNode fault =
        new ObjectMapper().readTree(app.send(post("/api/plan", body)).body()).get("faults").get(0);
    assertEquals("pulp-and-procedure", fault.get("code").asText());
    assertEquals("pulp", fault.get("fix").get("field").asText());
    assertEquals("non-vital", fault.get("fix").get("value").asText());
    JsonNode plan =
        new ObjectMapper()
            .readTree(
                app.send(
                        post(
                            "/api/plan?samples=8",
                            "{\"procedure\": \"amalgam-removal\", \"tooth\": 36}"))
                    .body());
    assertEquals("case", plan.get("filledIn").get(0).get("field").asText());
    assertTrue(plan.get("findings").toString().contains("\"filled-in\""), plan.toString());
  }

  @Test
  void theApiTakesACaseAsJson() throws Exception {
    String body =
        """
        {"case": "K-1", "procedure": "access-cavity", "tooth": {"fdi": 16},
         "layers": [{"material": "enamel", "thickness_mm": 1.4},
                    {"material": "dentine", "thickness_mm": 3.0}],
         "outline": {"shape": "ellipse", "length_mm": 4, "width_mm": 3},
         "handpieces": ["turbine"], "coolant_ml_per_min": 50}
        """;
    HttpResponse<String> plan = app.send(post("/api/plan?samples=8&seed=3", body));
    assertEquals(200, plan.statusCode(), plan.body());
    assertEquals(3, new ObjectMapper().readTree(plan.body()).get("seed").asInt());
    HttpResponse<String> bad = app.send(post("/api/plan", body.replace("enamel", "enamle")));
    assertEquals(422, bad.statusCode());
    JsonNode fault = new ObjectMapper().readTree(bad.body()).get("faults").get(0);
    assertEquals("layers[0].material", fault.get("field").asText());
    assertEquals(2, fault.get("line").asInt());
    assertEquals("enamel", fault.get("nearest").asText());
    assertEquals(422, app.send(post("/api/plan?samples=0", body)).statusCode());
    assertEquals(422, app.send(post("/api/plan", "{")).statusCode());
  }

  @Test
  void aHugeBodyIsRefused() throws Exception {
    HttpResponse<String> answer = app.send(post("/api/plan", " ".repeat(2_000_000)));
    assertTrue(answer.statusCode() == 413 || answer.statusCode() == 422, answer.toString());
  }

  private static HttpRequest post(String path, String body) {
    return HttpRequest.newBuilder(URI.create(app.address(path)))
        .header("Content-Type", "application/json")
        .POST(HttpRequest.BodyPublishers.ofString(body))
        .build();
  }

  @Test
  void onlyNamedFilesAreServed() throws Exception {
    for (String name : List.of("none.css", "..%2F..%2Fsecret", "%2e%2e")) {
      int status = app.get("/static/" + name).statusCode();
      assertTrue(status == 404 || status == 400, name + " " + status);
    }
  }

  @Test
  void theStartNamesTheDrawerAndTheCases() throws Exception {
    String page = app.get("/").body();
    assertTrue(page.contains("K-0412"));
    assertTrue(page.contains("instruments clean"));
  }
}
