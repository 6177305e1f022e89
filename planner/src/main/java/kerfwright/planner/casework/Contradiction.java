package kerfwright.planner.casework;

import kerfwright.quantity.Message;

/**
 * Two things a case says that cannot both be meant.
 *
 * @param field the field that is to be looked at, as in a case file
 * @param message one sentence
 * @param fix what to write instead
 */
public record Contradiction(String field, Message message, Fix fix) {
  /** What is wrong, by the last part of its text's key. */
  static Contradiction of(String what, String field, Fix fix, Object... values) {
    return new Contradiction(field, Message.of("fault.clash-" + what, values), fix);
  }
}
