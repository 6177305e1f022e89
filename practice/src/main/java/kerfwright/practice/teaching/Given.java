package kerfwright.practice.teaching;

import java.time.Instant;
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
    Instant at) {}
