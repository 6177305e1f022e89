package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.practice.daylist.DaySetting;
import kerfwright.practice.setting.SettingValues;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Hours, chairs, sterilisers and lives are set on a page, and count at once. */
class DaySettingTest {
  private static final String PAGE = "/day/settings";
  private static Served app;

  @BeforeAll
  static void start() throws Exception {
    app = new Served();
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  @BeforeEach
  void nothingIsSet() throws Exception {
    assertEquals(303, sent().statusCode());
  }

  private static HttpResponse<String> sent(String... fields) throws Exception {
    List<String> all = new ArrayList<>(List.of(fields));
    all.addAll(List.of("version", Integer.toString(app.practice().settings().read().version())));
    return app.post(PAGE, all.toArray(String[]::new));
  }

  private DaySetting setting() {
    return DaySetting.of(app.practice().settings().read());
  }

  @Test
  void whatIsSetCountsAndABlankFieldTakesWhatIsUsual() throws Exception {
    assertEquals(
        303,
        sent(
                "day.opens", "07:30",
                "day.length-min", "600",
                "day.chairs", "A, B C",
                "steriliser.count", "2",
                "life.diamond", "7")
            .statusCode());
    DaySetting set = setting();
    assertEquals("07:30", set.opens().toString());
    assertEquals(600, set.lengthMin());
    assertEquals(List.of("A", "B", "C"), set.chairs());
    assertEquals(2, set.sterilisers().sterilisers());
    assertEquals(7, set.lifeUses(InstrumentKind.DIAMOND, false));
    assertEquals(1, set.lifeUses(InstrumentKind.DIAMOND, true), "single use stays single use");
    assertEquals(15, set.gridMin(), "blank is usual");
    // the demo's appointments are in chairs 1 and 2, which are gone
    assertTrue(app.get(PAGE).body().contains("do not fit these settings"));
    assertTrue(app.get("/day/" + LocalDate.now()).body().contains("there is no chair 1"));
    assertEquals(303, sent().statusCode());
    assertEquals(540, setting().lengthMin());
    assertFalse(app.get(PAGE).body().contains("do not fit these settings"));
  }

  @Test
  void aSlipIsToldBesideItsFieldAndNothingTypedIsLost() throws Exception {
    int before = app.practice().settings().read().version();
    HttpResponse<String> slip =
        sent("day.opens", "8", "day.load-grid-min", "3", "day.chairs", "1 1", "life.steel", "9");
    assertEquals(422, slip.statusCode());
    assertTrue(slip.body().contains("A whole number from 5 to 120."));
    assertTrue(slip.body().contains("such as 10:15"));
    assertTrue(slip.body().contains("none twice"));
    assertTrue(slip.body().contains("name=\"life.steel\" value=\"9\""), "kept as typed");
    assertEquals(before, app.practice().settings().read().version());
    assertTrue(
        sent("day.opens", "22:00", "day.length-min", "180").body().contains("after midnight"));
  }

  @Test
  void backToUsualSavesNothingUntilItIsSaved() throws Exception {
    assertEquals(303, sent("day.length-min", "480", "life.disc", "3").statusCode());
    HttpResponse<String> emptied =
        sent("day.length-min", "480", "life.disc", "3", "reset", "day.length-min");
    assertTrue(emptied.body().contains("name=\"day.length-min\" value=\"\""));
    assertTrue(emptied.body().contains("name=\"life.disc\" value=\"3\""));
    assertEquals(480, setting().lengthMin());
  }

  @Test
  void twoWhoChangeAtOnceAreToldAndNothingTypedIsLost() throws Exception {
    int seen = app.practice().settings().read().version();
    assertEquals(303, sent("life.stone", "4").statusCode());
    HttpResponse<String> late =
        app.post(PAGE, "life.stone", "6", "version", Integer.toString(seen));
    assertEquals(409, late.statusCode());
    assertTrue(late.body().contains("name=\"life.stone\" value=\"6\""));
    assertTrue(late.body().contains("In use now: 4"));
  }

  @Test
  void sterilisersThatHaveNamesAreCountedByThem() {
    SettingValues named =
        new SettingValues(1, java.util.Map.of("reprocessing.sterilisers", "S1 S2 S3"));
    assertEquals(3, DaySetting.of(named).sterilisers().sterilisers());
  }
}
