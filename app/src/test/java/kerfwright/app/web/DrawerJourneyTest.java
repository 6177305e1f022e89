package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The drawer's pages as a browser without script asks for them. */
@Tag("journey")
class DrawerJourneyTest {
  private Served app;

  @BeforeEach
  void start() throws Exception {
    app = new Served();
  }

  @AfterEach
  void stop() {
    app.close();
  }

  private HttpResponse<String> post(String path, String... fields) throws Exception {
    StringBuilder body = new StringBuilder();
    for (int i = 0; i < fields.length; i += 2) {
      body.append(i == 0 ? "" : "&").append(fields[i]).append('=');
      body.append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
    }
    return app.send(
        HttpRequest.newBuilder(URI.create(app.address(path)))
            .header("Origin", app.address(""))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
            .build());
  }

  private HttpResponse<String> upload(byte[] file, boolean lengthTold) throws Exception {
    byte[] head =
        ("--x\r\nContent-Disposition: form-data; name=\"list\"; filename=\"list.csv\"\r\n"
                + "Content-Type: text/csv\r\n\r\n")
            .getBytes(StandardCharsets.UTF_8);
    byte[] body = new byte[head.length + file.length + 9];
    System.arraycopy(head, 0, body, 0, head.length);
    System.arraycopy(file, 0, body, head.length, file.length);
    byte[] tail = "\r\n--x--\r\n".getBytes(StandardCharsets.UTF_8);
    System.arraycopy(tail, 0, body, head.length + file.length, 9);
    return app.send(
        HttpRequest.newBuilder(URI.create(app.address("/drawer/import")))
            .header("Origin", app.address(""))
            .header("Content-Type", "multipart/form-data; boundary=x")
            .POST(
                lengthTold
                    ? HttpRequest.BodyPublishers.ofByteArray(body)
                    : HttpRequest.BodyPublishers.ofInputStream(
                        () -> new ByteArrayInputStream(body)))
            .build());
  }

