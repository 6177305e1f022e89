package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.label.OwnCode;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.Loads;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Reprocessing and the record through the pages, as people go through them. */
@Tag("journey")
class RecordJourneyTest {
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
    List<String> pairs = new ArrayList<>();
    for (int i = 0; i < fields.length; i += 2) {
      pairs.add(fields[i] + "=" + URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
    }
    return app.send(
        HttpRequest.newBuilder(URI.create(app.address(path)))
            .header("Origin", app.address(""))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(String.join("&", pairs)))
            .build());
  }

  private static String where(HttpResponse<String> answer) {
    assertEquals(303, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow().replaceFirst("^http://[^/]+", "");
  }

  private String page(String path) throws Exception {
    HttpResponse<String> answer = app.get(path);
    assertEquals(200, answer.statusCode(), answer.body());
    return answer.body();
  }

  private static List<String> all(String pattern, String text) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    List<String> found = new ArrayList<>();
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  private static String first(String pattern, String text) {
    List<String> found = all(pattern, text);
    assertFalse(found.isEmpty(), pattern + " in " + text);
    return found.get(0);
  }

  @Test
  void aUseIsEnteredOnceCorrectedAndFoundBothWays() throws Exception {
    String id = first("name=\"id\" value=\"([^\"]+)\"", page("/records/new"));
    String[] fields = {
      "id",
      id,
      "case",
      "K-0777",
      "tooth",
      "26",
      "instrument",
      "D01",
      "by",
      "AB",
      "at",
      "2026-03-02T10:15",
      "rpm",
      "200 000",
      "cut-s",
      "12,5",
      "material-1",
      "enamel",
      "mm3-1",
      "3.5"
    };
    String entry = where(post("/records/new", fields));
    assertEquals(entry, where(post("/records/new", fields)));
    String shown = page(entry);
    assertTrue(shown.contains("12.5 s cutting") && shown.contains("3.5 mm³ of enamel"), shown);
    assertEquals(1, all("(>26<)", page("/records?case=k-0777")).size());
    String form = page("/records/" + id + "/correct");
    assertTrue(form.contains("value=\"200000\""), form);
    String second = first("name=\"id\" value=\"([^\"]+)\"", form);
    assertEquals(
        422, post("/records/" + id + "/correct", "id", second, "struck", "yes").statusCode());
    String corrected =
        where(
            post(
                "/records/" + id + "/correct",
                "id",
                second,
                "struck",
                "yes",
                "corrector",
                "AB",
                "reason",
                "slip"));
    assertTrue(page(corrected).contains("did not take place"));
    assertTrue(page("/records/" + id).contains("slip"));
    assertTrue(page("/records?instrument=D01").contains("K-0777"));
    assertEquals(
        409,
        post(
                "/records/" + id + "/correct",
                "id",
                first("name=\"id\" value=\"([^\"]+)\"", form).replace('a', 'b'),
                "struck",
                "yes",
                "corrector",
                "AB",
                "reason",
                "again")
            .statusCode());
    where(post("/records/verify"));
    String verified =
        Patience.until(() -> page("/records/verify"), one -> one.contains("The chain holds"));
    assertTrue(verified.contains("The chain holds: 9 entries"), verified);
    Browser.picture(app, "/records", "journey-05-record-entries");
  }

  @Test
  void whatIsWrongInAFormIsToldBesideItsFieldAndNothingIsLost() throws Exception {
    HttpResponse<String> answer =
        post(
            "/records/new",
            "id",
            "none",
            "case",
            "Some Body",
            "tooth",
            "99",
            "mm3-1",
            "4",
            "by",
            "");
    assertEquals(422, answer.statusCode());
    assertTrue(
        answer.body().contains("value=\"Some Body\"") && answer.body().contains("never a name"));
    assertTrue(answer.body().contains("Choose the material"));
    assertTrue(
        page("/records?tooth=99&from=x&load=none&instrument=none").contains("No such tooth"));
    assertEquals(404, app.get("/records/none").statusCode());
    assertEquals(404, app.get("/reprocessing/load/none").statusCode());
  }

  @Test
  void manyUsedInstrumentsAreShownInPages() throws Exception {
    try (Served many = Served.empty()) {
      DrawerService service = many.practice().service();
      DrawerFields fields =
          new DrawerFields(Map.of("iso", "806 314 197 534 014", "head_length_mm", "8"));
      List<StockItem> items = new ArrayList<>();
      for (int i = 0; i < 230; i++) {
        items.add(
            StockItem.fresh(service.newId(), "U" + i, fields)
                .next(draft -> draft.state = InstrumentState.USED)
                .asNew());
      }
      assertTrue(service.add(items, "").done());
      String first = many.get("/reprocessing").body();
      assertEquals(100, all("name=\"pick\" value=\"([^\"]+)\" checked", first).size());
      assertTrue(first.contains("1 to 100 of 230"), first);
      String last = many.get("/reprocessing?used=3").body();
      assertEquals(30, all("name=\"pick\" value=\"([^\"]+)\" checked", last).size());
      assertTrue(last.contains("201 to 230 of 230") && !last.contains("rel=\"next\""), last);
      assertTrue(many.get("/reprocessing?used=99").body().contains("1 to 100 of 230"));
    }
  }

  @Test
  void aLoadIsMadeReadReleasedAndRecalled() throws Exception {
    String settings = page("/reprocessing/settings");
    String version = first("name=\"version\" value=\"(\\d+)\"", settings);
    where(
        post(
            "/reprocessing/settings",
            "version",
            version,
            "reprocessing.cycle-b-134-min",
            "3",
            "reprocessing.may-release",
            "reprocessing",
            "reprocessing.sterilisers",
            "s1, s2"));
    assertEquals(
        422,
        post("/reprocessing/settings", "version", version, "reprocessing.dry-min", "x")
            .statusCode());
    String tooShort =
        post(
                "/reprocessing/settings",
                "version",
                version,
                "reprocessing.cycle-b-134-min",
                "2",
                "reprocessing.may-release",
                "reprocessing")
            .body();
    assertTrue(tooShort.contains("whole numbers from 3 to 999"), tooShort);
    List<String> used = all("name=\"pick\" value=\"([^\"]+)\" checked", page("/reprocessing"));
    where(post("/reprocessing/clean", "pick", used.get(0)));
    String form = page("/reprocessing/load/new");
    List<String> picks = all("name=\"pick\" value=\"([^\"]+)\"", form);
    String item = picks.get(0).split(":")[0];
    String[] wanted = {
      "sent",
      "1",
      "steriliser",
      "S2",
      "cycle",
      "b-134",
      "by",
      "CD",
      "pick",
      picks.get(0),
      "pick",
      picks.get(1),
      "set-" + item,
      "crown set"
    };
    wanted[5] = "n-134";
    HttpResponse<String> unwrapped = post("/reprocessing/load/new", wanted);
    assertEquals(422, unwrapped.statusCode());
    assertTrue(unwrapped.body().contains("unwrapped solid instruments only"));
    assertTrue(unwrapped.body().contains("value=\"crown set\""));
    wanted[5] = "b-134";
    assertTrue(page("/reprocessing/load/new").contains("B 134 °C, 3 min"));
    assertTrue(page("/reprocessing/load/new").contains("B 121 °C, 72 min"));
    String load = where(post("/reprocessing/load/new", wanted));
    startedEarlier(load, Duration.ofMinutes(4));
    HttpResponse<String> early = post(load + "/release", "version", "2", "by", "AB");
    assertEquals(409, early.statusCode());
    assertTrue(early.body().contains("The role of AB may not release"), early.body());
    assertTrue(early.body().contains("Not read yet: Chemical indicators"));
    where(
        post(
            load + "/read",
            "version",
            "2",
            "by",
            "CD",
            "parameters",
            "passed",
            "spores",
            "not-read"));
    assertTrue(page(load).contains("Release as EF"), "all that is left to read, and the release");
    HttpResponse<String> notOurs = post(load + "/pass", "version", "2", "by", "EF");
    assertEquals(409, notOurs.statusCode(), "read by someone else meanwhile");
    where(post(load + "/pass", "version", "3", "by", "EF"));
    assertTrue(page(load).contains(">released<"));
    assertFalse(page(load).contains("Release as EF"));
    assertTrue(page("/drawer/item/" + item).contains("state-clean"));
    String id = first("name=\"id\" value=\"([^\"]+)\"", page("/records/new"));
    String at = java.time.LocalDateTime.now().plusMinutes(1).toString().substring(0, 16);
    where(
        post(
            "/records/new",
            "id",
            id,
            "case",
            "K-0888",
            "tooth",
            "11",
            "instrument",
            new OwnCode(OwnCode.Kind.INSTRUMENT, UUID.fromString(item)).text(),
            "by",
            "AB",
            "at",
            at));
    String pouch = first("name=\"pouch\" value=\"([^\"]+)\"", page(load));
    assertTrue(page("/labels?pouch=" + pouch).contains("S2-"));
    assertTrue(page(load + "/fail").contains("K-0888"));
    assertEquals(422, post(load + "/fail", "by", "EF", "reason", " ").statusCode());
    where(post(load + "/fail", "by", "EF", "reason", "spore test grew"));
    String failed = page(load);
    assertTrue(failed.contains("1 case:") && failed.contains("K-0888"), failed);
    assertTrue(failed.contains("state-quarantine"));
    Browser.picture(app, "/reprocessing", "journey-05-record-reprocessing");
  }

  /** Nobody waits here until the cycle is over. */
  private void startedEarlier(String page, Duration by) throws Exception {
    Loads loads = app.practice().loads().loads();
    Load load = loads.find(UUID.fromString(page.replaceAll(".*/", ""))).orElseThrow();
    loads.write(
        new Load(
            load.id(),
            load.version() + 1,
            load.name(),
            load.steriliser(),
            load.cycle(),
            load.started().minus(by),
            load.minutes(),
            load.state(),
            load.pouches(),
            load.events()),
        List.of());
  }
}
