package kerfwright.practice.teaching;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A set worked through together: the teacher leads, learners answer under an alias. Safe for many
 * threads; lasts as long as the class.
 */
public final class ClassRoom {
  /** Most learners of a class. */
  public static final int MOST = 200;

  /** Where the class stands. */
  public enum Stage {
    JOINING,
    ASKING,
    SHOWING,
    ENDED
  }

  /** What became of an answer. */
  public enum Taken {
    YES,
    BEFORE,
    TOO_LATE,
    STRANGER
  }

  /**
   * What the class looks like at one moment.
   *
   * @param step counts up with everything phones must show anew
   * @param stage where it stands
   * @param number the question, 1 for the first; 0 before it
   * @param count questions in all
   * @param question the present one, null before the first
   * @param joined learners who joined
   * @param spread answers by option
   */
  public record Seen(
      int step,
      Stage stage,
      int number,
      int count,
      @Nullable Question question,
      int joined,
      List<Integer> spread) {
    public int answered() {
      return spread.stream().mapToInt(Integer::intValue).sum();
    }
  }

  private final String code;
  private final QuestionSet set;
  private final List<Question> questions;
  private final Map<String, String> aliasByKey = new HashMap<>();
  private final Set<String> taken = new TreeSet<>();
  private final Map<Integer, Map<String, Integer>> votes = new HashMap<>();
  private Stage stage = Stage.JOINING;
  private int number;
  private int step = 1;

  /** A class on the questions of a set. */
  public ClassRoom(String code, QuestionSet set, List<Question> questions) {
    this.code = code;
    this.set = set;
    this.questions = List.copyOf(questions);
  }

  public String code() {
    return code;
  }

  /**
   * Lets somebody in.
   *
   * @param key what the phone shows from now on, known to nobody else
   * @return false where the alias is taken, the class is full or over
   */
  public synchronized boolean join(String key, String alias) {
    boolean full = aliasByKey.size() >= MOST || stage == Stage.ENDED;
    if (full || !taken.add(alias.toLowerCase(Locale.ROOT))) {
      return false;
    }
    aliasByKey.put(key, alias);
    return true;
  }

  /** Who shows this key. */
  public synchronized Optional<String> alias(@Nullable String key) {
    return Optional.ofNullable(key).map(aliasByKey::get);
  }

  /** Takes an answer to the question that is asked now; the first of a learner counts. */
  public synchronized Taken answer(@Nullable String key, int asked, int option) {
    String alias = key == null ? null : aliasByKey.get(key);
    if (alias == null || option < 0 || option >= Question.OPTIONS) {
      return Taken.STRANGER;
    }
    if (stage != Stage.ASKING || asked != number) {
      return Taken.TOO_LATE;
    }
    Map<String, Integer> here = votes.computeIfAbsent(number, any -> new HashMap<>());
    return here.putIfAbsent(alias, option) == null ? Taken.YES : Taken.BEFORE;
  }

  /** What somebody answered to the present question. */
  public synchronized Optional<Integer> answered(String alias) {
    return Optional.ofNullable(votes.getOrDefault(number, Map.of()).get(alias));
  }

  public synchronized Seen look() {
    List<Integer> spread = new ArrayList<>(List.of(0, 0, 0, 0));
    votes
        .getOrDefault(number, Map.of())
        .values()
        .forEach(option -> spread.set(option, spread.get(option) + 1));
    Question question = number == 0 ? null : questions.get(number - 1);
    int joined = aliasByKey.size();
    return new Seen(step, stage, number, questions.size(), question, joined, List.copyOf(spread));
  }

  /** The teacher's one button: ask, show the answer, ask the next, end after the last. */
  public synchronized void on(int seenStep) {
    if (seenStep != step) {
      return;
    }
    step++;
    switch (stage) {
      case JOINING, SHOWING -> {
        boolean more = number < questions.size();
        stage = more ? Stage.ASKING : Stage.ENDED;
        number = more ? number + 1 : number;
      }
      case ASKING -> stage = Stage.SHOWING;
      case ENDED -> step--;
    }
  }

  /** Every answer of the class, as they are kept at this moment. */
  public synchronized List<Given> given(Instant now) {
    List<Given> all = new ArrayList<>();
    votes.forEach(
        (asked, here) ->
            here.forEach(
                (alias, option) ->
                    all.add(
                        Given.of(set.id(), alias, asked, questions.get(asked - 1), option, now))));
    return all;
  }
}
