package kerfwright.app.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import kerfwright.app.learner.QuestionWords;
import kerfwright.practice.teaching.Level;
import kerfwright.practice.teaching.Question;
import kerfwright.practice.teaching.QuestionSet;
import kerfwright.practice.teaching.Topic;
import org.junit.jupiter.api.Test;

/** Made questions have their words in both languages, four different answers, and no hint drawn. */
class QuestionsInWordsTest {
  @Test
  void everyQuestionIsSaidInBothLanguages() {
    for (long seed = 1; seed <= 12; seed++) {
      Level level = Level.values()[(int) (seed % 3)];
      QuestionSet set =
          new QuestionSet(
              new UUID(1, seed),
              Instant.EPOCH,
              seed,
              level,
              List.of(Topic.values()),
              60,
              List.of());
      for (Question question : QuestionWords.of(set)) {
        for (Language language : Language.values()) {
          Say say = Say.in(language);
          String asked = QuestionWords.asked(say, question);
          assertFalse(asked.contains("{"), asked);
          assertFalse(QuestionWords.why(say, question).isBlank());
          Set<String> options = new HashSet<>();
          for (int i = 0; i < Question.OPTIONS; i++) {
            options.add(QuestionWords.option(say, question, i));
          }
          assertEquals(Question.OPTIONS, options.size(), language + ": " + asked + options);
          if (question.kind().equals("shape")) {
            String drawn =
                QuestionWords.drawing(say, question, "q").replaceAll("<[^>]+>", " ");
            String right = QuestionWords.option(say, question, question.right());
            assertFalse(
                drawn.toLowerCase(Locale.ROOT).contains(right.toLowerCase(Locale.ROOT)),
                right + " is told");
          }
        }
      }
    }
  }
}
