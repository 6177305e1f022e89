package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.UUID;
import kerfwright.app.Wiring;
import kerfwright.app.input.BadInput;
import kerfwright.app.web.caseform.FilledForm;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.people.Role;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.LoadEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Who did it is whoever is signed in, whatever a form or a device says. */
class WhoDidItTest {
  private Staffed practice;
  private String clinician;

  @BeforeEach
  void start() throws BadInput {
    practice = new Staffed();
    clinician = practice.device(Role.CLINICIAN);
  }

  @AfterEach
  void stop() {
    practice.close();
  }

  private StockItem anyItem() {
    RecordEntry entry = anyEntry();
    return practice
        .app
        .practice()
        .service()
        .drawer()
        .find(entry.use().instrument().id())
        .orElseThrow();
  }

  private RecordEntry anyEntry() {
    var record = practice.app.practice().record().record();
    return record.at(record.end().number()).orElseThrow();
  }

  private String newest(String path) throws Exception {
    return practice.get(clinician, path).body();
  }

  @Test
  void ofAUseEnteredFree() throws Exception {
    UUID id = UUID.randomUUID();
    HttpResponse<String> answer =
        practice.post(
            clinician,
            "/records/new",
            "id",
            id.toString(),
            "case",
            "K-0001",
            "tooth",
            "16",
            "instrument",
            anyItem().label(),
            "at",
            "2026-01-05T09:30",
            "by",
            "ZZ");
    assertEquals(303, answer.statusCode(), answer.body());
    RecordEntry entry = practice.app.practice().record().record().find(id).orElseThrow();
    assertEquals("CL", entry.use().by());
    String form = newest("/records/new");
    assertFalse(form.contains("value=\"AS\""), "nobody else is offered");
  }

  @Test
  void ofACorrection() throws Exception {
    RecordEntry wrong = anyEntry();
    UUID id = UUID.randomUUID();
    HttpResponse<String> answer =
        practice.post(
            clinician,
            "/records/" + wrong.id() + "/correct",
            "id",
            id.toString(),
            "reason",
            "another tooth",
            "corrector",
            "ZZ",
            "struck",
            "yes");
    assertEquals(303, answer.statusCode(), answer.body());
    String page = newest(Staffed.to(answer));
    assertTrue(page.contains("CL"), page);
    assertFalse(page.contains("ZZ"), page);
  }

  @Test
  void ofAFailedLoadAndARelease() throws Exception {
    Load load = practice.app.practice().loads().loads().newest(1).get(0);
    HttpResponse<String> answer =
        practice.post(
            clinician,
            "/reprocessing/load/" + load.id() + "/fail",
            "by",
            "ZZ",
            "reason",
            "door found open");
    assertEquals(303, answer.statusCode(), answer.body());
    Load failed = practice.app.practice().loads().loads().find(load.id()).orElseThrow();
    LoadEvent last = failed.events().get(failed.events().size() - 1);
    assertEquals("CL", last.by());
    String page = newest("/reprocessing/load/" + load.id());
    assertFalse(page.contains("value=\"AS\""), "nobody else is offered");
  }

  @Test
  void ofARunAndItsLog() throws Exception {
    String query = FilledForm.of(Wiring.production().demoCases().read().get(0)).query();
    HttpResponse<String> begun =
        practice.post(clinician, "/chairside", "query", query, "by", "ZZ", "read", "1");
    assertEquals(303, begun.statusCode());
    String place = Staffed.to(begun);
    UUID run = UUID.fromString(place.substring(place.lastIndexOf('/') + 1));
    assertEquals("CL", practice.app.practice().runs().find(run).orElseThrow().by());
    assertTrue(newest(place).contains("data-signed=\"CL\""));
    UUID other = UUID.randomUUID();
    String refused = log(entry(other, run, "ZZ"));
    assertTrue(refused.contains("\"stands\":false"), refused);
    assertTrue(practice.app.practice().record().record().find(other).isEmpty());
    UUID own = UUID.randomUUID();
    String stands = log(entry(own, run, "CL"));
    assertTrue(stands.contains("\"stands\":true"), stands);
    assertEquals(
        "CL", practice.app.practice().record().record().find(own).orElseThrow().use().by());
  }

  private String entry(UUID id, UUID run, String by) {
    return """
        [{"id": "%s", "run": "%s", "case": "K-0001", "tooth": 16, "step": 1, "item": "%s",
          "setRpm": 40000, "totalSeconds": 5, "mm3": {}, "by": "%s", "at": "2026-01-05T09:30:00Z"}]
        """
        .formatted(id, run, anyItem().id(), by);
  }

  private String log(String body) throws Exception {
    return practice
        .app
        .send(
            HttpRequest.newBuilder(URI.create(practice.app.address("/chairside/log")))
                .header("Cookie", clinician)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build())
        .body();
  }

  /** Where nobody signs in, it is as it was: with the printed address, the form says who. */
  @Test
  void withoutPeopleTheFormSaysWho() throws Exception {
    try (Served app = new Served(true, kerfwright.app.security.Doors.here(Staffed.START), "CODE")) {
      Load load = app.practice().loads().loads().newest(1).get(0);
      String some =
          app.practice().settings().read().values().keySet().stream()
              .filter(one -> one.startsWith("person."))
              .findFirst()
              .orElseThrow()
              .substring("person.".length());
      HttpResponse<String> answer =
          app.send(
              HttpRequest.newBuilder(
                      URI.create(app.address("/reprocessing/load/" + load.id() + "/fail")))
                  .header("Cookie", "kerfwright-start=" + Staffed.START)
                  .header("Origin", app.address(""))
                  .header("Content-Type", "application/x-www-form-urlencoded")
                  .POST(HttpRequest.BodyPublishers.ofString("by=" + some + "&reason=open"))
                  .build());
      assertEquals(303, answer.statusCode(), answer.body());
      Load failed = app.practice().loads().loads().find(load.id()).orElseThrow();
      assertEquals(some, failed.events().get(failed.events().size() - 1).by());
    }
  }
}
