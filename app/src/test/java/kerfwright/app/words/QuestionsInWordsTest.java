package kerfwright.app.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
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
          String asked = say.of(question.asked());
          assertFalse(asked.contains("{"), asked);
          assertFalse(say.of(question.why()).isBlank());
          Set<String> options = new HashSet<>();
          for (int i = 0; i < Question.OPTIONS; i++) {
            options.add(QuestionWords.option(say, question, i));
          }
          assertEquals(Question.OPTIONS, options.size(), language + ": " + asked + options);
          if (question.kind().equals("shape")) {
            String drawn = QuestionWords.drawing(say, question, "q").replaceAll("<[^>]+>", " ");
            String right = QuestionWords.option(say, question, question.right());
            Pattern told =
                Pattern.compile(
                    "\\b" + Pattern.quote(right) + "\\b",
                    Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
            assertFalse(told.matcher(drawn).find(), right + " is told: " + drawn);
          }
        }
      }
    }
  }
}
