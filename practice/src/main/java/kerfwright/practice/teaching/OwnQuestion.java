package kerfwright.practice.teaching;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Message;

/**
 * A question of the teacher's own.
 *
 * @param id names it
 * @param version 1 for the first, counted up with every change
 * @param text what is asked
 * @param answers four answers, the right one first
 * @param why the explanation, may be empty
 * @param source where it comes from; empty where it is the teacher's own
 */
public record OwnQuestion(
    UUID id, int version, String text, List<String> answers, String why, String source) {
  /** Longest text of a question, an answer, an explanation. */
  public static final int LONGEST = 400;

  public OwnQuestion {
    answers = List.copyOf(answers);
  }

  /** The version after this one, with the same words. */
  public OwnQuestion next() {
    return new OwnQuestion(id, version + 1, text, answers, why, source);
  }

  /** What is missing or too long, as keys of texts; empty where all is well. */
  public List<String> faults() {
    List<String> faults = new ArrayList<>();
    List<String> all = new ArrayList<>(answers);
    all.add(text);
    if (text.isBlank()) {
      faults.add("learner.fault-text");
    }
    if (answers.size() != Question.OPTIONS || answers.stream().anyMatch(String::isBlank)) {
      faults.add("learner.fault-answers");
    } else if (answers.stream().map(String::strip).distinct().count() < Question.OPTIONS) {
      faults.add("learner.fault-same");
    }
    all.add(why);
    all.add(source);
    if (all.stream().anyMatch(one -> one.length() > LONGEST)) {
      faults.add("learner.fault-long");
    }
    return faults;
  }

  /** As a question of a set, its answers mixed. */
  Question posed(Random random) {
    List<String> mixed = new ArrayList<>(answers);
    Collections.shuffle(mixed, random);
    return new Question(
        "own",
        Topic.OWN,
        Message.of("learner.plain", text),
        null,
        mixed.stream().map(one -> Message.of("learner.plain", one)).toList(),
        mixed.indexOf(answers.get(0)),
        source.isEmpty()
            ? Message.of("learner.why-own", why)
            : Message.of("learner.why-own-source", why, source),
        Basis.COMMON_PRACTICE,
        List.of());
  }
}
