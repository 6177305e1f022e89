package kerfwright.practice.teaching;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import kerfwright.practice.teaching.Question.Picture;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Message;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * A question before its answers are chosen. One call says of any answer whether it holds: the right
 * one must, and only those that do not may stand beside it.
 *
 * @param asked the question
 * @param picture what is drawn, or null
 * @param right the right answer
 * @param pool what else may be answered; what holds as well is left out
 * @param holds the call
 * @param off how far an answer lies from the right one
 * @param words an answer in words
 * @param why the explanation
 * @param basis how sure it is
 * @param sources where it comes from
 */
record Puzzle<T>(
    Message asked,
    @Nullable Picture picture,
    T right,
    List<T> pool,
    Predicate<T> holds,
    ToDoubleFunction<T> off,
    Function<T, Message> words,
    Message why,
    Basis basis,
    List<SourceKey> sources) {
  private static final int WRONG = Question.OPTIONS - 1;

  /** A finished question and the call that proves each of its answers. */
  record Posed(Question question, IntPredicate holds) {}

  Posed pose(Kind kind, Level level, Random random) {
    if (!holds.test(right)) {
      throw new IllegalStateException(kind + ": the right answer does not hold: " + right);
    }
    Map<Message, T> wrong = new LinkedHashMap<>();
    pool.stream()
        .filter(holds.negate())
        .sorted(Comparator.comparingDouble(off))
        .forEach(one -> wrong.putIfAbsent(words.apply(one), one));
    wrong.remove(words.apply(right));
    if (wrong.size() < WRONG) {
      throw new IllegalStateException(kind + ": fewer than three wrong answers to " + asked);
    }
    List<T> answers = new ArrayList<>(level.pick(new ArrayList<>(wrong.values()), WRONG, random));
    answers.add(right);
    Collections.shuffle(answers, random);
    Question question =
        new Question(
            kind.id(),
            kind.topic(),
            asked,
            picture,
            answers.stream().map(words).toList(),
            answers.indexOf(right),
            why,
            basis,
            sources);
    return new Posed(question, option -> holds.test(answers.get(option)));
  }

  /** The greatest of some values is asked for: the others are less by the same function. */
  static <T> Puzzle<T> greatest(
      Message asked,
      List<T> pool,
      ToDoubleFunction<T> value,
      double apart,
      Function<T, Message> words,
      Function<T, Message> why,
      Random random) {
    Map<T, Double> values = new LinkedHashMap<>();
    pool.forEach(one -> values.put(one, value.applyAsDouble(one)));
    ToDoubleFunction<T> known = one -> values.getOrDefault(one, 0.0);
    List<T> able =
        pool.stream()
            .filter(
                one ->
                    pool.stream()
                            .filter(o -> known.applyAsDouble(o) < known.applyAsDouble(one) - apart)
                            .map(words)
                            .distinct()
                            .count()
                        >= WRONG)
            .toList();
    if (able.isEmpty()) {
      throw new IllegalStateException("Nothing stands out: " + asked);
    }
    T right = able.get(random.nextInt(able.size()));
    double most = value.applyAsDouble(right);
    return new Puzzle<>(
        asked,
        null,
        right,
        pool.stream().filter(one -> known.applyAsDouble(one) < most - apart).toList(),
        one -> value.applyAsDouble(one) >= most,
        one -> most - known.applyAsDouble(one),
        words,
        why.apply(right),
        Basis.DERIVED,
        List.of());
  }
}
