package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import kerfwright.app.storage.people.Accounts;
import kerfwright.app.storage.people.Authenticators;
import kerfwright.app.storage.people.ProgramTokens;
import kerfwright.app.storage.people.Sessions;
import kerfwright.app.storage.people.Trail;
import kerfwright.practice.people.Account;
import kerfwright.practice.people.ProgramToken;
import kerfwright.practice.people.Role;
import kerfwright.practice.people.Session;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** People, sessions, tokens and the trail, on both databases, opened twice as by two processes. */
class PeopleStorageTest {
  private static final Instant NOON = Instant.parse("2026-03-02T12:00:00.123456Z");

  @TempDir private Path folder;

  private static Account account(String initials, Role role) {
    return new Account(UUID.randomUUID(), 1, initials, role, true, "hash", "", null);
  }

  @Test
  void onSqlite() throws Exception {
    Path file = folder.resolve("people.db");
    try (Database one = Database.file(file);
        Database other = Database.file(file)) {
      keepsPeople(one, other);
      sharesSessions(one, other);
      chainsTheTrail(one, other);
      takesEachCodeOnce(one, other);
    }
  }

  @Test
  void onPostgres() throws Exception {
    String url = PostgresOfTests.newDatabase();
    try (Database one = Database.server(url);
        Database other = Database.server(url)) {
      keepsPeople(one, other);
      sharesSessions(one, other);
      chainsTheTrail(one, other);
      takesEachCodeOnce(one, other);
    }
  }

  private static void keepsPeople(Database one, Database other) {
    Accounts here = new Accounts(one);
    Accounts there = new Accounts(other);
    Account owner = account("OW", Role.OWNER);
    assertTrue(here.addFirst(owner));
    assertFalse(there.addFirst(account("XX", Role.OWNER)), "only the first");
    assertFalse(there.add(account("OW", Role.STUDENT)), "initials are taken");
    assertEquals(Optional.of(owner), there.find(owner.id()));
    assertFalse(here.change(owner.as(Role.STUDENT, true)), "no owner would be left");
    Account second = account("AB", Role.OWNER).withCode("code", NOON);
    assertTrue(here.add(second));
    assertEquals(Optional.of(second), there.named("AB"));
    assertTrue(here.change(owner.as(Role.CLINICIAN, true)));
    assertFalse(there.change(owner.as(Role.STUDENT, true)), "somebody was quicker");
    assertEquals(List.of("AB", "OW"), there.all().stream().map(Account::initials).toList());
    ProgramTokens tokens = new ProgramTokens(one);
    ProgramToken token =
        new ProgramToken(
            UUID.randomUUID(),
            "lists",
            ProgramToken.Scope.ORDER,
            "h",
            "OW",
            NOON,
            NOON.plusSeconds(9));
    tokens.add(token);
    assertEquals(Optional.of(token), new ProgramTokens(other).find("h"));
    tokens.end(token.id());
    assertEquals(List.of(), new ProgramTokens(other).all());
  }

  private static void sharesSessions(Database one, Database other) {
    Sessions here = new Sessions(one);
    Sessions there = new Sessions(other);
    UUID who = UUID.randomUUID();
    Session session = Session.begun("a", who, "d", NOON);
    here.begin(session);
    assertEquals(Optional.of(session), there.find("a"));
    Session next = session.goneOnBy(who, "b", NOON, true).asLocked();
    assertTrue(there.replace("a", next));
    assertFalse(here.replace("a", next), "that one is gone");
    assertEquals(Optional.of(next), there.find("b"));
    here.leave("d", who, NOON.plusSeconds(60));
    here.leave("d", who, NOON.plusSeconds(300));
    there.prove("d", who, NOON);
    assertEquals(Map.of(who, new Sessions.Seat(NOON.plusSeconds(300), NOON)), there.seats("d"));
    there.noTaps("d");
    assertEquals(Map.of(who, new Sessions.Seat(Instant.EPOCH, NOON)), here.seats("d"));
    assertEquals(1, here.countPin("b"));
    assertEquals(2, there.countPin("b"));
    assertEquals(Sessions.Wait.NONE, here.change("x", any -> new Sessions.Wait(3, NOON)));
    assertEquals(new Sessions.Wait(3, NOON), there.change("x", any -> any));
    here.begin(Session.begun("c", who, "d", NOON));
    there.endAll(who, "c");
    assertTrue(here.find("b").isEmpty());
    assertEquals(Map.of(), here.seats("d"), "no tap brings them back");
    here.half("h", who, NOON);
    assertEquals(Optional.of(who), there.half("h", NOON.minusSeconds(1)));
    assertEquals(Optional.empty(), there.half("h", NOON));
    there.endAll(who, "c");
    assertEquals(Optional.empty(), here.half("h", NOON.minusSeconds(1)));
    here.tidy(NOON.plusSeconds(1));
    assertTrue(there.find("c").isEmpty());
  }

  private static void takesEachCodeOnce(Database one, Database other) {
    Authenticators here = new Authenticators(one);
    Authenticators there = new Authenticators(other);
    UUID who = UUID.randomUUID();
    assertTrue(here.begin(who, "OLD"));
    assertTrue(there.begin(who, "NEW"));
    assertFalse(here.take(who, 5), "not on yet");
    assertEquals(Set.of(), here.on());
    assertFalse(here.switchOn(who, "OLD", 5, List.of()), "another one began meanwhile");
    assertTrue(here.switchOn(who, "NEW", 5, List.of("a", "b")));
    assertFalse(there.switchOn(who, "NEW", 6, List.of("c")), "it is on");
    assertFalse(there.begin(who, "THIRD"), "it is on");
    assertEquals(Optional.of(new Authenticators.Authenticator("NEW", true)), there.find(who));
    assertFalse(there.take(who, 5));
    assertTrue(there.take(who, 6));
    assertFalse(here.take(who, 6));
    assertTrue(here.use(who, "a"));
    assertFalse(there.use(who, "a"));
    assertEquals(List.of("b"), there.standIns(who));
    assertEquals(Set.of(who), there.on());
    here.end(who);
    assertEquals(List.of(), there.standIns(who));
    assertEquals(Set.of(), there.on());
  }

  private static void chainsTheTrail(Database one, Database other) {
    Trail here = new Trail(one);
    Trail there = new Trail(other);
    for (int i = 0; i < 6; i++) {
      Trail.Act act = i % 2 == 0 ? Trail.Act.SAW : Trail.Act.CHANGED;
      (i % 2 == 0 ? here : there)
          .add(new Trail.Entry(NOON.plusSeconds(i), "AB", act, "GET /records/" + i + "_% K-1"));
    }
    assertTrue(here.check().holds());
    assertEquals(6, there.check().sound().number());
    Trail.Query part = new Trail.Query("AB", "/3_% k", Instant.EPOCH, NOON.plusSeconds(60));
    assertEquals(1, there.find(part, 10).size());
    Trail.Query early = new Trail.Query("", "", Instant.EPOCH, NOON.plusSeconds(2));
    assertEquals(List.of(2L, 1L), here.find(early, 10).stream().map(Trail.Line::number).toList());
  }
}
