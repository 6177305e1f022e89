package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.kept.KeptCase;
import kerfwright.practice.kept.KeptCaseQuery;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** A planned case is kept, found again, changed, and put on the day. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class KeptPagesTest {
  private Served app;

  @BeforeAll
  void start() throws Exception {
    app = new Served();
  }

  @AfterAll
  void stop() {
    if (app != null) {
      app.close();
    }
  }

  private HttpResponse<String> plan(String reference, String tooth, String water) throws Exception {
    return app.post(
        "/plan",
        "case",
        reference,
        "procedure",
        "access-cavity",
        "tooth_pick",
        tooth,
        "pulp",
        "non-vital",
        "coolant_ml_per_min",
        water);
  }

  private List<KeptCase> kept(String reference) {
    return app.practice()
        .keptCases()
        .list(new KeptCaseQuery(reference, null, null, null, null, 0, 10));
  }

  @Test
  void aCaseIsKeptWhenItIsPlannedAndOnceOnly() throws Exception {
    HttpResponse<String> planned = plan("K-8001", "26", "50");
    assertEquals(303, planned.statusCode());
    String address = planned.headers().firstValue("Location").orElseThrow();
    assertTrue(address.startsWith("/plan?case=K-8001"), address);
    plan("K-8001", "26", "50");
    KeptCase one = kept("K-8001").get(0);
    assertEquals(1, one.version(), "the same case planned again adds nothing");
    assertFalse(one.steps().isEmpty(), "as planned");
    assertTrue(app.get(address).body().contains("/cases/" + one.id()), "the plan leads to it");
    String page = app.get("/cases/" + one.id()).body();
    assertTrue(page.contains(one.steps().get(0).instrument()), page);
    plan("K-8001", "26", "40");
    assertEquals(2, kept("K-8001").get(0).version());
    String changed = app.get("/cases/" + one.id()).body();
    assertTrue(changed.contains("Water at the tip"), "what was changed is told");
  }

  @Test
  void aCaseWithoutAReferenceIsPlannedButNotKept() throws Exception {
    int before = app.practice().keptCases().list(KeptCaseQuery.newest(500)).size();
    assertEquals(303, plan("", "26", "50").statusCode());
    assertEquals(before, app.practice().keptCases().list(KeptCaseQuery.newest(500)).size());
    assertEquals(422, plan("K-8002", "99", "50").statusCode());
    assertEquals(List.of(), kept("K-8002"));
  }

  @Test
  void casesAreFoundAndAFieldThatCannotBeReadIsTold() throws Exception {
    plan("K-8003", "36", "50");
    assertTrue(app.get("/cases?reference=8003&tooth=36").body().contains("K-8003"));
    assertFalse(app.get("/cases?reference=8003&tooth=37").body().contains("K-8003"));
    assertTrue(app.get("/cases?tooth=99").body().contains("No such tooth"));
    assertTrue(app.get("/cases?from=soon").body().contains("year-month-day"));
    assertEquals(404, app.get("/cases/none").statusCode());
  }

  @Test
  void severalCasesOfOneAppointmentShareATray() throws Exception {
    plan("K-8004", "36", "50");
    plan("K-8004", "46", "50");
    List<KeptCase> both = kept("K-8004");
    assertEquals(2, both.size());
    LocalDate day = LocalDate.now().plusDays(20);
    String form = app.get("/day/" + day + "/booking?case=" + both.get(0).id()).body();
    Matcher ticked = Pattern.compile("value=\"" + both.get(0).id() + "\" checked").matcher(form);
    assertTrue(form.contains("value=\"K-8004\"") && ticked.find(), form);
    HttpResponse<String> booked =
        app.post(
            "/day/" + day + "/booking",
            "reference",
            "K-8004",
            "chair",
            "1",
            "start",
            "09:00",
            "minutes",
            "60",
            "kept",
            both.get(0).id().toString(),
            "kept",
            both.get(1).id().toString());
    assertEquals(303, booked.statusCode(), booked.body());
    Booking booking = app.practice().days().read(day).bookings().get(0);
    long types = booking.needs().stream().map(need -> need.type()).distinct().count();
    assertEquals(types, booking.needs().size(), "each type once");
    assertTrue(booking.needs().size() >= 2, booking.needs().toString());
    String tray = app.get("/day/" + day + "/tray?id=" + booking.id()).body();
    for (KeptCase one : both) {
      assertTrue(tray.contains("/cases/" + one.id()), "the tray leads to its cases");
    }
  }
}
