package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Trays an appointment may take when there is no plan of its case. */
class DayTraysTest {
  private static final String PAGE = "/day/trays";
  private static Served app;

  @BeforeAll
  static void start() throws Exception {
    app = new Served();
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  private static String someType() throws Exception {
    String body = app.get(PAGE).body();
    String begin = "<option value=\"";
    int at = body.indexOf(begin, body.indexOf("id=\"type-0\"") + 1);
    at = body.indexOf(begin, at + 1) + begin.length();
    return body.substring(at, body.indexOf('"', at));
  }

  @Test
  void whatIsRefusedStandsInTheFormAgain() throws Exception {
    String type = someType();
    HttpResponse<String> refused =
        app.post(PAGE, "name", "Crown", "minutes", "2", "type-1", type, "ratio-1", "1.7");
    assertEquals(422, refused.statusCode());
    assertTrue(refused.body().contains("value=\"Crown\""));
    assertTrue(refused.body().contains("value=\"1.7\""));
    assertTrue(refused.body().contains("value=\"" + type + "\" selected"));
  }

  @Test
  void aTrayIsKeptAndForgotten() throws Exception {
    int before = app.practice().days().trays().size();
    assertEquals(
        303, app.post(PAGE, "name", "Crown", "minutes", "40", "type-0", someType()).statusCode());
    assertEquals(before + 1, app.practice().days().trays().size());
    assertTrue(app.get(PAGE).body().contains("cannot be brought back"), "said before it is done");
    assertEquals(303, app.post(PAGE, "name", "Crown", "forget", "yes").statusCode());
    assertEquals(before, app.practice().days().trays().size());
  }
}
