package kerfwright.practice.teaching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Of four answers one is right and three are proven wrong by the same call, whatever the seed. */
class QuestionsTest {
  private static final int SEEDS = 25;

  @ParameterizedTest
  @EnumSource(Kind.class)
  void oneAnswerHoldsAndThreeDoNot(Kind kind) {
    for (Level level : Level.values()) {
      for (long seed = 0; seed < SEEDS; seed++) {
        Puzzle.Posed posed = kind.pose(level, new Random(seed));
        Question question = posed.question();
        String about = kind + " " + level + " " + seed + ": " + question;
        for (int option = 0; option < Question.OPTIONS; option++) {
          assertEquals(option == question.right(), posed.holds().test(option), about);
        }
        assertEquals(Question.OPTIONS, new HashSet<>(question.options()).size(), about);
      }
    }
  }

  @Test
  void whatHoldsAsWellNeverStandsBesideTheRightAnswer() {
    Puzzle<Integer> even = even(List.of(2, 4, 6, 7, 8, 9, 11, 13));
    for (int seed = 0; seed < SEEDS; seed++) {
      Question question = even.pose(Kind.TOOTH, Level.HARD, new Random(seed)).question();
      assertEquals(
          1,
          question.options().stream()
              .filter(one -> (Integer) one.values().get(0) % 2 == 0)
              .count());
    }
    assertThrows(
        IllegalStateException.class,
        () -> even(List.of(4, 6, 7, 9)).pose(Kind.TOOTH, Level.EASY, new Random(1)),
        "two wrong answers are too few");
    Puzzle<Integer> false3 = even(List.of(7, 9, 11));
    assertThrows(
        IllegalStateException.class,
        () ->
            new Puzzle<>(
                    false3.asked(),
                    null,
                    3,
                    false3.pool(),
                    false3.holds(),
                    false3.off(),
                    false3.words(),
                    false3.why(),
                    Basis.SEEN,
                    List.of())
                .pose(Kind.TOOTH, Level.EASY, new Random(1)),
        "what does not hold is not right");
  }

  private static Puzzle<Integer> even(List<Integer> pool) {
    return new Puzzle<>(
        Message.of("learner.plain", "even?"),
        null,
        2,
        pool,
        one -> one % 2 == 0,
        one -> Math.abs(one - 2),
        one -> Message.of("learner.plain", one),
        Message.of("learner.plain", "2"),
        Basis.SEEN,
        List.of());
  }

  @Test
  void harderQuestionsHaveNearerAnswers() {
    Puzzle<Integer> numbers = even(List.of(3, 5, 7, 9, 11, 13, 15, 17, 19, 21, 23, 25, 27, 29, 31));
    assertTrue(farthest(numbers, Level.HARD) <= 11);
    assertTrue(nearest(numbers, Level.EASY) >= 23);
    assertTrue(nearest(numbers, Level.MEDIUM) > 5 && farthest(numbers, Level.MEDIUM) < 29);
  }

  private static int farthest(Puzzle<Integer> numbers, Level level) {
    return wrong(numbers, level).stream().mapToInt(Integer::intValue).max().orElseThrow();
  }

  private static int nearest(Puzzle<Integer> numbers, Level level) {
    return wrong(numbers, level).stream().mapToInt(Integer::intValue).min().orElseThrow();
  }

  private static List<Integer> wrong(Puzzle<Integer> numbers, Level level) {
    List<Integer> all = new ArrayList<>();
    for (int seed = 0; seed < SEEDS; seed++) {
      numbers.pose(Kind.TOOTH, level, new Random(seed)).question().options().stream()
          .map(one -> (Integer) one.values().get(0))
          .filter(one -> one != 2)
          .forEach(all::add);
    }
    return all;
  }

  private static QuestionSet set(long seed, int count, List<Topic> topics, OwnQuestion... own) {
    return new QuestionSet(
        new UUID(1, 2), Instant.EPOCH, seed, Level.MEDIUM, topics, count, List.of(own));
  }

  @Test
  void aSeedGivesItsQuestionsAndNoneTwice() {
    for (long seed = 1; seed <= 8; seed++) {
      List<Question> questions = set(seed, 40, List.of(Topic.values())).questions();
      assertEquals(40, questions.size());
      assertEquals(40, new HashSet<>(questions.stream().map(Question::same).toList()).size());
      assertEquals(questions, set(seed, 40, List.of(Topic.values())).questions());
      assertNotEquals(questions, set(seed + 1, 40, List.of(Topic.values())).questions());
    }
  }

  @Test
  void aNarrowTopicGivesFewerRatherThanOneTwice() {
    List<Question> questions = set(3, 60, List.of(Topic.REPROCESSING)).questions();
    assertTrue(questions.size() > 12 && questions.size() < 60, "" + questions.size());
    assertEquals(
        questions.size(), new HashSet<>(questions.stream().map(Question::same).toList()).size());
    assertTrue(questions.stream().allMatch(one -> one.topic() == Topic.REPROCESSING));
  }

  @Test
  void thereAreThousandsOfQuestionsOfAtLeastTwelveKinds() {
    Set<List<Object>> different = new HashSet<>();
    for (Kind kind : Kind.values()) {
      boolean numbers = kind == Kind.READ_NUMBER || kind == Kind.WRITE_NUMBER;
      int seeds = numbers ? 1000 : SEEDS;
      for (long seed = 0; seed < seeds; seed++) {
        different.add(kind.pose(Level.MEDIUM, new Random(seed)).question().same());
      }
    }
    assertTrue(different.size() > 2000, different.size() + " different questions");
    assertTrue(Kind.values().length >= 12);
  }

  @Test
  void ownQuestionsComeWithTheirOwnAnswers() {
    OwnQuestion own =
        new OwnQuestion(new UUID(3, 4), 1, "Which?", List.of("yes", "a", "b", "c"), "", "");
    List<Question> questions = set(5, 10, List.of(Topic.OWN, Topic.NUMBERS), own).questions();
    Question mine =
        questions.stream().filter(one -> one.topic() == Topic.OWN).findFirst().orElseThrow();
    assertEquals(Message.of("learner.plain", "yes"), mine.options().get(mine.right()));
    assertEquals(List.of(), own.faults());
    assertEquals(
        List.of("learner.fault-text", "learner.fault-same"),
        new OwnQuestion(own.id(), 1, " ", List.of("a", "a", "b", "c"), "", "").faults());
  }

  @Test
  void anAliasIsShortAndHasNoRoomForAName() {
    assertEquals("blue-7", Alias.of(" blue-7 ").orElseThrow());
    for (String no : List.of("", "a", "Anna Schmidt", "averyverylongone", "<b>", "-x", "a@b.c")) {
      assertTrue(Alias.of(no).isEmpty(), no);
    }
  }
}
