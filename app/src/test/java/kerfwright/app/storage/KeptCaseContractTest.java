package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.cases.KeptCases;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.kept.KeptCase;
import kerfwright.practice.kept.KeptCaseQuery;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every storage of kept cases keeps to. */
abstract class KeptCaseContractTest {
  private static final Instant EIGHT = Instant.parse("2026-03-02T08:00:00.123456Z");
  private static final List<KeptCase.Step> STEPS =
      List.of(new KeptCase.Step("access-natural.outline", "D04", 200_000, 0.9, 41.5));

  private Database database;
  private KeptCases cases;

  abstract Database open() throws Exception;

  @BeforeEach
  void openCases() throws Exception {
    database = open();
    cases = new KeptCases(database);
  }

  @AfterEach
  void close() {
    database.close();
  }

  private KeptCase kept(String reference, int tooth, String procedure, Instant at) {
    KeptCase one =
        new KeptCase(
            UUID.randomUUID(),
            1,
            reference,
            new Tooth(tooth),
            procedure,
            at,
            "case=" + reference,
            STEPS);
    assertTrue(cases.keep(one));
    return one;
  }

  @Test
  void aChangeAddsAVersionAndWritesNoneOver() {
    KeptCase first = kept("K-0412", 16, "access-cavity", EIGHT);
    KeptCase second = first.next(EIGHT.plusSeconds(60), "case=K-0412&pulp=non-vital", List.of());
    assertTrue(cases.keep(second));
    assertFalse(cases.keep(first.next(EIGHT.plusSeconds(90), "other", STEPS)), "one was quicker");
    assertEquals(Optional.of(second), cases.find(first.id()));
    assertEquals(List.of(second, first), cases.versions(first.id()));
    assertEquals(List.of(second), cases.list(KeptCaseQuery.newest(10)));
    // the clock had been ahead and was put right
    KeptCase third = second.next(EIGHT.minusSeconds(60), "case=K-0412&pulp=vital", List.of());
    assertTrue(cases.keep(third));
    assertEquals(List.of(third, second, first), cases.versions(first.id()));
  }

  @Test
  void theNewestComeFirstAlsoWhereAClockWasAhead() {
    KeptCase early = kept("K-0412", 16, "access-cavity", EIGHT.plusSeconds(60));
    KeptCase late = kept("K-0413", 26, "access-cavity", EIGHT);
    assertEquals(List.of(late, early), cases.list(KeptCaseQuery.newest(10)));
  }

  @Test
  void oneIsFoundByReferenceToothAndProcedure() {
    KeptCase access = kept("K-Ö412", 16, "access-cavity", EIGHT);
    kept("K-Ö412", 16, "crown-preparation", EIGHT);
    assertEquals(
        Optional.of(access),
        cases.find("k-ö412", new Tooth(16), "access-cavity"),
        "large or small");
    assertEquals(Optional.empty(), cases.find("K-Ö412", new Tooth(26), "access-cavity"));
  }

  @Test
  void theListIsNarrowedByEveryField() {
    KeptCase early = kept("K-0412", 16, "access-cavity", EIGHT);
    KeptCase late = kept("K-0413", 26, "veneer-preparation", EIGHT.plusSeconds(86_400));
    assertEquals(List.of(late, early), cases.list(KeptCaseQuery.newest(10)));
    assertEquals(List.of(early), list("0412", null, null, null, null));
    assertEquals(List.of(), list("K_04", null, null, null, null), "a sign is no wildcard");
    assertEquals(List.of(late), list(null, new Tooth(26), null, null, null));
    assertEquals(List.of(late), list(null, null, "veneer-preparation", null, null));
    assertEquals(List.of(late), list(null, null, null, EIGHT.plusSeconds(1), null));
    assertEquals(List.of(early), list(null, null, null, null, EIGHT.plusSeconds(1)));
    assertEquals(List.of(early), cases.list(new KeptCaseQuery(null, null, null, null, null, 1, 1)));
  }

  private List<KeptCase> list(
      String reference, Tooth tooth, String procedure, Instant from, Instant until) {
    return cases.list(new KeptCaseQuery(reference, tooth, procedure, from, until, 0, 10));
  }

  @Test
  void theFirstLayoutOfTheDocumentIsStillRead() {
    database
        .jdbi()
        .useHandle(
            handle ->
                handle.execute(
                    "INSERT INTO kept_case (id, version, reference, reference_small, tooth,"
                        + " procedure_id, at_micros, document) VALUES (?, 1, 'K-1', 'k-1', 16,"
                        + " 'access-cavity', 0, ?)",
                    "0191d2a0-0000-7000-8000-000000000001",
                    "{\"kept\":1,\"form\":\"case=K-1\",\"steps\":[{\"operation\":"
                        + "\"access-natural.outline\",\"instrument\":\"D04\",\"setRpm\":200000.0,"
                        + "\"loadN\":0.9,\"cutS\":41.5}]}"));
    KeptCase read = cases.list(KeptCaseQuery.newest(1)).get(0);
    assertEquals("case=K-1", read.form());
    assertEquals(STEPS, read.steps());
    database
        .jdbi()
        .useHandle(handle -> handle.execute("UPDATE kept_case SET document = '{\"layout\":2}'"));
    assertThrows(IllegalStateException.class, () -> cases.list(KeptCaseQuery.newest(1)));
  }
}
