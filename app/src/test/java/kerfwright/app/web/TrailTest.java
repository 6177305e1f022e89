package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.List;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.people.Trail;
import kerfwright.practice.people.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who saw, exported and changed what stands in a chain, and only the owner sees it. */
class TrailTest {
  private static final Trail.Query ALL =
      new Trail.Query("", "", Instant.EPOCH, Instant.parse("2200-01-01T00:00:00Z"));

  @Test
  void whatPeopleSeeExportAndChangeIsNoted() throws Exception {
    try (Staffed practice = new Staffed()) {
      Trail trail = new Trail(practice.app.practice().database());
      String clinician = practice.device(Role.CLINICIAN);
      String owner = practice.device(Role.OWNER);
      practice.get(clinician, "/records?case=K-0398");
      practice.post(clinician, "/drawer/move", "secret", "a-value-typed");
      practice.get(clinician, "/people");
      practice.get(clinician, "/restock.csv");
      practice.get(clinician, "/drawer");
      practice.post("a=b", "/sign-in", "initials", "AS", "password", "wrong one entirely");
      List<String> said =
          trail.find(ALL, 100).stream()
              .map(one -> one.entry())
              .map(one -> one.who() + " " + one.act().id() + " " + one.what())
              .toList();
      assertTrue(said.contains("CL saw GET /records K-0398"), said.toString());
      assertTrue(said.contains("CL changed POST /drawer/move"), said.toString());
      assertTrue(said.contains("CL refused GET /people"), said.toString());
      assertTrue(said.contains("CL exported GET /restock.csv"), said.toString());
      assertTrue(said.contains("AS sign-in-refused 127.0.0.1"), said.toString());
      assertFalse(said.toString().contains("a-value-typed"));
      HttpResponse<String> page = practice.get(owner, "/trail?who=CL&what=k-0398&check=1");
      assertEquals(200, page.statusCode());
      assertTrue(page.body().contains(">/records K-0398<"), page.body());
      assertFalse(page.body().contains("/restock.csv</td>"), page.body());
      assertTrue(page.body().contains("The chain holds"), page.body());
      assertEquals(200, practice.get(owner, "/trail?until=9999-12-31").statusCode());
      assertTrue(practice.get(owner, "/trail.csv").body().contains("K-0398"));
      assertEquals(403, practice.get(clinician, "/trail.csv").statusCode());
    }
  }

  @Test
  void everyWayToTamperIsFound(@TempDir java.nio.file.Path folder) throws Exception {
    for (String tampering :
        List.of(
            "UPDATE trail SET line = replace(line, 'K-1', 'K-2') WHERE number = 2",
            "UPDATE trail SET who = 'ZZ' WHERE number = 2",
            "DELETE FROM trail WHERE number = 2",
            "DELETE FROM trail WHERE number = 3")) {
      java.nio.file.Path file = folder.resolve("t" + tampering.hashCode() + ".db");
      try (Database database = Database.file(file)) {
        Trail trail = new Trail(database);
        for (int i = 0; i < 3; i++) {
          trail.add(
              new Trail.Entry(Instant.ofEpochSecond(i), "AB", Trail.Act.SAW, "GET /records K-1"));
        }
        assertTrue(trail.check().holds());
        try (var connection = java.sql.DriverManager.getConnection("jdbc:sqlite:" + file);
            var statement = connection.createStatement()) {
          assertEquals(1, statement.executeUpdate(tampering));
        }
        assertFalse(trail.check().holds(), tampering);
      }
    }
  }
}
