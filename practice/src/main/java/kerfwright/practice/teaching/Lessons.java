package kerfwright.practice.teaching;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Where own questions, sets and answers are kept. */
public interface Lessons {
  /** Own questions, the newest first. */
  List<OwnQuestion> questions();

  Optional<OwnQuestion> question(UUID id);

  /**
   * Keeps a new question, or a changed one as the version after the one that is kept.
   *
   * @return false where somebody else changed it first, and nothing is kept
   */
  boolean keep(OwnQuestion question);

  /** Forgets a question; sets made with it keep it. */
  void forget(UUID question);

  void keep(QuestionSet set);

  Optional<QuestionSet> set(UUID id);

  /**
   * Keeps an answer.
   *
   * @return false where this question was answered before, and nothing is kept
   */
  boolean answer(Given given);

  /** Answers to a set under an alias, in the order of the questions. */
  List<Given> answers(UUID set, String alias);

  /** Every answer under an alias, oldest first; of all aliases where it is empty. */
  List<Given> answers(String alias);

  /** Who answered before, in order of the alphabet. */
  List<String> aliases();

  /** Forgets everything under an alias. */
  void forget(String alias);
}