  private static String found(String pattern, String text) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    assertTrue(matcher.find(), pattern + " in " + text);
    return matcher.group(1);
  }

  private String pick(String label) throws IOException, InterruptedException {
    return found("name=\"pick\" value=\"([^\"]+)\"", app.get("/drawer?q=" + label).body());
  }

  /** Where a redirect leads, shown. */
  private String followed(HttpResponse<String> answer) throws Exception {
    assertEquals(303, answer.statusCode(), answer.body());
    return app.get(
            answer.headers().firstValue("Location").orElseThrow().replaceFirst("^http://[^/]+", ""))
        .body();
  }

  @Test
  void tickedOnesAreMovedTogetherAndTakenBack() throws Exception {
    String before = app.get("/").body();
    String page =
        followed(post("/drawer/move", "pick", pick("D01"), "pick", pick("D04"), "to", "on-tray"));
    assertTrue(page.contains("2 instruments: now on tray."), page);
    assertFalse(app.get("/").body().equals(before));
    String batch = found("name=\"batch\" value=\"([^\"]+)\"", page);
    assertTrue(followed(post("/drawer/undo", "batch", batch)).contains("undone"));
    assertEquals(before, app.get("/").body());
    assertEquals(409, post("/drawer/undo", "batch", batch).statusCode());
  }

  @Test
  void aMoveNoRuleAllowsIsExplainedAndChangesNothing() throws Exception {
    HttpResponse<String> answer = post("/drawer/move", "pick", pick("D18"), "to", "clean");
    assertEquals(409, answer.statusCode());
    assertTrue(answer.body().contains("is used and cannot become clean"), answer.body());
    assertEquals(422, post("/drawer/move", "to", "clean").statusCode());
  }

  @Test
  void ofTwoWhoEditTheSecondIsToldWhatChangedMeanwhile() throws Exception {
    String id = pick("D01").split(":")[0];
    String path = "/drawer/item/" + id;
    String[] first = {"version", "1", "id", "D01", "iso", "806 314 001 534 014", "place", "left"};
    String[] second = {"version", "1", "id", "D01", "iso", "806 314 001 534 014", "place", "right"};
    assertTrue(followed(post(path, first)).contains("left"));
    HttpResponse<String> late = post(path, second);
    assertEquals(409, late.statusCode());
    assertTrue(late.body().contains("Place blank to left"), late.body());
    assertTrue(late.body().contains("value=\"right\""));
    assertTrue(late.body().contains("name=\"version\" value=\"2\""));
    second[1] = "2";
    assertTrue(followed(post(path, second)).contains("Place left to right"));
  }

  @Test
  void anInstrumentIsAddedByItsNumberAndSlipsAreToldBesideTheirField() throws Exception {
    HttpResponse<String> slip = post("/drawer/new", "id", "X 1", "us", "99999", "state", "clean");
    assertEquals(422, slip.statusCode());
    assertTrue(slip.body().contains("value=\"X 1\""));
    String page =
        followed(
            post(
                "/drawer/new",
                "id",
                "X1",
                "iso",
                "806 314 197 534 014",
                "head_length_mm",
                "8",
                "pieces",
                "12",
                "single_use",
                "yes",
                "state",
                "clean",
                "max_rpm",
                "300000"));
    assertTrue(page.contains("lot of 12") && page.contains("for single use"), page);
    assertTrue(page.contains("<svg"));
    assertEquals(
        422,
        post(
                "/drawer/new",
                "id",
                "X1",
                "iso",
                "806 314 197 534 014",
                "head_length_mm",
                "8",
                "state",
                "clean")
            .statusCode());
  }

  @Test
  void aHandpieceIsAddedByItsKindAloneWhateverWasTypedBefore() throws Exception {
    String page =
        followed(
            post(
                "/drawer/new",
                "id",
                "T9",
                "kind",
                "turbine",
                "head_mm",
                "1.4",
                "grit",
                "coarse",
                "state",
                "clean"));
    assertTrue(page.contains("air turbine handpiece"), page);
  }

  @Test
  void aListIsLookedAtTakenOverAndTakenBack() throws Exception {
    StringBuilder list = new StringBuilder("name,number,len,rpm\n");
    for (int i = 0; i < 3000; i++) {
      list.append("I").append(i).append(",806 314 197 534 014,8.0,300000\n");
    }
    list.append("I1,806 314 197 534 014,8.0,300000\n");
    HttpResponse<String> handedIn = upload(list.toString().getBytes(StandardCharsets.UTF_8), true);
    String path =
        handedIn.headers().firstValue("Location").orElseThrow().replaceFirst("^http://[^/]+", "");
    String mapped = "?column=id&column=iso&column=head_length_mm&column=max_rpm&otherwise=clean";
    String preview = app.get(path + mapped).body();
    assertTrue(preview.contains("3000 instruments understood"), preview.substring(0, 3000));
    assertTrue(preview.contains("higher up in the list"));
    assertFalse(app.get("/drawer?q=I2999").body().contains("name=\"pick\""));
    assertEquals(
        303,
        post(
                path,
                "column",
                "id",
                "column",
                "iso",
                "column",
                "head_length_mm",
                "column",
                "max_rpm",
                "otherwise",
                "clean")
            .statusCode());
    String done =
        Patience.until(
                () -> app.get(path + "/progress"),
                progress -> {
                  boolean over = progress.headers().firstValue("Location").isPresent();
                  assertTrue(over || progress.body().contains("rows read"), progress.body());
                  return over;
                })
            .headers()
            .firstValue("Location")
            .orElseThrow();
    String page = app.get(done.replaceFirst("^http://[^/]+", "")).body();
    assertTrue(page.contains("3000 instruments: added to the drawer"), page.substring(0, 3000));
    String batch = found("name=\"batch\" value=\"([^\"]+)\"", page);
    assertTrue(followed(post("/drawer/undo", "batch", batch)).contains("undone"));
    assertFalse(app.get("/drawer?q=I2999").body().contains("name=\"pick\""));
    Browser.picture(app, "/drawer", "journey-06-drawer-list");
  }

  @Test
  void hostileFilesAreRefusedClearly() throws Exception {
    HttpResponse<String> formula = upload("id\n=1+1\n".getBytes(StandardCharsets.UTF_8), true);
    assertEquals(422, formula.statusCode());
    assertTrue(formula.body().contains("holds a formula"), formula.body());
    HttpResponse<String> large = upload(new byte[10 * 1024 * 1024], false);
    assertEquals(422, large.statusCode());
    assertTrue(large.body().contains("larger than 8 MiB"), large.body());
  }

  @Test
  void addressesMadeUpAreAnsweredCalmly() throws Exception {
    assertEquals(404, app.get("/drawer/item/none").statusCode());
    assertEquals(404, app.get("/drawer/import/00000000-0000-7000-8000-000000000000").statusCode());
    assertEquals(200, app.get("/drawer?page=99999&kind=none&state=x&q=%25").statusCode());
  }
}
