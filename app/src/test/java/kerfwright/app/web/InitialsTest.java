package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import kerfwright.app.input.BadInput;
import kerfwright.app.web.caseform.FilledForm;
import kerfwright.practice.reprocessing.Load;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Initials in any alphabet, on every page that remembers who did it. */
class InitialsTest {
  private static Served app;

  @BeforeAll
  static void start() throws BadInput {
    app = new Served();
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  private static void name(String initials) throws Exception {
    int version = app.practice().settings().read().version();
    HttpResponse<String> named =
        app.post(
            "/people/named",
            "version",
            Integer.toString(version),
            "initials",
            initials,
            "does",
            "assistant");
    assertEquals(303, named.statusCode());
  }

  private static HttpResponse<String> remembering(String path, HttpResponse<String> answer)
      throws Exception {
    String cookie = answer.headers().firstValue("Set-Cookie").orElseThrow().split(";")[0];
    return app.send(
        HttpRequest.newBuilder(URI.create(app.address(path))).header("Cookie", cookie).build());
  }

  @ParameterizedTest
  @ValueSource(strings = {"ÖZ", "ŁŻ", "ΑΩ", "O\u0308Y"})
  void aLoadIsFailedByAnyInitialsAndTheyAreOfferedNextTime(String typed) throws Exception {
    String initials = typed.equals("O\u0308Y") ? "ÖY" : typed;
    name(typed);
    Load load = app.practice().loads().loads().newest(1).get(0);
    HttpResponse<String> answer =
        app.post(
            "/reprocessing/load/" + load.id() + "/fail", "by", typed, "reason", "door found open");
    assertTrue(answer.statusCode() == 303 || answer.statusCode() == 422, answer.body());
    HttpResponse<String> next = remembering("/reprocessing/load/new", answer);
    assertEquals(200, next.statusCode());
    assertTrue(next.body().contains("value=\"" + initials + "\" selected"), next.body());
  }

  @Test
  void aRunIsBegunByThem() throws Exception {
    name("ŁŻ");
    String query =
        FilledForm.of(kerfwright.app.Wiring.production().demoCases().read().get(0)).query();
    HttpResponse<String> answer = app.post("/chairside", "query", query, "by", "ŁŻ", "read", "1");
    assertEquals(303, answer.statusCode());
    HttpResponse<String> next = remembering("/chairside?" + query, answer);
    assertTrue(next.body().contains("value=\"ŁŻ\" checked"), next.body());
    String run = answer.headers().firstValue("Location").orElseThrow();
    UUID id = UUID.fromString(run.substring(run.lastIndexOf('/') + 1));
    assertEquals("ŁŻ", app.practice().runs().find(id).orElseThrow().by());
  }

  @Test
  void whatADeviceRemembersBadlyStopsNothing() throws Exception {
    for (String value :
        new String[] {"%", "%zz", "%C3", "\"", URLEncoder.encode("<b>", StandardCharsets.UTF_8)}) {
      HttpResponse<String> page =
          app.send(
              HttpRequest.newBuilder(URI.create(app.address("/records/new")))
                  .header("Cookie", "who=" + value + "; theme=" + value)
                  .build());
      assertTrue(page.statusCode() < 400, value + ": " + page.statusCode());
    }
  }
}
