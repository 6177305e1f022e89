package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.teaching.Lessons;
import kerfwright.practice.teaching.Given;
import kerfwright.practice.teaching.Level;
import kerfwright.practice.teaching.OwnQuestion;
import kerfwright.practice.teaching.QuestionSet;
import kerfwright.practice.teaching.Topic;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every storage of lessons keeps to. */
abstract class LessonsContractTest {
  private static final Instant EIGHT = Instant.parse("2026-03-02T08:00:00.123456Z");
  private static final OwnQuestion OWN =
      new OwnQuestion(
          new UUID(7, 1), 1, "Wofür, \"bitte\"?", List.of("a", "b", "c", "d"), "darum", "");
  private static final QuestionSet SET =
      new QuestionSet(
          new UUID(8, 1), EIGHT, -42, Level.HARD, List.of(Topic.OWN, Topic.HEAT), 12, List.of(OWN));

  private Database database;
  private Lessons lessons;

  abstract Database open() throws Exception;

  @BeforeEach
  void openLessons() throws Exception {
    database = open();
    lessons = new Lessons(database);
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void aQuestionIsKeptChangedOnceAndForgotten() {
    assertTrue(lessons.keep(OWN));
    assertFalse(lessons.keep(OWN), "it is there already");
    OwnQuestion second =
        new OwnQuestion(OWN.id(), 2, "Wozu?", OWN.answers(), OWN.why(), "a book, page 3");
    assertTrue(lessons.keep(second));
    assertFalse(lessons.keep(second), "somebody was quicker");
    assertEquals(Optional.of(second), lessons.question(OWN.id()));
    assertEquals(List.of(second), lessons.questions());
    lessons.forget(OWN.id());
    assertEquals(List.of(), lessons.questions());
  }

  @Test
  void aSetComesBackWithTheQuestionsItWasMadeWith() {
    lessons.keep(SET);
    assertEquals(Optional.of(SET), lessons.set(SET.id()));
    assertEquals(SET.questions(), lessons.set(SET.id()).orElseThrow().questions());
    assertEquals(Optional.empty(), lessons.set(new UUID(1, 1)));
  }

  @Test
  void theFirstAnswerOfAnAliasCounts() {
    Given first = new Given(SET.id(), "blue", 1, "heat", "warmest", 2, true, EIGHT);
    assertTrue(lessons.answer(first));
    assertFalse(lessons.answer(new Given(SET.id(), "blue", 1, "heat", "warmest", 3, false, EIGHT)));
    Given other = new Given(SET.id(), "red", 1, "heat", "warmest", 3, false, EIGHT);
    assertTrue(lessons.answer(other));
    assertEquals(List.of(first), lessons.answers(SET.id(), "blue"));
    assertEquals(List.of(first), lessons.answers("blue"));
    assertEquals(List.of(first, other), lessons.answers(""));
    assertEquals(List.of("blue", "red"), lessons.aliases());
    lessons.forget("blue");
    assertEquals(List.of("red"), lessons.aliases());
  }

  @Test
  void answersStandInTheOrderTheyWereGivenAlsoWhereAClockWasAhead() {
    Given first = new Given(SET.id(), "blue", 2, "heat", "warmest", 2, true, EIGHT.plusSeconds(60));
    Given second = new Given(SET.id(), "blue", 1, "heat", "warmest", 2, true, EIGHT);
    assertTrue(lessons.answer(first));
    assertTrue(lessons.answer(second));
    assertEquals(List.of(first, second), lessons.answers("blue"));
    assertEquals(List.of(first, second), lessons.answers(""));
  }
}
