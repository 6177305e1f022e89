package kerfwright.practice.teaching;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A set of questions. Seed, level, topics and own questions decide every one of them, so that
 * nothing else need be kept.
 *
 * @param id names the set
 * @param at when it was made, to the microsecond
 * @param seed the same seed gives the same questions
 * @param level how near the wrong answers lie
 * @param topics what it is about; the teacher's own where {@link Topic#OWN} is among them
 * @param count how many questions
 * @param own the teacher's questions as they were when the set was made
 */
public record QuestionSet(
    UUID id,
    Instant at,
    long seed,
    Level level,
    List<Topic> topics,
    int count,
    List<OwnQuestion> own) {
  /** Most questions of a set. */
  public static final int MOST = 60;

  private static final int TRIES = 400;

  public QuestionSet {
    topics = List.copyOf(topics);
    own = List.copyOf(own);
    if (count < 1 || count > MOST || topics.isEmpty()) {
      throw new IllegalArgumentException(count + " questions on " + topics);
    }
  }

  /** Its questions in order, none twice; fewer where the topics do not hold as many. */
  public List<Question> questions() {
    return questions(any -> true);
  }

  /**
   * The same without those that are not clear.
   *
   * @param clear whether the words of a question leave no doubt; the same for the same question
   */
  public List<Question> questions(Predicate<Question> clear) {
    Random random = new Random(seed);
    List<Question> all = new ArrayList<>();
    if (topics.contains(Topic.OWN)) {
      own.stream().limit(count).forEach(one -> all.add(one.posed(random)));
    }
    List<Kind> kinds =
        new ArrayList<>(
            Stream.of(Kind.values()).filter(kind -> topics.contains(kind.topic())).toList());
    Collections.shuffle(kinds, random);
    Set<List<Object>> seen = new HashSet<>();
    for (int i = 0; i < TRIES && all.size() < count && !kinds.isEmpty(); i++) {
      Question next = kinds.get(i % kinds.size()).pose(level, random).question();
      if (clear.test(next) && seen.add(next.same())) {
        all.add(next);
      }
    }
    Collections.shuffle(all, random);
    return List.copyOf(all);
  }
}
