package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.teaching.Handouts;
import kerfwright.practice.handout.Handout;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every storage of handouts keeps to. */
abstract class HandoutContractTest {
  private static final Instant EIGHT = Instant.parse("2026-03-02T08:00:00.123456Z");

  private Database database;
  private Handouts handouts;

  abstract Database open() throws Exception;

  @BeforeEach
  void openHandouts() throws Exception {
    database = open();
    handouts = new Handouts(database);
  }

  @AfterEach
  void close() {
    database.close();
  }

  private Handout kept(Instant at, String title) {
    Handout one =
        new Handout(UUID.randomUUID(), 1, at, "/teach/show/chip?layer=dentine", title, "Äußeres");
    assertTrue(handouts.keep(one));
    return one;
  }

  private static Handout second(Handout first, Instant at, String title, String words) {
    return new Handout(first.id(), 2, at, first.subject(), title, words);
  }

  @Test
  void aChangeAddsAVersionAndWritesNoneOver() {
    Handout first = kept(EIGHT, "Chips");
    Handout second = second(first, EIGHT.plusSeconds(60), "Späne", "two\nlines");
    assertTrue(handouts.keep(second));
    assertFalse(
        handouts.keep(second(first, EIGHT.plusSeconds(90), "other", "")), "one was quicker");
    assertEquals(Optional.of(second), handouts.find(first.id()));
    assertEquals(List.of(second), handouts.newest(10));
  }

  @Test
  void theNewestComeFirstAndNoMoreThanAsked() {
    Handout early = kept(EIGHT.plusSeconds(60), "A");
    Handout late = kept(EIGHT, "the clock had been ahead and was put right");
    assertEquals(List.of(late, early), handouts.newest(10));
    assertEquals(List.of(late), handouts.newest(1));
    assertEquals(Optional.empty(), handouts.find(UUID.randomUUID()));
  }
}
