package kerfwright.planner.casework;

import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

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

  /**
   * One line of a case to change.
   *
   * @param field name of the field in a case file
   * @param value what it is to hold; null where it is to be left out, so that the usual value
   *     stands
   */
  public record Fix(String field, @Nullable String value) {
    static Fix leaveOut(String field) {
      return new Fix(field, null);
    }

    /** The line as it stands in a case file; a line to be left out begins with a minus. */
    public String line() {
      return value == null ? "-" + field : field + ": " + value;
    }
  }
}
