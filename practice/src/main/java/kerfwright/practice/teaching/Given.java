package kerfwright.practice.teaching;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;

/**
 * An answer as it was given. The first one counts.
 *
 * @param set the set
 * @param alias who answered
 * @param number the question, 1 for the first
 * @param topic id of its topic
 * @param kind id of its kind
 * @param option the answer, 0 first
 * @param right whether it was right
 * @param at when, to the microsecond
 */
public record Given(
    UUID set,
    String alias,
    int number,
    String topic,
    String kind,
    int option,
    boolean right,
    Instant at) {
  /** An answer to a question of a set. */
  public static Given of(
      UUID set, String alias, int number, Question asked, int option, Instant now) {
    boolean right = option == asked.right();
    Instant at = now.truncatedTo(ChronoUnit.MICROS);
    return new Given(set, alias, number, asked.topic().id(), asked.kind(), option, right, at);
  }
}
